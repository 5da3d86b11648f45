/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Room on the floor. */
#include "config.h"

#include "house.h"

/* Council Directive 1999/74/EC, article 4, as transposed by the French order
 * of 1 February 2002, article 3: nine hens to a square metre of usable area. */
static void
test_forty_square_metres_hold_360_hens (void)
{
  House house;
  g_autoptr (HcCheck) held = NULL;
  g_autoptr (HcCheck) one_more = NULL;

  house_init (&house);
  house.rules.standard = (char *) "eu-laying-hens";
  house_add_pen (&house, "p", HC_PEN_INDOOR, 8000, 5000);
  house_add_birds (&house, "medium_layer", "p", 360, 0, -1);
  held = house_check (&house, HC_CONDITION_DAY);
  g_assert_cmpint (hc_check_get_served (held, HC_NEED_FLOOR, HC_LEVEL_TIGHT), ==, 360);
  g_assert_cmpint (hc_check_get_need_level (held, HC_NEED_FLOOR), ==, HC_LEVEL_TIGHT);
  house_add_birds (&house, "medium_layer", "p", 1, 0, -1);
  one_more = house_check (&house, HC_CONDITION_DAY);
  g_assert_cmpint (hc_check_get_served (one_more, HC_NEED_FLOOR, HC_LEVEL_TIGHT), ==, 360);
  g_assert_cmpint (hc_check_get_need_level (one_more, HC_NEED_FLOOR), ==, HC_LEVEL_SHORT);
  g_assert_cmpint (house_find (one_more, "floor.too-little")->birds, ==, 1);
  house_clear (&house);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/need-floor/forty-square-metres-hold-360-hens",
                   test_forty_square_metres_hold_360_hens);
  return g_test_run ();
}
