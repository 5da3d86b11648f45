/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Measures become whole birds by one rule, and never by accident. */
#include "config.h"

#include "base/whole.h"

#include <math.h>

static void
a_perch_of_2_4_m_seats_sixteen_at_15_cm (void)
{
  g_assert_cmpint (hc_whole_fit (2400, 150), ==, 16);
  g_assert_cmpint (hc_whole_fit (2.4, 0.15), ==, 16);
  g_assert_cmpint (hc_whole_fit (3 * 0.1, 0.1), ==, 3);
}

static void
a_perch_short_by_more_than_the_tolerance_seats_one_less (void)
{
  g_assert_cmpint (hc_whole_fit (2400 - 0.14, 150), ==, 16);
  g_assert_cmpint (hc_whole_fit (2400 - 0.16, 150), ==, 15);
}

static void
what_is_asked_rounds_up (void)
{
  g_assert_cmpint (hc_whole_asked (2.0), ==, 2);
  g_assert_cmpint (hc_whole_asked (2.0009), ==, 2);
  g_assert_cmpint (hc_whole_asked (2.0011), ==, 3);
  g_assert_cmpint (hc_whole_asked (0), ==, 0);
  g_assert_cmpint (hc_whole_asked (-3), ==, 0);
}

static void
odd_figures_give_safe_counts (void)
{
  g_assert_cmpint (hc_whole_fit (NAN, 150), ==, 0);
  g_assert_cmpint (hc_whole_fit (2400, NAN), ==, 0);
  g_assert_cmpint (hc_whole_fit (-1, 150), ==, 0);
  g_assert_cmpint (hc_whole_fit (2400, INFINITY), ==, 0);
  g_assert_cmpint (hc_whole_fit (2400, 0), ==, HC_WHOLE_MANY);
  g_assert_cmpint (hc_whole_fit (INFINITY, 150), ==, HC_WHOLE_MANY);
  g_assert_cmpint (hc_whole_fit (1e300, 1e-300), ==, HC_WHOLE_MANY);
  g_assert_cmpint (hc_whole_asked (NAN), ==, 0);
  g_assert_cmpint (hc_whole_asked (INFINITY), ==, HC_WHOLE_MANY);
}

static void
whole_seats_fit_their_own_length (void)
{
  for (guint i = 0; i < 10000; i++)
    {
      gint64 birds = g_test_rand_int_range (0, 5000);
      double seat_mm = hc_mm (g_test_rand_double_range (20, 900));

      g_assert_cmpint (hc_whole_fit (birds * seat_mm, seat_mm), ==, birds);
      g_assert_cmpint (hc_whole_asked (birds * seat_mm / seat_mm), ==, birds);
    }
}

static void
more_room_never_fits_fewer (void)
{
  for (guint i = 0; i < 10000; i++)
    {
      double room_mm = g_test_rand_double_range (0, 20000);
      double more_mm = g_test_rand_double_range (0, 500);

      g_assert_cmpint (hc_whole_fit (room_mm + more_mm, 180), >=, hc_whole_fit (room_mm, 180));
    }
}

static void
lengths_are_kept_to_a_thousandth_of_a_millimetre (void)
{
  g_assert_cmpfloat (hc_mm (0.1 + 0.2), ==, 0.3);
  g_assert_cmpfloat (hc_mm (1234.56789), ==, 1234.568);
  g_assert_cmpfloat (hc_mm (INFINITY), ==, 0);
  g_assert_cmpfloat (hc_mm (NAN), ==, 0);
  g_assert_false (signbit (hc_mm (-0.0001)));
}

static void
four_square_feet_a_bird_hold_64_on_256 (void)
{
  double foot_m = 0.3048;
  double floor_m2 = 256 * foot_m * foot_m;

  g_test_summary ("International foot of 1959: 0.3048 m exactly");
  g_assert_cmpint (hc_whole_fit (floor_m2, hc_fine (4 * foot_m * foot_m)), ==, 64);
  g_assert_cmpint (hc_whole_fit (floor_m2, hc_mm (4 * foot_m * foot_m)), ==, 63);
  g_assert_cmpfloat (hc_fine (NAN), ==, 0);
  g_assert_false (signbit (hc_fine (-1e-9)));
}

int
main (int argc,
      char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/whole/sixteen-seats", a_perch_of_2_4_m_seats_sixteen_at_15_cm);
  g_test_add_func ("/whole/tolerance", a_perch_short_by_more_than_the_tolerance_seats_one_less);
  g_test_add_func ("/whole/asked", what_is_asked_rounds_up);
  g_test_add_func ("/whole/odd-figures", odd_figures_give_safe_counts);
  g_test_add_func ("/whole/square-feet", four_square_feet_a_bird_hold_64_on_256);
  g_test_add_func ("/whole/own-length", whole_seats_fit_their_own_length);
  g_test_add_func ("/whole/monotone", more_room_never_fits_fewer);
  g_test_add_func ("/whole/mm", lengths_are_kept_to_a_thousandth_of_a_millimetre);
  return g_test_run ();
}
