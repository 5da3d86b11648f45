/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * How shapes lie to each other: inside, across, apart, and lines through them. */
#include "config.h"

#include "base/shape-line.h"
#include "base/shape-ops.h"
#include "base/shape-relate.h"

#include <math.h>

static HcShape *
box (double x_mm,
     double y_mm,
     double width_mm,
     double depth_mm)
{
  return hc_shape_new_box ((HcBox){ x_mm, y_mm, width_mm, depth_mm });
}

/* An L of 5 m by 4 m, 2 m wide each way. */
static HcShape *
ell (void)
{
  const HcPoint corners[] = { { 0, 0 },       { 5000, 0 },    { 5000, 2000 },
                              { 2000, 2000 }, { 2000, 4000 }, { 0, 4000 } };

  return hc_shape_new_polygon (corners, G_N_ELEMENTS (corners));
}

static void
a_fitting_against_the_wall_is_inside (void)
{
  g_autoptr (HcShape) room = ell ();
  g_autoptr (HcShape) in_corner = box (0, 0, 500, 300);
  g_autoptr (HcShape) in_dent = box (1500, 1500, 500, 500);
  g_autoptr (HcShape) past_wall = box (-1, 0, 500, 300);
  g_autoptr (HcShape) across_dent = box (1900, 1900, 500, 500);
  g_autoptr (HcShape) nothing = hc_shape_new_empty ();

  g_assert_true (hc_shape_contains (room, in_corner));
  g_assert_true (hc_shape_contains (room, in_dent));
  g_assert_true (hc_shape_contains (room, room));
  g_assert_false (hc_shape_contains (room, past_wall));
  g_assert_false (hc_shape_contains (room, across_dent));
  g_assert_false (hc_shape_contains (room, nothing));
}

static void
a_hole_inside_the_other_is_not_contained (void)
{
  g_autoptr (HcShape) room = box (0, 0, 4000, 3000);
  g_autoptr (HcShape) post = box (1000, 1000, 100, 100);
  g_autoptr (HcShape) holed = hc_shape_difference (room, post);
  g_autoptr (HcShape) over_post = box (900, 900, 300, 300);

  g_assert_true (hc_shape_contains (room, holed));
  g_assert_false (hc_shape_contains (holed, over_post));
  g_assert_false (hc_shape_contains_point (holed, hc_point (1050, 1050)));
  g_assert_true (hc_shape_contains_point (holed, hc_point (1000, 1050)));
}

static void
touching_is_meeting_but_not_overlapping (void)
{
  g_autoptr (HcShape) one = box (0, 0, 100, 100);
  g_autoptr (HcShape) next = box (100, 0, 100, 100);
  g_autoptr (HcShape) apart = box (300, 0, 100, 100);
  g_autoptr (HcShape) inside = box (10, 10, 20, 20);

  g_assert_true (hc_shape_intersects (one, next));
  g_assert_false (hc_shape_overlaps (one, next, 0));
  g_assert_false (hc_shape_intersects (one, apart));
  g_assert_true (hc_shape_intersects (one, inside));
  g_assert_cmpfloat (hc_shape_get_overlap_mm2 (one, inside), ==, 400);
  g_assert_true (hc_shape_overlaps (one, inside, 399));
  g_assert_false (hc_shape_overlaps (one, inside, 400));
}

static void
overlap_without_the_engine_equals_the_engine (void)
{
  for (guint i = 0; i < 500; i++)
    {
      g_autoptr (HcShape) one
          = hc_shape_new_rectangle (hc_point (0, 0), g_test_rand_double_range (50, 900),
                                    g_test_rand_double_range (50, 900),
                                    g_test_rand_double_range (0, 360));
      g_autoptr (HcShape) other
          = hc_shape_new_circle (hc_point (g_test_rand_double_range (-500, 500), 100),
                                 g_test_rand_double_range (50, 900));
      guint64 calls = hc_geometry_calls ();
      double overlap_mm2 = hc_shape_get_overlap_mm2 (one, other);
      g_autoptr (HcShape) both = NULL;

      g_assert_cmpuint (hc_geometry_calls (), ==, calls);
      both = hc_shape_intersection (one, other);
      g_assert_cmpfloat_with_epsilon (overlap_mm2, hc_shape_get_area_mm2 (both), 2);
    }
}

