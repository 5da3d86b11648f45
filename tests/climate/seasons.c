/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The house through the year, on its hottest day, and with chicks in it. */
#include "config.h"

#include "climate/chicks.h"
#include "climate/hot-help.h"
#include "climate/season-curve.h"
#include "climate/year-nights.h"
#include "plan/edit-site.h"
#include "sample/demo-night.h"

#include <math.h>


static HcSiteValues
make_site (double coldest_c, double hottest_c)
{
  HcSiteValues site;

  hc_site_values_init (&site);
  site.coldest_night_c = coldest_c;
  site.hottest_day_c = hottest_c;
  return site;
}

static guint32
find_day (int month, int day)
{
  g_autoptr (GDate) date = g_date_new_dmy ((GDateDay) day, (GDateMonth) month, 2026);

  return g_date_get_julian (date);
}

/* The wave touches what the keeper entered, in the north and in the south. */
static void
test_the_wave_touches_both_ends (void)
{
  HcSiteValues site = make_site (-20, 30);
  HcSeasonDay winter = hc_season_day (demo_book (), &site, 60, find_day (1, 25));
  HcSeasonDay summer = hc_season_day (demo_book (), &site, 60, find_day (7, 26));
  HcSeasonDay south = hc_season_day (demo_book (), &site, -40, find_day (7, 26));

  g_assert_cmpfloat_with_epsilon (winter.night_c, -20, 0.1);
  g_assert_cmpfloat_with_epsilon (summer.day_c, 30, 0.1);
  g_assert_cmpfloat_with_epsilon (south.night_c, -20, 0.1);
  g_assert_cmpfloat (winter.day_c, >, winter.night_c);
  g_assert_cmpfloat (summer.day_c, >, summer.night_c);
}

/* A place entered upside down is no reason for a night hotter than its day. */
static void
test_nights_are_never_hotter_than_days (void)
{
  for (guint i = 0; i < 1000; i++)
    {
      HcSiteValues site
          = make_site (g_test_rand_double_range (-60, 30), g_test_rand_double_range (-20, 60));
      HcSeasonDay day = hc_season_day (demo_book (), &site, g_test_rand_double_range (-90, 90),
                                       (guint32) g_test_rand_int_range (1, 800000));

      g_assert_true (isfinite (day.night_c) && isfinite (day.day_c));
      g_assert_cmpfloat (day.night_c, <=, day.day_c + 1e-9);
      g_assert_cmpfloat (day.night_c, >=, site.coldest_night_c - 1e-9);
    }
}

static void
work_out_week (HcYearNights *weeks, HcPlan *plan, guint32 day, HcYearNight *week)
{
  g_autoptr (HcFlock) flock = hc_flock_on (plan, demo_book (), day);

  hc_year_nights_work_out (weeks, flock, day, week);
}

static void
test_weeks_of_the_demo (void)
{
  g_autoptr (HcPlan) plan = demo_plan ();
  g_autoptr (HcYearNights) weeks = hc_year_nights_new (plan, NULL);
  HcYearNight winter, summer;

  work_out_week (weeks, plan, find_day (1, 25), &winter);
  work_out_week (weeks, plan, find_day (7, 26), &summer);
  g_assert_cmpfloat (winter.inside_c, <, summer.inside_c);
  g_assert_cmpfloat (winter.inside_c, >=, winter.outside_c - 0.5);
  g_assert_cmpint (winter.cold, >=, summer.cold);
  g_assert_cmpint (summer.cold, ==, HC_COLD_NONE);
  g_assert_cmpfloat (summer.hot_inside_c, >, winter.hot_inside_c);
}

/* What is kept from week to week changes no answer that is told. */
static void
test_a_week_is_the_same_whatever_came_before (void)
{
  g_autoptr (HcPlan) plan = demo_plan ();
  g_autoptr (HcYearNights) in_order = hc_year_nights_new (plan, NULL);

  for (guint i = 0; i < 60; i++)
    {
      guint32 day = hc_plan_get_day (plan) + 7 * i;
      g_autoptr (HcYearNights) alone = hc_year_nights_new (plan, NULL);
      HcYearNight one, other;

      work_out_week (in_order, plan, day, &one);
      work_out_week (alone, plan, day, &other);
      g_assert_cmpfloat_with_epsilon (one.inside_c, other.inside_c, 1e-4);
      g_assert_cmpfloat_with_epsilon (one.hot_inside_c, other.hot_inside_c, 1e-4);
      g_assert_cmpuint (one.faults, ==, other.faults);
    }
}

