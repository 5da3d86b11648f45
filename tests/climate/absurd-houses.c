/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Houses and weather nobody has: a figure or a sentence for each, and never a crash. */
#include "config.h"

#include "climate/chicks.h"
#include "climate/hot-help.h"
#include "climate/year-nights.h"
#include "mend/air.h"
#include "plan/edit-opening.h"
#include "sample/demo-night.h"
#include "words/air-words.h"
#include "words/night-words.h"

#include <math.h>

static void
assert_sound (const HcNight *night)
{
  for (guint i = 0; i < night->n_spaces; i++)
    {
      const HcNightSpace *space = &night->spaces[i];

      g_assert_true (isfinite (space->air.t_c));
      g_assert_true (isfinite (space->air.humidity));
      g_assert_true (isfinite (space->air.co2_ppm));
      g_assert_true (isfinite (space->air.ammonia_ppm));
      g_assert_true (isfinite (space->draught_m_s));
      g_assert_cmpfloat (space->air.humidity, >=, 0);
      g_assert_cmpfloat (space->air.humidity, <=, 1 + 1e-9);
    }
}

static gboolean
is_told (const HcNight *night)
{
  gboolean told = FALSE;

  for (guint fault = HC_AIR_FAULT_TEMPERATURE; fault <= HC_AIR_FAULT_UNSETTLED; fault <<= 1)
    if (night->air_faults & fault)
      told |= *hc_words_air_fault ((HcAirFault) fault) != '\0';
  return told;
}

static void
test_absurd_weather_is_drawn_in_and_told (void)
{
  static const HcWeather weathers[] = {
    { -90, 0.8, 3, FALSE }, { 90, 0.8, 3, FALSE },   { -10, 1.3, 3, FALSE },
    { -10, -1, 3, FALSE },  { -10, 0.8, -5, FALSE }, { -10, 0.8, 900, FALSE },
  };
  g_autoptr (HcPlan) plan = demo_plan ();
  g_autoptr (HcFlock) flock = hc_flock_on (plan, demo_book (), hc_plan_get_day (plan));

  for (guint i = 0; i < G_N_ELEMENTS (weathers); i++)
    {
      g_autoptr (HcHouseNight) night = hc_house_night_new (plan, NULL, flock, &weathers[i]);

      assert_sound (&night->night);
      g_assert_true (is_told (&night->night));
    }
}

/* A vent wider than its wall takes the whole of it and no more. */
static void
test_a_vent_wider_than_its_wall (void)
{
  g_autoptr (HcPlan) demo = demo_plan ();
  g_autoptr (HcFlock) flock = hc_flock_on (demo, demo_book (), hc_plan_get_day (demo));
  g_autoptr (HcHouseNight) night = hc_house_night_new (demo, NULL, flock, NULL);
  HcHouseAir *air = night->air;

  for (guint i = 0; i < air->ways->len; i++)
    g_array_index (air->ways, HcAirWay, i).whole_m2 *= 1000;
  hc_house_air_open_vents (air, 1);
  hc_house_night_settle_again (night);
  assert_sound (&night->night);
  for (guint i = 0; i < air->surfaces->len; i++)
    g_assert_cmpfloat (air->air.surfaces[i].area_m2, >=, 0);
}

static void
test_ten_thousand_birds (void)
{
  g_autoptr (HcPlan) demo = demo_plan ();
  g_autoptr (HcPlan) shut = demo_with_vents (demo, 0);
  g_autoptr (HcFlock) flock = hc_flock_on (shut, demo_book (), hc_plan_get_day (shut));
  g_autoptr (HcFlock) many = hc_flock_scaled (flock, 10000);
  g_autoptr (HcHouseNight) night = hc_house_night_new (shut, NULL, many, NULL);
  g_autoptr (GPtrArray) remedies = hc_mend_air (night);
  g_autofree char *words = hc_words_night (hc_night_get_worst (&night->night), HC_UNITS_METRIC);

  assert_sound (&night->night);
  g_assert_cmpuint (night->night.spaces[0].faults & HC_NIGHT_STALE, !=, 0);
  g_assert_cmpstr (words, !=, "");
}

static HcPlan *
without_openings (HcPlan *plan)
{
  HcParts *openings = hc_layout_get (hc_plan_get_layout (plan))->openings;
  g_autoptr (GPtrArray) ids = g_ptr_array_new ();

  for (guint i = 0; i < openings->len; i++)
    g_ptr_array_add (ids, (gpointer) hc_opening_get_id (openings->pdata[i]));
  g_ptr_array_add (ids, NULL);
  return hc_plan_remove_openings (plan, (const char *const *) ids->pdata, NULL);
}

static void
test_no_opening_at_all (void)
{
  g_autoptr (HcPlan) demo = demo_plan ();
  g_autoptr (HcPlan) bare = without_openings (demo);
  g_autoptr (HcHouseNight) night = demo_night (bare);
  g_autofree char *picture = hc_words_air_picture (night, HC_UNITS_METRIC);

  assert_sound (&night->night);
  g_assert_cmpstr (picture, !=, "");
}

/* Nothing drives the air; turbulence alone does, so that there is an answer. */
static void
test_a_hot_calm_day (void)
{
  g_autoptr (HcPlan) plan = demo_plan ();
  g_autoptr (HcHouseNight) night = demo_night (plan);
  g_autoptr (HcHouseAir) house = NULL;
  HcHouseAirAsk hot = night->ask;
  HcHotDay day;

  hc_hot_day_init_weather (&hot, 45);
  hot.weather.wind_m_s = 0;
  house = hc_house_air_new (&hot);
  hc_hot_day_settle (house, &hot, &day);
  g_assert_true (isfinite (day.t_c) && isfinite (day.index_c) && isfinite (day.fresh_m3_h));
  g_assert_cmpfloat (day.fresh_m3_h, >, 0);
  g_assert_cmpint (day.risk, ==, HC_HEAT_DANGER);
}

static void
test_an_empty_plan_has_sentences (void)
{
  g_autoptr (HcPlan) plan = hc_plan_new_empty ("u", "t");
  g_autoptr (HcHouseNight) night = demo_night (plan);
  g_autoptr (GPtrArray) remedies = hc_mend_air (night);
  g_autoptr (HcYearNights) weeks = hc_year_nights_new (plan, NULL);
  g_autoptr (GArray) chicks = hc_chick_nights (plan, night->ask.house, night->ask.flock, 700000);
  HcYearNight week;
  HcHotHelp help;
  g_autofree char *words = NULL;

  hc_year_nights_work_out (weeks, night->ask.flock, 700000, &week);
  hc_hot_help_work_out (&night->ask, &help);
  words = hc_words_hot_day (&help, HC_UNITS_METRIC);
  g_assert_cmpuint (remedies->len, ==, 0);
  g_assert_cmpuint (chicks->len, ==, 0);
  g_assert_true (isfinite (week.inside_c) && isfinite (week.hot_inside_c));
  g_assert_cmpstr (words, !=, "");
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/absurd/weather", test_absurd_weather_is_drawn_in_and_told);
  g_test_add_func ("/absurd/wide-vent", test_a_vent_wider_than_its_wall);
  g_test_add_func ("/absurd/ten-thousand", test_ten_thousand_birds);
  g_test_add_func ("/absurd/no-opening", test_no_opening_at_all);
  g_test_add_func ("/absurd/hot-calm", test_a_hot_calm_day);
  g_test_add_func ("/absurd/empty", test_an_empty_plan_has_sentences);
  return g_test_run ();
}
