/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * How rooms join by day, at night, shut in, and by air; and which rooms stay
 * the same when a plan is edited. */
#include "config.h"

#include "base/shape-ops.h"
#include "supply/house.h"
#include "supply/offer.h"

/* Two pens side by side and a run in front of the first: walls "ab" between
 * the pens, "ar" between the first pen and the run. */
typedef struct
{
  int partition;
  int run_roof;
  HcOpeningValues openings[4];
  guint n_openings;
} Yard;

static const HcCornerValues corners[] = {
  { 0, 0 }, { 3000, 0 }, { 6000, 0 }, { 6000, 3000 }, { 3000, 3000 },
  { 0, 3000 }, { 3000, 8000 }, { 0, 8000 },
};

static const struct
{
  const char *id;
  guint from, to;
} walls[] = {
  { "a1", 0, 1 }, { "ab", 1, 4 }, { "ar", 4, 5 }, { "a2", 5, 0 }, { "b1", 1, 2 },
  { "b2", 2, 3 }, { "b3", 3, 4 }, { "r1", 4, 6 }, { "r2", 6, 7 }, { "r3", 7, 5 },
};

static void
add_opening (Yard *yard, HcOpeningKind kind, const char *wall, gboolean shut_at_dusk)
{
  HcOpeningValues *opening = &yard->openings[yard->n_openings++];

  hc_opening_values_init (opening);
  opening->kind = kind;
  opening->wall = (char *) wall;
  opening->along_mm = 1500;
  opening->width_mm = 400;
  opening->height_mm = 400;
  opening->shut_at_dusk = shut_at_dusk;
}

static char *
corner_id (guint corner)
{
  return g_strdup_printf ("c%u", corner);
}

static HcParts *
make_corners (void)
{
  HcParts *parts = hc_parts_new ();

  for (guint i = 0; i < G_N_ELEMENTS (corners); i++)
    {
      g_autofree char *id = corner_id (i);

      g_ptr_array_add (parts, hc_corner_new (id, &corners[i]));
    }
  return parts;
}

static HcParts *
make_walls (const Yard *yard)
{
  HcParts *parts = hc_parts_new ();

  for (guint i = 0; i < G_N_ELEMENTS (walls); i++)
    {
      g_autofree char *from = corner_id (walls[i].from);
      g_autofree char *to = corner_id (walls[i].to);
      HcWallValues values;

      hc_wall_values_init (&values);
      values.from = from;
      values.to = to;
      if (g_str_equal (walls[i].id, "ab"))
        values.kind = yard->partition;
      g_ptr_array_add (parts, hc_wall_new (walls[i].id, &values));
    }
  return parts;
}

static HcPen *
make_pen (const char *id, HcPenKind kind, HcPenRoof roof, const char *const *ring)
{
  HcPenValues values;

  hc_pen_values_init (&values);
  values.kind = kind;
  values.roof = roof;
  values.walls = (char **) ring;
  return hc_pen_new (id, &values);
}

static HcParts *
make_pens (const Yard *yard)
{
  static const char *const ring_a[] = { "a1", "ab", "ar", "a2", NULL };
  static const char *const ring_b[] = { "b1", "b2", "b3", "ab", NULL };
  static const char *const ring_r[] = { "ar", "r1", "r2", "r3", NULL };
  HcParts *parts = hc_parts_new ();

  g_ptr_array_add (parts, make_pen ("a", HC_PEN_INDOOR, HC_ROOF_SOLID, ring_a));
  g_ptr_array_add (parts, make_pen ("b", HC_PEN_INDOOR, HC_ROOF_SOLID, ring_b));
  g_ptr_array_add (parts, make_pen ("r", HC_PEN_RUN, yard->run_roof, ring_r));
  return parts;
}

