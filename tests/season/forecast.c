/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What the flock gives and takes adds up, and moves with what was counted. */
#include "config.h"

#include "../sample/season-sample.h"
#include "season/forecast/forecast.h"
#include "season/forecast/egg-sizes.h"
#include "season/hatch-learnt.h"
#include "season/in-hand.h"

/* Hens of a year and a bit, at full lay. */
#define HATCHED (SAMPLE_DAY - 52 * 7)

static void
set_up (SeasonSample *sample, gconstpointer data)
{
  season_sample_init (sample);
  season_sample_add_batch (sample, "b", "light_layer", 12, 1, HATCHED);
  sample->keeping.light_hours = 16;
}

static void
tear_down (SeasonSample *sample, gconstpointer data)
{
  season_sample_clear (sample);
}

static HcForecast *
forecast (const SeasonSample *sample, guint weeks)
{
  g_autoptr (HcPlan) plan = season_sample_plan (sample);

  return hc_forecast_new (plan, sample->book, SAMPLE_DAY, weeks);
}

/* Figures come from a file in one order and sums in another. */
static void
assert_about (double one, double other)
{
  g_assert_cmpfloat_with_epsilon (one, other, 1e-6 * MAX (ABS (other), 1));
}

static void
sorts_and_feeds_come_to_the_whole (SeasonSample *sample, gconstpointer data)
{
  g_autoptr (HcForecast) all = NULL;

  season_sample_set_breed (sample, "b", "leghorn");
  season_sample_add_clutch (sample, "e", "meat_slow", SAMPLE_DAY, 20);
  all = forecast (sample, 30);
  for (guint week = 0; week < 30; week++)
    {
      const HcForecastWeek *this = hc_forecast_get_week (all, week);
      double eggs = 0, feed = 0;

      for (guint i = 0; i < hc_forecast_get_n_egg_sorts (all); i++)
        eggs += hc_forecast_get_eggs (all, week, i);
      for (guint i = 0; i < hc_book_get_n_feeds (sample->book); i++)
        feed += hc_forecast_get_feed_kg (all, week, i);
      assert_about (eggs, this->eggs);
      assert_about (feed, this->feed_kg);
    }
}

/* Twice the birds: twice of everything but the spread, which grows less. */
static void
twice_the_hens_lay_twice_the_eggs (SeasonSample *sample, gconstpointer data)
{
  g_autoptr (HcForecast) few = forecast (sample, 10);
  g_autoptr (HcForecast) many = NULL;
  HcForecastWeek one, other;

  season_sample_add_batch (sample, "c", "light_layer", 12, 1, HATCHED);
  many = forecast (sample, 10);
  hc_forecast_sum (few, &one);
  hc_forecast_sum (many, &other);
  assert_about (other.eggs, 2 * one.eggs);
  assert_about (other.feed_kg, 2 * one.feed_kg);
  assert_about (other.water_l, 2 * one.water_l);
  assert_about (other.manure_kg, 2 * one.manure_kg);
  g_assert_cmpfloat (other.eggs_spread, <, 2 * one.eggs_spread);
  g_assert_cmpfloat (other.eggs_spread, >, one.eggs_spread);
}

static void
a_poor_count_lowers_what_is_expected (SeasonSample *sample, gconstpointer data)
{
  g_autoptr (HcForecast) before = forecast (sample, 4);
  g_autoptr (HcForecast) after = NULL;
  const HcLayLearnt *learnt;
  HcForecastWeek one, other;

  for (guint i = 0; i < 60; i++)
    season_sample_add_result (sample, "b", SAMPLE_DAY - i - 1, HC_RESULT_LAID, 2);
  after = forecast (sample, 4);
  learnt = hc_forecast_get_learnt (after, 0);
  hc_forecast_sum (before, &one);
  hc_forecast_sum (after, &other);
  g_assert_cmpint (learnt->counted, ==, 120);
  assert_about (learnt->hen_days, 720);
  g_assert_cmpfloat (learnt->learnt, <, learnt->book);
  g_assert_cmpfloat (learnt->learnt, >, 120.0 / 720);
  g_assert_cmpfloat (other.eggs, <, one.eggs);
  g_assert_cmpfloat (learnt->spread, <, hc_forecast_get_learnt (before, 0)->spread);
}

