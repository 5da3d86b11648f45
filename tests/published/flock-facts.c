/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The lives of birds against what was published about them. */
#include "config.h"

#include "../sample/season-sample.h"
#include "season/chores/tasks.h"
#include "season/forecast/egg-sizes.h"
#include "season/forecast/forecast.h"

#define G_PER_OZ 28.349523125
#define KG_PER_LB 0.45359237

static const HcLife *
life_of (const SeasonSample *sample, const char *kind)
{
  return hc_book_get_life (sample->book, kind);
}

/* E22: incubation periods: chicken 21, duck 28, goose 28 to 35 days. */
static void
eggs_hatch_after_the_published_days (SeasonSample *sample, gconstpointer data)
{
  g_assert_cmpint (life_of (sample, "medium_layer")->hatching.days, ==, 21);
  g_assert_cmpint (life_of (sample, "bantam")->hatching.days, ==, 21);
  g_assert_cmpint (life_of (sample, "meat_fast")->hatching.days, ==, 21);
  g_assert_cmpint (life_of (sample, "duck")->hatching.days, ==, 28);
  g_assert_cmpint (life_of (sample, "goose")->hatching.days, >=, 28);
  g_assert_cmpint (life_of (sample, "goose")->hatching.days, <=, 35);
}

/* E12: litres for 1000 pullets a day at 21 °C: 100, 160, 200 in weeks 4, 12
 * and 18; laying hens 220 at half lay, 270 at 90 %. */
static void
layers_drink_what_was_published (SeasonSample *sample, gconstpointer data)
{
  static const struct
  {
    double week, litres;
  } rows[] = { { 4, 100 }, { 12, 160 }, { 18, 200 }, { 21, 220 }, { 30, 270 } };

  for (guint i = 0; i < G_N_ELEMENTS (rows); i++)
    g_assert_cmpfloat_with_epsilon (
        hc_curve_get (&life_of (sample, "light_layer")->water, rows[i].week), rows[i].litres,
        1e-9);
}

/* Twelve hens at 90 % lay drink 3.24 l a day at 21 °C and 4.2 to 4.9 l above
 * 32 °C, which is 1.3 to 1.5 times as much: from E12. */
static void
twelve_hens_drink_three_litres_and_a_quarter (SeasonSample *sample, gconstpointer data)
{
  const HcLife *life = life_of (sample, "light_layer");
  g_autoptr (HcPlan) plan = NULL;
  g_autoptr (HcForecast) forecast = NULL;
  double day_l;

  season_sample_add_batch (sample, "b", "light_layer", 12, 0, SAMPLE_DAY - 300);
  plan = season_sample_plan (sample);
  forecast = hc_forecast_new (plan, sample->book, SAMPLE_DAY, 1);
  day_l = hc_forecast_get_week (forecast, 0)->water_l / 7;
  g_assert_cmpfloat_with_epsilon (day_l, 3.24, 1e-9);
  g_assert_cmpfloat_with_epsilon (day_l * life->hot_days.low_times, 4.2, 0.05);
  g_assert_cmpfloat_with_epsilon (day_l * life->hot_days.high_times, 4.9, 0.05);
  g_assert_cmpfloat (life->hot_days.above_c, ==, 32);
}

/* NRC 1984, table 1: males of that time ate 3025 g in six weeks and weighed
 * 1690 g, 1.79 to one. A cross of today grows faster on less for each gram. */
static void
meat_birds_grow_better_than_in_1984 (SeasonSample *sample, gconstpointer data)
{
  g_autoptr (HcPlan) plan = NULL;
  g_autoptr (HcForecast) forecast = NULL;
  const HcKind *kind = hc_book_get_kind (sample->book, "meat_fast");
  double mass_kg = hc_kind_get_mass_kg (kind, HC_SEX_UNKNOWN, 6);
  HcForecastWeek sum;

  season_sample_add_batch (sample, "b", "meat_fast", 50, 50, SAMPLE_DAY);
  plan = season_sample_plan (sample);
  forecast = hc_forecast_new (plan, sample->book, SAMPLE_DAY, 6);
  hc_forecast_sum (forecast, &sum);
  g_assert_cmpfloat (mass_kg, >, 1.69);
  g_assert_cmpfloat (sum.feed_kg / 100, >, 3.025);
  g_assert_cmpfloat (sum.feed_kg / 100 / mass_kg, <, 1.79);
  g_assert_cmpfloat (sum.feed_kg / 100 / mass_kg, >, 1.4);
}