static HcLayout *
make_layout (const Yard *yard)
{
  g_autoptr (HcParts) corner_parts = make_corners ();
  g_autoptr (HcParts) wall_parts = make_walls (yard);
  g_autoptr (HcParts) pens = make_pens (yard);
  g_autoptr (HcParts) openings = hc_parts_new ();
  HcLayoutValues values;

  for (guint i = 0; i < yard->n_openings; i++)
    {
      g_autofree char *id = g_strdup_printf ("o%u", i);

      g_ptr_array_add (openings, hc_opening_new (id, &yard->openings[i]));
    }
  hc_layout_values_init (&values);
  values.corners = corner_parts;
  values.walls = wall_parts;
  values.openings = openings;
  values.pens = pens;
  return hc_layout_new ("main", &values);
}

static HcHouse *
make_house (const Yard *yard)
{
  g_autoptr (HcLayout) layout = make_layout (yard);

  return hc_house_new (layout, NULL);
}

static void
test_a_pop_hole_joins_by_day_and_not_at_night (void)
{
  Yard yard = { HC_WALL_SOLID, HC_ROOF_NET };
  g_autoptr (HcHouse) house = NULL;

  add_opening (&yard, HC_OPENING_POP_HOLE, "ar", TRUE);
  house = make_house (&yard);
  g_assert_cmpuint (hc_house_get_n_spaces (house, HC_CONDITION_DAY), ==, 2);
  g_assert_cmpuint (hc_house_get_n_spaces (house, HC_CONDITION_NIGHT), ==, 3);
  g_assert_true (hc_house_space_has_run (house, HC_CONDITION_DAY, 0));
  g_assert_false (hc_house_space_has_run (house, HC_CONDITION_DAY, 1));
}

static void
test_a_door_left_open_joins_at_night (void)
{
  Yard yard = { HC_WALL_SOLID, HC_ROOF_NET };
  g_autoptr (HcHouse) house = NULL;

  add_opening (&yard, HC_OPENING_KEEPER_DOOR, "ab", FALSE);
  house = make_house (&yard);
  g_assert_cmpuint (hc_house_get_n_spaces (house, HC_CONDITION_NIGHT), ==, 2);
  g_assert_cmpuint (hc_house_get_space (house, HC_CONDITION_NIGHT, 0)->rooms->len, ==, 2);
}

static void
test_shut_in_only_a_covered_run_counts (void)
{
  Yard netted = { HC_WALL_SOLID, HC_ROOF_NET };
  Yard covered = { HC_WALL_SOLID, HC_ROOF_SOLID };
  g_autoptr (HcHouse) open = NULL;
  g_autoptr (HcHouse) veranda = NULL;

  add_opening (&netted, HC_OPENING_POP_HOLE, "ar", TRUE);
  add_opening (&covered, HC_OPENING_POP_HOLE, "ar", TRUE);
  open = make_house (&netted);
  veranda = make_house (&covered);
  g_assert_cmpuint (hc_house_get_space (open, HC_CONDITION_SHUT_IN, 0)->rooms->len, ==, 1);
  g_assert_false (hc_house_space_has_run (open, HC_CONDITION_SHUT_IN, 0));
  g_assert_cmpuint (hc_house_get_space (veranda, HC_CONDITION_SHUT_IN, 0)->rooms->len, ==, 2);
  g_assert_true (hc_house_space_has_run (veranda, HC_CONDITION_SHUT_IN, 0));
}

static void
test_a_pop_hole_to_the_open_ground_is_a_run (void)
{
  Yard yard = { HC_WALL_SOLID, HC_ROOF_NET };
  g_autoptr (HcHouse) house = NULL;

  add_opening (&yard, HC_OPENING_POP_HOLE, "b2", TRUE);
  house = make_house (&yard);
  g_assert_true (hc_house_space_has_run (house, HC_CONDITION_DAY, 1));
  g_assert_false (hc_house_space_has_run (house, HC_CONDITION_SHUT_IN, 1));
}

static void
test_mesh_joins_air_and_not_birds (void)
{
  Yard solid = { HC_WALL_SOLID, HC_ROOF_NET };
  Yard mesh = { HC_WALL_MESH, HC_ROOF_NET };
  g_autoptr (HcHouse) apart = make_house (&solid);
  g_autoptr (HcHouse) joined = make_house (&mesh);

  g_assert_cmpuint (hc_house_get_n_air_spaces (apart), ==, 2);
  g_assert_cmpuint (hc_house_get_n_air_spaces (joined), ==, 1);
  g_assert_cmpuint (hc_house_get_n_spaces (joined, HC_CONDITION_DAY), ==, 3);
}

