/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What part of a canvas is in sight: fitting, zooming and panning are exact. */
#include "config.h"

#include "app/canvas/sight.h"

#define NEAR 1e-9

static void
a_point_comes_back_from_the_screen (void)
{
  HcSight sight = { 0.12, 300, 200 };

  for (guint i = 0; i < 100; i++)
    {
      HcPoint at = { g_test_rand_double_range (-1e5, 1e5), g_test_rand_double_range (-1e5, 1e5) };
      HcPoint back;
      double x, y;

      hc_sight_to_px (&sight, at, &x, &y);
      back = hc_sight_to_mm (&sight, x, y);
      g_assert_cmpfloat_with_epsilon (back.x_mm, at.x_mm, 1e-6);
      g_assert_cmpfloat_with_epsilon (back.y_mm, at.y_mm, 1e-6);
    }
}

static void
what_is_fitted_is_in_the_middle_and_whole (void)
{
  HcBox box = { -1000, 500, 4000, 2000 };
  HcSight sight = hc_sight_fit (box, 800, 600, 50);
  double left, top, right, bottom;

  hc_sight_to_px (&sight, (HcPoint){ -1000, 500 }, &left, &top);
  hc_sight_to_px (&sight, (HcPoint){ 3000, 2500 }, &right, &bottom);
  g_assert_cmpfloat_with_epsilon (left, 50, NEAR);
  g_assert_cmpfloat_with_epsilon (right, 750, NEAR);
  g_assert_cmpfloat_with_epsilon (top + bottom, 600, NEAR);
}

static void
zooming_keeps_the_point_under_the_hand (void)
{
  HcSight sight = { 0.1, 40, 70 };
  HcPoint under = hc_sight_to_mm (&sight, 333, 222);
  HcSight closer = hc_sight_zoomed (&sight, 3, 333, 222);
  HcPoint still = hc_sight_to_mm (&closer, 333, 222);

  g_assert_cmpfloat_with_epsilon (closer.scale, 0.3, NEAR);
  g_assert_cmpfloat_with_epsilon (still.x_mm, under.x_mm, 1e-6);
  g_assert_cmpfloat_with_epsilon (still.y_mm, under.y_mm, 1e-6);
}

static void
zooming_ends_where_it_is_of_no_more_use (void)
{
  HcSight sight = { 1, 0, 0 };
  HcSight near = hc_sight_zoomed (&sight, 1e6, 10, 10);
  HcSight far = hc_sight_zoomed (&sight, 1e-6, 10, 10);

  g_assert_cmpfloat (near.scale, ==, HC_SIGHT_NEAREST);
  g_assert_cmpfloat (far.scale, ==, HC_SIGHT_FARTHEST);
}

int
main (int argc, char *argv[])
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/app/sight/there-and-back", a_point_comes_back_from_the_screen);
  g_test_add_func ("/app/sight/fit", what_is_fitted_is_in_the_middle_and_whole);
  g_test_add_func ("/app/sight/zoom", zooming_keeps_the_point_under_the_hand);
  g_test_add_func ("/app/sight/ends", zooming_ends_where_it_is_of_no_more_use);
  return g_test_run ();
}
