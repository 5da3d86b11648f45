/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Rings no keeper draws: shapes never crash, and never lie about being finite. */
#include "config.h"

#include "base/shape-line.h"
#include "base/shape-ops.h"
#include "base/shape-relate.h"

#include <math.h>

/* Corners on a coarse grid, so that edges cross, repeat and lie on each other. */
static HcShape *
tangle (void)
{
  HcPoint corners[12];
  int n = g_test_rand_int_range (3, G_N_ELEMENTS (corners) + 1);

  for (int i = 0; i < n; i++)
    corners[i] = hc_point (g_test_rand_int_range (0, 6) * 100, g_test_rand_int_range (0, 6) * 100);
  return hc_shape_new_polygon (corners, n);
}

static void
assert_sound (HcShape *shape)
{
  double area_mm2 = hc_shape_get_area_mm2 (shape);

  g_assert_true (isfinite (area_mm2));
  g_assert_cmpfloat (area_mm2, >=, 0);
  hc_shape_unref (shape);
}

static void
tangled_rings_never_crash (void)
{
  for (guint i = 0; i < 200; i++)
    {
      g_autoptr (HcShape) a = tangle ();
      g_autoptr (HcShape) b = tangle ();
      HcShape *both[] = { a, b };
      g_autoptr (GArray) stretches
          = hc_shape_clip_line (a, hc_point (-50, 250), hc_point (700, 300));

      assert_sound (hc_shape_union (both, 2));
      assert_sound (hc_shape_difference (a, b));
      assert_sound (hc_shape_intersection (a, b));
      assert_sound (hc_shape_opening (a, g_test_rand_double_range (0, 300)));
      assert_sound (hc_shape_free_floor (a, &b, 1, 150));
      g_assert_cmpfloat (hc_stretches_total_mm (stretches), <=, 752);
      g_assert_cmpfloat (hc_shape_get_overlap_mm2 (a, b), >=, 0);
      g_assert_cmpfloat (hc_shape_distance_mm (a, b), >=, 0);
    }
}

static void
a_ring_that_crosses_itself_is_mended (void)
{
  const HcPoint bow[] = { { 0, 0 }, { 1000, 1000 }, { 1000, 0 }, { 0, 999 } };
  g_autoptr (HcShape) tie = hc_shape_new_polygon (bow, 4);
  g_autoptr (HcShape) room = hc_shape_new_box ((HcBox){ -100, -100, 2000, 2000 });
  g_autoptr (HcShape) seen = hc_shape_intersection (room, tie);

  g_assert_false (hc_shape_is_empty (seen));
  g_assert_cmpfloat (hc_shape_get_area_mm2 (seen), <=, 1e6);
}

static void
growing_out_of_all_bounds_is_survived (void)
{
  g_autoptr (HcShape) room = hc_shape_new_box ((HcBox){ 0, 0, 1000, 1000 });

  assert_sound (hc_shape_opening (room, INFINITY));
  assert_sound (hc_shape_opening (room, NAN));
}

static gpointer
work_on_floors (gpointer data)
{
  HcShape *room = data;

  for (guint i = 0; i < 100; i++)
    {
      HcShape *box = hc_shape_new_rectangle (hc_point (500 + i, 500), 200, 100, i);
      g_autoptr (HcShape) floor = hc_shape_free_floor (room, &box, 1, 100);

      g_assert_cmpfloat_with_epsilon (hc_shape_get_area_mm2 (floor), 1e6 - 20000, 10);
      hc_shape_unref (box);
    }
  return NULL;
}

static void
threads_work_on_one_room_at_once (void)
{
  g_autoptr (HcShape) room = hc_shape_new_box ((HcBox){ 0, 0, 1000, 1000 });
  guint64 calls = hc_geometry_calls ();
  GThread *threads[4];

  for (guint i = 0; i < G_N_ELEMENTS (threads); i++)
    threads[i] = g_thread_new ("floors", work_on_floors, room);
  for (guint i = 0; i < G_N_ELEMENTS (threads); i++)
    g_thread_join (threads[i]);
  g_assert_cmpuint (hc_geometry_calls () - calls, >=, 4 * 100 * 2);
}

int
main (int argc,
      char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/shape-hostile/tangles", tangled_rings_never_crash);
  g_test_add_func ("/shape-hostile/bow-tie", a_ring_that_crosses_itself_is_mended);
  g_test_add_func ("/shape-hostile/bounds", growing_out_of_all_bounds_is_survived);
  g_test_add_func ("/shape-hostile/threads", threads_work_on_one_room_at_once);
  return g_test_run ();
}