static void
distance_is_between_the_nearest_points (void)
{
  g_autoptr (HcShape) one = box (0, 0, 100, 100);
  g_autoptr (HcShape) other = box (400, 500, 100, 100);
  g_autoptr (HcShape) across = box (50, 50, 1000, 1000);
  g_autoptr (HcShape) nothing = hc_shape_new_empty ();
  HcPoint on_one, on_other;

  g_assert_cmpfloat (hc_shape_find_nearest (one, other, &on_one, &on_other), ==, 500);
  g_assert_true (hc_point_equal (on_one, hc_point (100, 100)));
  g_assert_true (hc_point_equal (on_other, hc_point (400, 500)));
  g_assert_cmpfloat (hc_shape_distance_mm (one, across), ==, 0);
  g_assert_true (isinf (hc_shape_distance_mm (one, nothing)));
  g_assert_cmpfloat (hc_shape_distance_to_point_mm (one, hc_point (50, 50)), ==, 0);
  g_assert_cmpfloat (hc_shape_distance_to_point_mm (one, hc_point (50, 130)), ==, 30);
  g_assert_cmpfloat (hc_shape_distance_to_edge_mm (one, hc_point (50, 60)), ==, 40);
}

static void
assert_stretches (GArray *stretches,
                  guint n,
                  const HcStretch *expected)
{
  g_assert_cmpuint (stretches->len, ==, n);
  for (guint i = 0; i < n; i++)
    {
      g_assert_cmpfloat (g_array_index (stretches, HcStretch, i).from_mm, ==, expected[i].from_mm);
      g_assert_cmpfloat (g_array_index (stretches, HcStretch, i).to_mm, ==, expected[i].to_mm);
    }
}

static void
a_bar_is_cut_where_it_leaves_the_room (void)
{
  const HcPoint corners[] = { { 0, 0 },       { 5000, 0 },    { 5000, 3000 }, { 3000, 3000 },
                              { 3000, 1000 }, { 2000, 1000 }, { 2000, 3000 }, { 0, 3000 } };
  g_autoptr (HcShape) room = hc_shape_new_polygon (corners, G_N_ELEMENTS (corners));
  g_autoptr (GArray) bar = hc_shape_clip_line (room, hc_point (-500, 2000), hc_point (6000, 2000));
  g_autoptr (GArray) wall = hc_shape_clip_line (room, hc_point (0, 0), hc_point (5000, 0));
  g_autoptr (GArray) along = hc_shape_clip_line (room, hc_point (0, 1000), hc_point (5000, 1000));
  g_autoptr (GArray) outside = hc_shape_clip_line (room, hc_point (0, -5), hc_point (5000, -5));

  assert_stretches (bar, 2, (HcStretch[]){ { 500, 2500 }, { 3500, 5500 } });
  assert_stretches (wall, 1, (HcStretch[]){ { 0, 5000 } });
  assert_stretches (along, 1, (HcStretch[]){ { 0, 5000 } });
  assert_stretches (outside, 0, NULL);
  g_assert_cmpfloat (hc_stretches_total_mm (bar), ==, 4000);
  g_assert_cmpfloat (hc_stretches_longest_mm (along), ==, 5000);
}

static void
stretches_are_taken_off_each_other (void)
{
  g_autoptr (GArray) bar = g_array_new (FALSE, FALSE, sizeof (HcStretch));
  g_autoptr (GArray) off = g_array_new (FALSE, FALSE, sizeof (HcStretch));
  g_autoptr (GArray) left = NULL;
  const HcStretch bars[] = { { 0, 1000 }, { 2000, 3000 } };
  const HcStretch offs[] = { { 0, 100 }, { 400, 600 }, { 900, 2100 }, { 2500, 2600 } };

  g_array_append_vals (bar, bars, 2);
  g_array_append_vals (off, offs, 4);
  left = hc_stretches_without (bar, off);
  assert_stretches (left, 4,
                    (HcStretch[]){ { 100, 400 }, { 600, 900 }, { 2100, 2500 }, { 2600, 3000 } });
}

static void
only_the_open_side_of_a_feeder_counts (void)
{
  g_autoptr (HcShape) room = box (0, 0, 4000, 3000);
  g_autoptr (HcShape) feeder = box (1000, 0, 1000, 200);
  g_autoptr (HcShape) floor = hc_shape_difference (room, feeder);

  g_assert_cmpfloat (hc_shape_edge_inside_mm (feeder, floor), ==, 1400);
}

int
main (int argc,
      char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/shape-relate/contains", a_fitting_against_the_wall_is_inside);
  g_test_add_func ("/shape-relate/contains-hole", a_hole_inside_the_other_is_not_contained);
  g_test_add_func ("/shape-relate/touching", touching_is_meeting_but_not_overlapping);
  g_test_add_func ("/shape-relate/overlap", overlap_without_the_engine_equals_the_engine);
  g_test_add_func ("/shape-relate/distance", distance_is_between_the_nearest_points);
  g_test_add_func ("/shape-relate/clip-line", a_bar_is_cut_where_it_leaves_the_room);
  g_test_add_func ("/shape-relate/stretches", stretches_are_taken_off_each_other);
  g_test_add_func ("/shape-relate/edge-inside", only_the_open_side_of_a_feeder_counts);
  return g_test_run ();
}