static HcPen *
with_a_bin (HcPen *pen)
{
  HcPenValues values = *hc_pen_get (pen);
  g_autoptr (HcParts) fittings = NULL;
  g_autoptr (HcFitting) bin = NULL;
  HcFittingValues bin_values;

  hc_fitting_values_init (&bin_values);
  bin_values.kind = HC_FITTING_STORE_BIN;
  bin_values.x_mm = 4500;
  bin_values.y_mm = 1500;
  bin_values.width_mm = bin_values.depth_mm = 500;
  bin = hc_fitting_new ("bin", &bin_values);
  fittings = hc_parts_with (values.fittings, bin);
  values.fittings = fittings;
  return hc_pen_with (pen, &values);
}

static HcLayout *
with_a_bin_in (HcLayout *layout, const char *pen)
{
  HcLayoutValues values = *hc_layout_get (layout);
  g_autoptr (HcPen) changed = with_a_bin (hc_layout_get_pen (layout, pen));
  g_autoptr (HcParts) pens = hc_parts_with (values.pens, changed);

  values.pens = pens;
  return hc_layout_with (layout, &values);
}

static void
test_rooms_without_a_change_stay (void)
{
  Yard yard = { HC_WALL_SOLID, HC_ROOF_NET };
  g_autoptr (HcLayout) layout = make_layout (&yard);
  g_autoptr (HcHouse) before = hc_house_new (layout, NULL);
  g_autoptr (HcLayout) edited = with_a_bin_in (layout, "b");
  guint64 calls = hc_geometry_calls ();
  g_autoptr (HcHouse) after = hc_house_new (edited, before);

  g_assert_true (hc_house_get_room (after, 0) == hc_house_get_room (before, 0));
  g_assert_false (hc_house_get_room (after, 1) == hc_house_get_room (before, 1));
  g_assert_true (hc_house_get_room (after, 2) == hc_house_get_room (before, 2));
  g_assert_cmpuint (hc_geometry_calls (), ==, calls);
}

static void
test_a_room_changes_with_what_lies_beyond (void)
{
  Yard yard = { HC_WALL_SOLID, HC_ROOF_NET };
  g_autoptr (HcLayout) layout = make_layout (&yard);
  g_autoptr (HcHouse) before = hc_house_new (layout, NULL);
  HcLayoutValues values = *hc_layout_get (layout);
  HcPenValues run = *hc_pen_get (hc_layout_get_pen (layout, "r"));
  g_autoptr (HcPen) covered = NULL;
  g_autoptr (HcParts) pens = NULL;
  g_autoptr (HcLayout) edited = NULL;
  g_autoptr (HcHouse) after = NULL;

  run.roof = HC_ROOF_SOLID;
  covered = hc_pen_with (hc_layout_get_pen (layout, "r"), &run);
  pens = hc_parts_with (values.pens, covered);
  values.pens = pens;
  edited = hc_layout_with (layout, &values);
  after = hc_house_new (edited, before);
  g_assert_false (hc_house_get_room (after, 0) == hc_house_get_room (before, 0));
  g_assert_true (hc_house_get_room (after, 1) == hc_house_get_room (before, 1));
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/spaces/pop-hole", test_a_pop_hole_joins_by_day_and_not_at_night);
  g_test_add_func ("/spaces/open-door", test_a_door_left_open_joins_at_night);
  g_test_add_func ("/spaces/shut-in", test_shut_in_only_a_covered_run_counts);
  g_test_add_func ("/spaces/open-ground", test_a_pop_hole_to_the_open_ground_is_a_run);
  g_test_add_func ("/spaces/mesh", test_mesh_joins_air_and_not_birds);
  g_test_add_func ("/spaces/rooms-stay", test_rooms_without_a_change_stay);
  g_test_add_func ("/spaces/beyond", test_a_room_changes_with_what_lies_beyond);
  return g_test_run ();
}