static void
a_poor_hatch_lowers_what_is_expected (SeasonSample *sample, gconstpointer data)
{
  const HcKind *kind = hc_book_get_kind (sample->book, "light_layer");
  g_autoptr (HcPlan) plan = NULL;
  g_autoptr (HcPlan) counted = NULL;
  HcHatchLearnt before, after;

  season_sample_add_clutch (sample, "e", "light_layer", SAMPLE_DAY - 40, 40);
  plan = season_sample_plan (sample);
  hc_hatch_learn_kind (plan, sample->book, kind, &before);
  g_assert_cmpint (before.eggs, ==, 0);
  assert_about (before.learnt, before.book);
  season_sample_add_result (sample, "e", SAMPLE_DAY - 19, HC_RESULT_HATCHED, 10);
  counted = season_sample_plan (sample);
  hc_hatch_learn_kind (counted, sample->book, kind, &after);
  g_assert_cmpint (after.eggs, ==, 40);
  assert_about (after.book, before.book);
  g_assert_cmpfloat (after.learnt, <, before.book);
  g_assert_cmpfloat (after.learnt, >, 0.25);
}

static void
hens_lay_less_in_the_dark (SeasonSample *sample, gconstpointer data)
{
  g_autoptr (HcForecast) lit = forecast (sample, 1);
  g_autoptr (HcForecast) dark = NULL;

  sample->keeping.light_hours = 0;
  dark = forecast (sample, 1);
  g_assert_cmpfloat (hc_forecast_get_week (dark, 0)->eggs, <, hc_forecast_get_week (lit, 0)->eggs);
  g_assert_cmpfloat (hc_forecast_get_week (dark, 0)->eggs, >, 0);
}

static void
what_is_slaughtered_fills_the_freezer (SeasonSample *sample, gconstpointer data)
{
  g_autoptr (HcForecast) all = NULL;
  const HcMeatDay *first, *second;

  sample->keeping.freezer_litres = 40;
  season_sample_add_batch (sample, "t", "meat_fast", 10, 10, SAMPLE_DAY);
  season_sample_add_leaving (sample, "t", SAMPLE_DAY + 42, HC_LEAVING_HARVESTED, 5, 5);
  season_sample_add_leaving (sample, "t", SAMPLE_DAY + 49, HC_LEAVING_HARVESTED, 5, 5);
  all = forecast (sample, 10);
  g_assert_cmpuint (hc_forecast_get_meat (all)->len, ==, 4);
  first = &g_array_index (hc_forecast_get_meat (all), HcMeatDay, 0);
  second = &g_array_index (hc_forecast_get_meat (all), HcMeatDay, 3);
  g_assert_cmpuint (first->on, ==, SAMPLE_DAY + 42);
  g_assert_cmpfloat (first->dressed_kg, <, first->live_kg);
  g_assert_cmpfloat (second->freezer_litres, >, 3 * first->litres);
  g_assert_cmpuint (hc_forecast_find_freezer_full (all), ==, SAMPLE_DAY + 49);
  g_assert_cmpint (hc_forecast_get_week (all, 6)->dressed, ==, 10);
}

static void
add_price (SeasonSample *sample, const char *of, double amount, HcPricePer per)
{
  HcPriceValues values = { (char *) of, amount, (int) per };
  g_autoptr (HcPrice) price = hc_price_new (of, &values);
  HcParts *prices = hc_parts_with (sample->prices, price);

  g_ptr_array_unref (sample->prices);
  sample->prices = prices;
}

static void
money_is_at_the_keepers_prices (SeasonSample *sample, gconstpointer data)
{
  g_autoptr (HcForecast) all = NULL;
  HcForecastWeek sum;

  sample->keeping.feed_bag_kg = 20;
  add_price (sample, "layer", 12, HC_PRICE_PIECE);
  add_price (sample, "grower", 12, HC_PRICE_PIECE);
  add_price (sample, "egg", 0.25, HC_PRICE_PIECE);
  all = forecast (sample, 8);
  hc_forecast_sum (all, &sum);
  assert_about (sum.cost, sum.feed_kg * 12 / 20);
  assert_about (sum.income, sum.eggs * 0.25);
}

