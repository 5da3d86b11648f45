/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Points, boxes and lines: the small sums all geometry rests on. */
#include "config.h"

#include "base/box.h"
#include "base/crossing.h"

#include <math.h>

static void
quarter_turns_leave_no_crumbs (void)
{
  HcPoint p = hc_point (3, 4);

  g_assert_true (hc_point_equal (hc_point_turn (p, 90), hc_point (-4, 3)));
  g_assert_true (hc_point_equal (hc_point_turn (p, -90), hc_point (4, -3)));
  g_assert_true (hc_point_equal (hc_point_turn (p, 180), hc_point (-3, -4)));
  g_assert_true (hc_point_equal (hc_point_turn (p, 720), p));
  g_assert_true (hc_point_equal (hc_point_turn_about (p, hc_point (3, 0), 90), hc_point (-1, 0)));
}

static void
turning_there_and_back_ends_where_it_began (void)
{
  for (guint i = 0; i < 1000; i++)
    {
      HcPoint p = { g_test_rand_double_range (-1e4, 1e4), g_test_rand_double_range (-1e4, 1e4) };
      double turn_deg = g_test_rand_double_range (-720, 720);
      HcPoint turned = hc_point_turn (p, turn_deg);

      g_assert_cmpfloat_with_epsilon (hc_point_length (turned), hc_point_length (p), 1e-8);
      g_assert_cmpfloat (hc_point_distance (hc_point_turn (turned, -turn_deg), p), <, 1e-8);
    }
}

static void
the_nearest_place_on_a_line_is_held_to_its_ends (void)
{
  HcPoint a = { 0, 0 }, b = { 100, 0 };

  g_assert_cmpfloat (hc_point_along (hc_point (25, 70), a, b), ==, 0.25);
  g_assert_cmpfloat (hc_point_along (hc_point (-5, 0), a, b), ==, 0);
  g_assert_cmpfloat (hc_point_along (hc_point (500, 0), a, b), ==, 1);
  g_assert_cmpfloat (hc_point_along (hc_point (5, 5), a, a), ==, 0);
  g_assert_cmpfloat (hc_point_distance_to_line (hc_point (103, 4), a, b), ==, 5);
}

static void
a_way_of_no_length_has_no_direction (void)
{
  g_assert_true (hc_point_equal (hc_point_unit (hc_point (0, 0)), hc_point (0, 0)));
  g_assert_true (hc_point_equal (hc_point_unit (hc_point (0, -7)), hc_point (0, -1)));
}

static void
lines_touch_at_ends_and_crossings (void)
{
  HcPoint a = { 0, 0 }, b = { 10, 0 };
  double part = 0;

  g_assert_true (hc_lines_touch (a, b, hc_point (5, -5), hc_point (5, 5)));
  g_assert_true (hc_lines_touch (a, b, hc_point (10, 0), hc_point (10, 5)));
  g_assert_true (hc_lines_touch (a, b, hc_point (4, 0), hc_point (20, 0)));
  g_assert_false (hc_lines_touch (a, b, hc_point (11, 0), hc_point (20, 0)));
  g_assert_false (hc_lines_touch (a, b, hc_point (0, 1), hc_point (10, 1)));
  g_assert_true (hc_lines_cross_at (a, b, hc_point (2.5, -5), hc_point (2.5, 5), &part));
  g_assert_cmpfloat (part, ==, 0.25);
  g_assert_false (hc_lines_cross_at (a, b, hc_point (0, 0), hc_point (10, 0), &part));
}

static void
boxes_join_and_part (void)
{
  HcBox one = { 0, 0, 10, 10 }, far = { 40, 50, 10, 10 };
  HcBox both = hc_box_join (one, far);

  g_assert_cmpfloat (both.width_mm, ==, 50);
  g_assert_cmpfloat (both.depth_mm, ==, 60);
  g_assert_cmpfloat (hc_box_distance (one, far), ==, 50);
  g_assert_cmpfloat (hc_box_distance (one, one), ==, 0);
  g_assert_true (hc_box_touches (one, hc_box_grow (far, 40)));
  g_assert_false (hc_box_touches (one, far));
  g_assert_true (hc_box_contains_point (one, hc_point (10, 0)));
  g_assert_true (hc_point_equal (hc_box_centre (far), hc_point (45, 55)));
}

static void
the_empty_box_adds_nothing (void)
{
  HcBox one = { 5, 6, 7, 8 }, empty = hc_box_around (NULL, 0);
  HcBox joined = hc_box_join (empty, one);

  g_assert_true (hc_box_is_empty (empty));
  g_assert_true (hc_box_is_empty (hc_box_grow (empty, 100)));
  g_assert_false (hc_box_touches (one, empty));
  g_assert_true (isinf (hc_box_distance (one, empty)));
  g_assert_cmpfloat (joined.x_mm, ==, 5);
  g_assert_cmpfloat (joined.depth_mm, ==, 8);
}

int
main (int argc,
      char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/point/quarter-turns", quarter_turns_leave_no_crumbs);
  g_test_add_func ("/point/there-and-back", turning_there_and_back_ends_where_it_began);
  g_test_add_func ("/point/along", the_nearest_place_on_a_line_is_held_to_its_ends);
  g_test_add_func ("/point/no-length", a_way_of_no_length_has_no_direction);
  g_test_add_func ("/point/lines", lines_touch_at_ends_and_crossings);
  g_test_add_func ("/box/join", boxes_join_and_part);
  g_test_add_func ("/box/empty", the_empty_box_adds_nothing);
  return g_test_run ();
}