static void
work_out_hot_help (double hottest_c, HcHotHelp *help)
{
  g_autoptr (HcPlan) demo = demo_plan ();
  HcSiteValues site = *hc_plan_get_site (demo);
  g_autoptr (HcPlan) plan = NULL;
  g_autoptr (HcHouseNight) night = NULL;

  site.hottest_day_c = hottest_c;
  plan = hc_plan_set_site (demo, &site, NULL);
  night = demo_night (plan);
  hc_hot_help_work_out (&night->ask, help);
}

static void
test_heat_and_what_helps (void)
{
  HcHotHelp mild, hot;

  work_out_hot_help (10, &mild);
  work_out_hot_help (36, &hot);
  g_assert_cmpint (mild.day.risk, ==, HC_HEAT_COMFORT);
  g_assert_cmpint (hot.day.risk, >=, HC_HEAT_STRESS);
  g_assert_cmpfloat (hot.water_l, >, mild.water_l);
  g_assert_cmpfloat (hot.shaded_k, >, 0);
  g_assert_cmpfloat (hot.calm_m3_h, >, 0);
  g_assert_cmpuint (hot.day.n_kinds, >=, 2);
  for (guint i = 0; i < hot.day.n_kinds; i++)
    g_assert_cmpfloat (hot.day.kinds[i].index_c, <=, hot.day.index_c);
}

/* Dark roofs take up more of the sun than light ones. */
static void
test_dark_roofs_are_hotter (void)
{
  double share[3];
  static const char *const ids[] = { "sun_absorbed_light", "sun_absorbed", "sun_absorbed_dark" };

  for (guint i = 0; i < 3; i++)
    share[i] = hc_book_get_air_figure (demo_book (), ids[i])->value;
  g_assert_cmpfloat (share[0], <, share[1]);
  g_assert_cmpfloat (share[1], <, share[2]);
}

static void
test_chicks_of_the_demo (void)
{
  g_autoptr (HcPlan) plan = demo_plan ();
  g_autoptr (HcHouseNight) night = demo_night (plan);
  g_autoptr (GArray) all
      = hc_chick_nights (plan, night->ask.house, night->ask.flock, hc_plan_get_day (plan));
  const HcChickNights *chicks;

  g_assert_cmpuint (all->len, ==, 1);
  chicks = &g_array_index (all, HcChickNights, 0);
  g_assert_cmpint (chicks->chicks, ==, 15);
  g_assert_cmpuint (chicks->n_weeks, >, 0);
  g_assert_cmpfloat_with_epsilon (chicks->kwh_a_day, chicks->watts * 0.024, 1e-9);
  g_assert_cmpfloat_with_epsilon (chicks->kwh, 7 * chicks->n_weeks * chicks->kwh_a_day, 1e-9);
  for (guint i = 0; i < chicks->n_weeks; i++)
    {
      const HcChickWeek *week = &chicks->weeks[i];

      g_assert_cmpfloat (week->heater_c, >=, week->room_c);
      g_assert_cmpint (week->is_enough, ==, week->heater_c >= week->wanted_c);
      if (i > 0)
        g_assert_cmpfloat (week->wanted_c, <=, chicks->weeks[i - 1].wanted_c);
    }
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/seasons/ends", test_the_wave_touches_both_ends);
  g_test_add_func ("/seasons/order", test_nights_are_never_hotter_than_days);
  g_test_add_func ("/seasons/demo", test_weeks_of_the_demo);
  g_test_add_func ("/seasons/alone", test_a_week_is_the_same_whatever_came_before);
  g_test_add_func ("/heat/help", test_heat_and_what_helps);
  g_test_add_func ("/heat/roofs", test_dark_roofs_are_hotter);
  g_test_add_func ("/chicks/demo", test_chicks_of_the_demo);
  return g_test_run ();
}
