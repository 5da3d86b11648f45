/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Measures held against limits. */
#include "config.h"

#include "book/limit.h"

static HcLimit
limit_of (HcDirection direction, double least, double good, double plenty)
{
  return (HcLimit){
    .direction = direction,
    .levels = { least, good, plenty },
    .stated = 7u << HC_LEVEL_TIGHT,
  };
}

static void
test_at_least_grades_upwards (void)
{
  HcLimit limit = limit_of (HC_DIRECTION_AT_LEAST, 300, 350, 400);

  g_assert_cmpint (hc_limit_grade (&limit, 299), ==, HC_LEVEL_SHORT);
  g_assert_cmpint (hc_limit_grade (&limit, 300), ==, HC_LEVEL_TIGHT);
  g_assert_cmpint (hc_limit_grade (&limit, 399), ==, HC_LEVEL_GOOD);
  g_assert_cmpint (hc_limit_grade (&limit, 400), ==, HC_LEVEL_PLENTY);
}

static void
test_at_most_grades_downwards (void)
{
  HcLimit limit = limit_of (HC_DIRECTION_AT_MOST, 45, 35, 25);

  g_assert_cmpint (hc_limit_grade (&limit, 46), ==, HC_LEVEL_SHORT);
  g_assert_cmpint (hc_limit_grade (&limit, 45), ==, HC_LEVEL_TIGHT);
  g_assert_cmpint (hc_limit_grade (&limit, 30), ==, HC_LEVEL_GOOD);
  g_assert_cmpint (hc_limit_grade (&limit, 0), ==, HC_LEVEL_PLENTY);
}

static void
test_rounding_fails_nobody (void)
{
  HcLimit limit = limit_of (HC_DIRECTION_AT_LEAST, 300, 300, 300);

  g_assert_true (hc_limit_is_met (&limit, HC_LEVEL_PLENTY, 300 - 1e-9));
  g_assert_false (hc_limit_is_met (&limit, HC_LEVEL_TIGHT, 300 - 0.001));
}

static void
test_silent_levels_ask_what_is_below (void)
{
  HcLimit limit = limit_of (HC_DIRECTION_AT_MOST, 1200, 600, 0);
  double bound;

  limit.stated = 1u << HC_LEVEL_GOOD;
  g_assert_false (hc_limit_get (&limit, HC_LEVEL_TIGHT, &bound));
  g_assert_true (hc_limit_is_met (&limit, HC_LEVEL_TIGHT, 5000));
  g_assert_true (hc_limit_get (&limit, HC_LEVEL_PLENTY, &bound));
  g_assert_cmpfloat (bound, ==, 600);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/limit/at-least-grades-upwards", test_at_least_grades_upwards);
  g_test_add_func ("/limit/at-most-grades-downwards", test_at_most_grades_downwards);
  g_test_add_func ("/limit/rounding-fails-nobody", test_rounding_fails_nobody);
  g_test_add_func ("/limit/silent-levels-ask-what-is-below",
                   test_silent_levels_ask_what_is_below);
  return g_test_run ();
}