/* E36: Embden goslings on range, lb at 3, 6, 9 and 12 weeks; white Pekin
 * ducklings 0.60 to 7.54 lb in eight weeks, which lighter ducks stay below. */
static void
waterfowl_grow_as_published (SeasonSample *sample, gconstpointer data)
{
  static const double goslings_lb[] = { 3.30, 7.80, 10.10, 11.60 };
  static const double pekin_lb[] = { 0.60, 1.68, 2.98, 4.01, 5.13, 6.19, 6.95, 7.54 };
  const HcKind *goose = hc_book_get_kind (sample->book, "goose");
  const HcKind *duck = hc_book_get_kind (sample->book, "duck");

  for (guint i = 0; i < G_N_ELEMENTS (goslings_lb); i++)
    g_assert_cmpfloat_with_epsilon (hc_kind_get_mass_kg (goose, HC_SEX_UNKNOWN, 3 * (i + 1)),
                                    goslings_lb[i] * KG_PER_LB, 0.01);
  for (guint i = 0; i < G_N_ELEMENTS (pekin_lb); i++)
    {
      double kg = hc_kind_get_mass_kg (duck, HC_SEX_UNKNOWN, i + 1);

      g_assert_cmpfloat (kg, <=, pekin_lb[i] * KG_PER_LB);
      g_assert_cmpfloat (kg, >=, pekin_lb[i] * KG_PER_LB / 2);
    }
}

/* E41, the open ChickWeight data: 41 g on the day they hatch (mean), 74 to
 * 373 g after three weeks on four diets. */
static void
layer_chicks_weigh_what_chicks_weigh (SeasonSample *sample, gconstpointer data)
{
  static const char *const kinds[] = { "light_layer", "medium_layer", "heavy_breed" };

  for (guint i = 0; i < G_N_ELEMENTS (kinds); i++)
    {
      const HcKind *kind = hc_book_get_kind (sample->book, kinds[i]);

      g_assert_cmpfloat_with_epsilon (hc_kind_get_mass_kg (kind, HC_SEX_UNKNOWN, 0), 0.041,
                                      0.005);
      g_assert_cmpfloat (hc_kind_get_mass_kg (kind, HC_SEX_UNKNOWN, 3), >, 0.074);
      g_assert_cmpfloat (hc_kind_get_mass_kg (kind, HC_SEX_UNKNOWN, 3), <, 0.373);
    }
}

/* E40, USDA: all hens of the country laid 0.808 eggs a hen and day in February
 * 2020 and 0.815 in January 2021. Flocks are kept from 20 to about 80 weeks:
 * common practice, no source. */
static void
hybrids_lay_as_the_country_does (SeasonSample *sample, gconstpointer data)
{
  const HcLay *lay = &life_of (sample, "light_layer")->lay;
  double eggs = 0;

  for (int week = 20; week < 80; week++)
    eggs += hc_lay_is_moulting (lay, week + 0.5) ? lay->peak_percent / 100 * 0.75
                                                 : hc_lay_get_percent (lay, week + 0.5) / 100;
  g_assert_cmpfloat_with_epsilon (eggs / 60, 0.81, 0.06);
}

/* USDA weight classes: a dozen 'large' weighs 24 ounces at least, 'jumbo' 30. */
static void
a_dozen_large_weighs_24_ounces (SeasonSample *sample, gconstpointer data)
{
  static const struct
  {
    double ounces;
    const char *id;
  } rows[] = { { 15, "feet-peewee" },      { 18, "feet-small" }, { 21, "feet-medium" },
               { 24, "feet-large" },       { 27, "feet-extra-large" },
               { 30, "feet-jumbo" } };

  for (guint i = 0; i < G_N_ELEMENTS (rows); i++)
    {
      double egg_g = rows[i].ounces * G_PER_OZ / 12 + 0.01;

      g_assert_cmpstr (hc_egg_class_of (sample->book, HC_UNITS_FEET, egg_g)->id, ==, rows[i].id);
      if (i > 0)
        g_assert_cmpstr (hc_egg_class_of (sample->book, HC_UNITS_FEET, egg_g - 0.02)->id, ==,
                         rows[i - 1].id);
    }
}