/* A heap is brought to a ratio, and is there. */
static void
what_is_added_brings_the_heap_there (SeasonSample *sample, gconstpointer data)
{
  for (guint i = 0; i < 50; i++)
    {
      const HcCompost *base = hc_book_get_compost (sample->book, "fresh-manure");
      guint n = hc_book_get_n_composts (sample->book);
      const HcCompost *what
          = hc_book_get_compost_at (sample->book, (guint) g_test_rand_int_range (0, (int) n));
      double ratio = g_test_rand_double_range (20, 40);
      HcHeap heap = { 0 };
      double kg;

      hc_heap_add (&heap, base, g_test_rand_double_range (1, 500));
      kg = hc_heap_find_kg (&heap, what, ratio);
      g_assert_cmpfloat (kg, >=, 0);
      g_assert_true (kg > 0 || what->carbon_to_nitrogen <= ratio);
      if (kg == 0)
        continue;
      hc_heap_add (&heap, what, kg);
      g_assert_cmpfloat_with_epsilon (hc_heap_get_ratio (&heap), ratio, 1e-6);
    }
}

static void
shares_of_sizes_come_to_one (SeasonSample *sample, gconstpointer data)
{
  for (guint i = 0; i < 50; i++)
    {
      double mean_g = g_test_rand_double_range (20, 120);
      double sums[2] = { 0 };

      for (guint j = 0; j < hc_book_get_n_egg_classes (sample->book); j++)
        {
          const HcEggClass *size = hc_book_get_egg_class_at (sample->book, j);
          double share = hc_egg_class_get_share (sample->book, size, mean_g, 8);

          g_assert_cmpfloat (share, >=, 0);
          sums[size->units == HC_UNITS_FEET] += share;
        }
      g_assert_cmpfloat_with_epsilon (sums[0], 1, 1e-9);
      g_assert_cmpfloat_with_epsilon (sums[1], 1, 1e-9);
    }
}

/* One male covers so many hens; the rest lay for the kitchen. */
static void
eggs_in_hand_are_those_a_male_covers (SeasonSample *sample, gconstpointer data)
{
  g_autoptr (HcTimeline) timeline = NULL;
  g_autoptr (HcTimeline) more = NULL;
  const HcKind *kind = hc_book_get_kind (sample->book, "light_layer");
  HcInHand one, other;

  sample->keeping.incubator_places = 48;
  season_sample_add_clutch (sample, "e", "light_layer", SAMPLE_DAY - 5, 20);
  timeline = season_sample_timeline (sample);
  hc_in_hand_count (timeline, kind, SAMPLE_DAY, &one);
  g_assert_cmpint (one.females, ==, 12);
  g_assert_cmpint (one.covered, ==, 12);
  g_assert_cmpfloat (one.eggs, >, 12 * 7 * 0.4);
  g_assert_cmpfloat (one.eggs, <=, 12 * 7);
  g_assert_cmpint (one.places, ==, 48);
  g_assert_cmpint (one.taken, ==, 20);
  season_sample_add_batch (sample, "c", "light_layer", 30, 0, HATCHED);
  more = season_sample_timeline (sample);
  hc_in_hand_count (more, kind, SAMPLE_DAY, &other);
  g_assert_cmpint (other.females, ==, 42);
  g_assert_cmpint (other.covered, ==, 12);
  assert_about (other.eggs, one.eggs);
}

static void
add (const char *name, void (*test) (SeasonSample *, gconstpointer))
{
  g_autofree char *path = g_strconcat ("/season/forecast/", name, NULL);

  g_test_add (path, SeasonSample, NULL, set_up, test, tear_down);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  add ("sums", sorts_and_feeds_come_to_the_whole);
  add ("twice", twice_the_hens_lay_twice_the_eggs);
  add ("counted", a_poor_count_lowers_what_is_expected);
  add ("hatched", a_poor_hatch_lowers_what_is_expected);
  add ("dark", hens_lay_less_in_the_dark);
  add ("freezer", what_is_slaughtered_fills_the_freezer);
  add ("money", money_is_at_the_keepers_prices);
  add ("heap", what_is_added_brings_the_heap_there);
  add ("sizes", shares_of_sizes_come_to_one);
  add ("in-hand", eggs_in_hand_are_those_a_male_covers);
  return g_test_run ();
}
