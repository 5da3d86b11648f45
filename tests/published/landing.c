/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Hops that hens were watched at: Analysis of landing behaviour of three layer
 * lines on different perch designs, British Poultry Science, 2014, and Accuracy
 * of laying hens in jumping upwards and downwards between perches in different
 * light environments, Applied Animal Behaviour Science, 2004. */
#include "config.h"

#include "barn.h"

/* Too high to be hopped up to from the floor, so that the hop decides. */
#define START_MM 1200

static void
add_bar (House *barn, double y_mm, double height_mm)
{
  HcFittingValues *roost = house_add_roost (barn, "p", 2000, y_mm, 3000, 90, 1);

  roost->base_mm = height_mm;
}

/* From a bar at START_MM over a gap, measured between the edges, down to one
 * @drop_mm lower. */
static HcLevel
get_level (double gap_mm, double drop_mm)
{
  House barn;
  g_autoptr (HcCheck) check = NULL;
  HcLevel level;

  barn_init (&barn, "home-cold", 4000, 4000);
  add_bar (&barn, 1000, START_MM);
  add_bar (&barn, 1000 + 90 + gap_mm, START_MM - drop_mm);
  house_add_birds (&barn, "light_layer", "p", 20, 0, -1);
  check = house_check (&barn, HC_CONDITION_DAY);
  level = hc_check_get_need_level (check, HC_NEED_CLIMB);
  barn_clear (&barn);
  return level;
}

/* 25, 50 and 60 cm were tried; landings were safe down to 50 cm, or 34°. */
static void
test_down_over_75_cm (void)
{
  g_test_summary ("British Poultry Science, 2014: over 75 cm hens land safely from 50 cm, and "
                  "significantly less so from 60 cm");
  g_assert_cmpint (get_level (750, 500), >, HC_LEVEL_SHORT);
  g_assert_cmpint (get_level (750, 600), ==, HC_LEVEL_SHORT);
}

/* Of hens that hopped 60 cm, 62 % failed 80 cm. */
static void
test_gaps_of_60_and_80_cm (void)
{
  g_test_summary ("Applied Animal Behaviour Science, 2004: most hens hop a gap of 60 cm, and "
                  "most of those fail one of more than 80 cm");
  g_assert_cmpint (get_level (600, 300), >, HC_LEVEL_SHORT);
  g_assert_cmpint (get_level (810, 300), ==, HC_LEVEL_SHORT);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/published/landing/down-over-75-cm", test_down_over_75_cm);
  g_test_add_func ("/published/landing/gaps-of-60-and-80-cm", test_gaps_of_60_and_80_cm);
  return g_test_run ();
}