/* Regulation 589/2008, article 4: XL from 73 g, L from 63 g, M from 53 g. */
static void
european_sizes_begin_where_the_law_says (SeasonSample *sample, gconstpointer data)
{
  g_assert_cmpstr (hc_egg_class_of (sample->book, HC_UNITS_METRIC, 73)->id, ==, "metric-xl");
  g_assert_cmpstr (hc_egg_class_of (sample->book, HC_UNITS_METRIC, 72.9)->id, ==, "metric-l");
  g_assert_cmpstr (hc_egg_class_of (sample->book, HC_UNITS_METRIC, 63)->id, ==, "metric-l");
  g_assert_cmpstr (hc_egg_class_of (sample->book, HC_UNITS_METRIC, 53)->id, ==, "metric-m");
  g_assert_cmpstr (hc_egg_class_of (sample->book, HC_UNITS_METRIC, 52.9)->id, ==, "metric-s");
}

/* E24: birds bought on 1 March stay apart for 30 days, until 31 March. */
static void
new_birds_may_join_after_thirty_days (SeasonSample *sample, gconstpointer data)
{
  g_autoptr (HcPlan) plan = NULL;
  g_autoptr (GArray) tasks = NULL;
  guint found = 0;

  season_sample_add_batch (sample, "b", "medium_layer", 6, 0, SAMPLE_DAY - 140);
  season_sample_set_came (sample, "b", SAMPLE_DAY);
  plan = season_sample_plan (sample);
  tasks = hc_tasks_of (plan, sample->book, SAMPLE_DAY, 10);
  for (guint i = 0; i < tasks->len; i++)
    if (g_array_index (tasks, HcTask, i).what == HC_TASK_QUARANTINE_OVER)
      {
        g_assert_cmpuint (g_array_index (tasks, HcTask, i).on, ==, SAMPLE_DAY + 30);
        found++;
      }
  g_assert_cmpuint (found, ==, 1);
}

/* E33: a cubic yard of sawdust, 400 lb with 240 lb of carbon at 400 to one,
 * lacks 7.4 lb of nitrogen for 30 to one, which 16 lb of urea (46 %) hold. */
static void
sawdust_wants_sixteen_pounds_of_urea (SeasonSample *sample, gconstpointer data)
{
  const HcCompost urea = { .carbon_to_nitrogen = 0, .nitrogen_percent = 46 };
  HcHeap heap = { 400, 240, 0.6, 0 };

  g_assert_cmpfloat_with_epsilon (hc_heap_get_ratio (&heap), 400, 1e-9);
  g_assert_cmpfloat_with_epsilon (hc_heap_find_kg (&heap, &urea, 30), 16.09, 0.01);
}

/* Common practice, no source: 60 to 70 % of the eggs set at home hatch, and
 * chicks are feathered at about eight weeks. */
static void
home_hatches_and_feathers_are_as_usual (SeasonSample *sample, gconstpointer data)
{
  HcHatchShares shares;
  g_autoptr (HcPlan) plan = season_sample_plan (sample);
  const HcKind *kind = hc_book_get_kind (sample->book, "medium_layer");
  double hatched;

  hc_hatch_shares_of_kind (&shares, plan, sample->book, kind);
  hatched = hc_beta_get_mean (&shares.fertile) * hc_beta_get_mean (&shares.hatch);
  g_assert_cmpfloat (hatched, >=, 0.6);
  g_assert_cmpfloat (hatched, <=, 0.7);
  g_assert_cmpint (kind->feathered_week, ==, 8);
}

static void
set_up (SeasonSample *sample, gconstpointer data)
{
  season_sample_init (sample);
}

static void
tear_down (SeasonSample *sample, gconstpointer data)
{
  season_sample_clear (sample);
}

static void
add (const char *name, void (*test) (SeasonSample *, gconstpointer))
{
  g_autofree char *path = g_strconcat ("/published/flock/", name, NULL);

  g_test_add (path, SeasonSample, NULL, set_up, test, tear_down);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  add ("incubation", eggs_hatch_after_the_published_days);
  add ("water", layers_drink_what_was_published);
  add ("water-of-twelve", twelve_hens_drink_three_litres_and_a_quarter);
  add ("broilers", meat_birds_grow_better_than_in_1984);
  add ("waterfowl", waterfowl_grow_as_published);
  add ("chick-weight", layer_chicks_weigh_what_chicks_weigh);
  add ("lay", hybrids_lay_as_the_country_does);
  add ("dozen", a_dozen_large_weighs_24_ounces);
  add ("sizes", european_sizes_begin_where_the_law_says);
  add ("quarantine", new_birds_may_join_after_thirty_days);
  add ("sawdust", sawdust_wants_sixteen_pounds_of_urea);
  add ("home", home_hatches_and_feathers_are_as_usual);
  return g_test_run ();
}
