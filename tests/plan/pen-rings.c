/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Pens are rings of walls: their inside faces, and whose a shared wall is. */
#include "config.h"

#include "base/ring.h"
#include "plan/layout.h"

typedef struct
{
  HcParts *corners;
  HcParts *walls;
  HcParts *pens;
} Draft;

static void
add_corner (Draft *draft, const char *id, double x_mm, double y_mm)
{
  HcCornerValues values = { x_mm, y_mm };

  g_ptr_array_add (draft->corners, hc_corner_new (id, &values));
}

static void
add_wall (Draft *draft, const char *id, const char *from, const char *to)
{
  HcWallValues values;

  hc_wall_values_init (&values);
  values.from = (char *) from;
  values.to = (char *) to;
  values.thickness_mm = 100;
  g_ptr_array_add (draft->walls, hc_wall_new (id, &values));
}

static void
add_pen (Draft *draft, const char *id, HcPenKind kind, const char *const *walls)
{
  HcPenValues values;

  hc_pen_values_init (&values);
  values.kind = kind;
  values.walls = (char **) walls;
  g_ptr_array_add (draft->pens, hc_pen_new (id, &values));
}

/* Two rooms of 3 × 2 m side by side, sharing the wall `m`. */
static HcLayout *
two_rooms (HcPenKind second)
{
  static const char *const left[] = { "a", "m", "c", "d", NULL };
  static const char *const right[] = { "e", "f", "g", "m", NULL };
  g_autoptr (HcParts) corners = hc_parts_new ();
  g_autoptr (HcParts) walls = hc_parts_new ();
  g_autoptr (HcParts) pens = hc_parts_new ();
  Draft draft = { corners, walls, pens };
  HcLayoutValues values;

  add_corner (&draft, "1", 0, 0);
  add_corner (&draft, "2", 3000, 0);
  add_corner (&draft, "3", 3000, 2000);
  add_corner (&draft, "4", 0, 2000);
  add_corner (&draft, "5", 6000, 0);
  add_corner (&draft, "6", 6000, 2000);
  add_wall (&draft, "a", "1", "2");
  add_wall (&draft, "m", "3", "2");
  add_wall (&draft, "c", "3", "4");
  add_wall (&draft, "d", "4", "1");
  add_wall (&draft, "e", "2", "5");
  add_wall (&draft, "f", "5", "6");
  add_wall (&draft, "g", "6", "3");
  add_pen (&draft, "left", HC_PEN_INDOOR, left);
  add_pen (&draft, "right", second, right);
  hc_layout_values_init (&values);
  values.corners = corners;
  values.walls = walls;
  values.pens = pens;
  return hc_layout_new ("main", &values);
}

static double
area_m2 (HcLayout *layout, const char *pen)
{
  g_autoptr (GArray) ring = hc_layout_get_pen_ring (layout, hc_layout_get_pen (layout, pen));

  return ABS (hc_ring_area_mm2 ((const HcPoint *) ring->data, ring->len)) / 1e6;
}

static void
a_partition_is_drawn_by_its_middle (void)
{
  g_autoptr (HcLayout) layout = two_rooms (HC_PEN_INDOOR);

  g_assert_cmpfloat_with_epsilon (area_m2 (layout, "left"), 2.95 * 2, 1e-9);
  g_assert_cmpfloat_with_epsilon (area_m2 (layout, "right"), 2.95 * 2, 1e-9);
}

static void
a_house_keeps_its_inside_when_a_run_leans_on_it (void)
{
  g_autoptr (HcLayout) layout = two_rooms (HC_PEN_RUN);

  g_assert_cmpfloat_with_epsilon (area_m2 (layout, "left"), 3.0 * 2, 1e-9);
  g_assert_cmpfloat_with_epsilon (area_m2 (layout, "right"), 2.9 * 2, 1e-9);
}

static void
a_shared_wall_has_a_pen_on_either_side (void)
{
  g_autoptr (HcLayout) layout = two_rooms (HC_PEN_INDOOR);
  HcPen *beside[2];

  g_assert_cmpuint (hc_layout_get_pens_beside (layout, "m", beside), ==, 2);
  g_assert_cmpstr (hc_pen_get_id (beside[1]), ==, "right");
  g_assert_cmpuint (hc_layout_get_pens_beside (layout, "a", beside), ==, 1);
  g_assert_null (beside[1]);
}

static void
a_place_is_in_the_pen_round_it (void)
{
  g_autoptr (HcLayout) layout = two_rooms (HC_PEN_INDOOR);

  g_assert_cmpstr (hc_pen_get_id (hc_layout_find_pen_at (layout, (HcPoint){ 100, 100 })), ==,
                   "left");
  g_assert_null (hc_layout_find_pen_at (layout, (HcPoint){ -100, 100 }));
}

static void
walls_that_do_not_meet_make_no_ring (void)
{
  static const char *const open[] = { "a", "f", "c", NULL };
  g_autoptr (HcLayout) layout = two_rooms (HC_PEN_INDOOR);
  g_autoptr (GArray) ring = NULL;
  g_autoptr (HcPen) pen = NULL;
  HcPenValues values;

  hc_pen_values_init (&values);
  values.walls = (char **) open;
  pen = hc_pen_new ("open", &values);
  ring = hc_layout_get_pen_ring (layout, pen);
  g_assert_cmpuint (ring->len, ==, 0);
}

int
main (int argc, char *argv[])
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/plan/pen-rings/partition", a_partition_is_drawn_by_its_middle);
  g_test_add_func ("/plan/pen-rings/house-and-run",
                   a_house_keeps_its_inside_when_a_run_leans_on_it);
  g_test_add_func ("/plan/pen-rings/beside", a_shared_wall_has_a_pen_on_either_side);
  g_test_add_func ("/plan/pen-rings/at", a_place_is_in_the_pen_round_it);
  g_test_add_func ("/plan/pen-rings/open", walls_that_do_not_meet_make_no_ring);
  return g_test_run ();
}
