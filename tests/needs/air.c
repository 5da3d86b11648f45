/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Air: what of the coldest night can be mended is found, plain cold is told beside. */
#include "config.h"

#include "house.h"

static void
build (House *house)
{
  house_init (house);
  house->site.coldest_night_c = -8;
  house->site.humidity_percent = 70;
  house->site.wind_m_s = 1;
  house_add_pen (house, "pen", HC_PEN_INDOOR, 4000, 3000);
  house_add_roost (house, "pen", 2000, 600, 3000, 60, 1);
  house_add_birds (house, "heavy_breed", "pen", 8, 0, -1);
}

static void
open_up (House *house)
{
  house_add_opening (house, HC_OPENING_VENT, "pen-n", 1500, 900, 300);
  house_add_opening (house, HC_OPENING_VENT, "pen-s", 1500, 900, 300);
}

static HcFittingValues *
add_drinker (House *house)
{
  HcFittingValues *drinker = house_add (house, "pen", HC_FITTING_DRINKER, 3000, 2400, 300, 300);

  drinker->form = HC_FORM_ROUND;
  return drinker;
}

static void
assert_finds (const House *house, const char *code, gboolean finds)
{
  g_autoptr (HcCheck) check = house_check (house, HC_CONDITION_NIGHT);

  g_assert_cmpint (house_find (check, code) != NULL, ==, finds);
}

/* Boards all round and no vent: breath stays in. */
static void
test_shut_up_is_damp (void)
{
  House house;
  g_autoptr (HcCheck) check = NULL;

  build (&house);
  check = house_check (&house, HC_CONDITION_NIGHT);
  g_assert_nonnull (house_find (check, "air.damp"));
  g_assert_cmpint (hc_check_get_need_level (check, HC_NEED_AIR), ==, HC_LEVEL_SHORT);
  house_clear (&house);
}

static void
test_vents_dry_it (void)
{
  House house;

  build (&house);
  open_up (&house);
  assert_finds (&house, "air.damp", FALSE);
  house_clear (&house);
}

static void
test_open_water_in_frost (void)
{
  House house;
  HcFittingValues *drinker;

  build (&house);
  open_up (&house);
  assert_finds (&house, "air.open-water", FALSE);
  drinker = add_drinker (&house);
  assert_finds (&house, "air.open-water", TRUE);
  drinker->out_at_night = TRUE;
  assert_finds (&house, "air.open-water", FALSE);
  drinker->out_at_night = FALSE;
  drinker->form = HC_FORM_NIPPLES;
  assert_finds (&house, "air.open-water", FALSE);
  house_clear (&house);
}

static void
test_no_frost_no_wet_wattles (void)
{
  House house;

  build (&house);
  house.site.coldest_night_c = 6;
  open_up (&house);
  add_drinker (&house);
  assert_finds (&house, "air.open-water", FALSE);
  house_clear (&house);
}

/* Cold is nobody's fault: it is told, and the level is that of the rest. */
static void
test_plain_cold_lowers_no_level (void)
{
  House house;
  g_autoptr (HcCheck) mild = NULL;
  g_autoptr (HcCheck) bitter = NULL;

  build (&house);
  open_up (&house);
  mild = house_check (&house, HC_CONDITION_NIGHT);
  house.site.coldest_night_c = -35;
  bitter = house_check (&house, HC_CONDITION_NIGHT);
  g_assert_null (house_find (mild, "air.plain-cold"));
  g_assert_nonnull (house_find (bitter, "air.plain-cold"));
  g_assert_cmpint (hc_check_get_need_level (bitter, HC_NEED_AIR), ==,
                   hc_check_get_need_level (mild, HC_NEED_AIR));
  house_clear (&house);
}

/* A hole at the height of the bar, and wind on it. */
static void
test_draught_at_the_roost (void)
{
  House house;

  build (&house);
  open_up (&house);
  assert_finds (&house, "air.draught", FALSE);
  house.site.wind_m_s = 12;
  house_add_opening (&house, HC_OPENING_VENT, "pen-n", 2600, 600, 400);
  ((HcFittingValues *) house_add_roost (&house, "pen", 2600, 200, 800, 60, 1))->base_mm = 1400;
  assert_finds (&house, "air.draught", TRUE);
  house_clear (&house);
}

/* During a drag the answer of before stands. */
static void
test_it_settles (void)
{
  House house;
  g_autoptr (HcCheckCache) cache = hc_check_cache_new ();
  g_autoptr (HcCheck) before = NULL;
  g_autoptr (HcCheck) during = NULL;
  g_autoptr (HcPlan) opened = NULL;
  g_autoptr (HcFlock) flock = NULL;

  build (&house);
  before = house_check (&house, HC_CONDITION_NIGHT);
  open_up (&house);
  opened = house_make_plan (&house);
  flock = hc_flock_on (opened, house.book, hc_plan_get_day (opened));
  during = hc_check_follow (before, cache, opened, house.book, flock);
  g_assert_nonnull (house_find (during, "air.damp"));
  house_clear (&house);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/air/damp", test_shut_up_is_damp);
  g_test_add_func ("/air/vents", test_vents_dry_it);
  g_test_add_func ("/air/open-water", test_open_water_in_frost);
  g_test_add_func ("/air/no-frost", test_no_frost_no_wet_wattles);
  g_test_add_func ("/air/plain-cold", test_plain_cold_lowers_no_level);
  g_test_add_func ("/air/draught", test_draught_at_the_roost);
  g_test_add_func ("/air/settles", test_it_settles);
  return g_test_run ();
}
