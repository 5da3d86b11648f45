/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The forecast for programs. */
#include "config.h"

#include "cli/forecast.h"

#include "base/day.h"
#include "cli/json-writer.h"

static void
write_date (HcJsonWriter *json, const char *name, guint32 day)
{
  g_autofree char *text = day != 0 ? hc_day_format (day) : NULL;

  hc_json_text (json, name, text);
}

static void
write_numbers (HcJsonWriter *json, const HcForecastWeek *week)
{
  write_date (json, "from", week->from);
  hc_json_count (json, "birds", week->birds);
  hc_json_number (json, "eggs", week->eggs);
  hc_json_number (json, "eggs_spread", week->eggs_spread);
  hc_json_number (json, "feed_kg", week->feed_kg);
  hc_json_number (json, "water_l", week->water_l);
  hc_json_number (json, "water_hot_l", week->water_hot_l);
  hc_json_number (json, "water_carried_l", week->water_carried_l);
  hc_json_number (json, "manure_kg", week->manure_kg);
  hc_json_number (json, "bedding_kg", week->bedding_kg);
  hc_json_number (json, "heat_kwh", week->heat_kwh);
  hc_json_count (json, "dressed", week->dressed);
  hc_json_number (json, "meat_kg", week->meat_kg);
  hc_json_number (json, "cost", week->cost);
  hc_json_number (json, "income", week->income);
}

static void
write_feeds (HcJsonWriter *json, const HcForecast *forecast, guint week)
{
  const HcBook *book = hc_forecast_get_book (forecast);

  hc_json_open (json, "feeds", '[');
  for (guint i = 0; i < hc_book_get_n_feeds (book); i++)
    {
      double kg = hc_forecast_get_feed_kg (forecast, week, i);

      if (kg <= 0)
        continue;
      hc_json_open (json, NULL, '{');
      hc_json_text (json, "feed", hc_book_get_feed_at (book, i)->id);
      hc_json_number (json, "kg", kg);
      hc_json_close (json, '}');
    }
  hc_json_close (json, ']');
}

static void
write_sorts (HcJsonWriter *json, const HcForecast *forecast, guint week)
{
  hc_json_open (json, "sorts", '[');
  for (guint i = 0; i < hc_forecast_get_n_egg_sorts (forecast); i++)
    {
      const HcEggSort *sort = hc_forecast_get_egg_sort (forecast, i);

      hc_json_open (json, NULL, '{');
      hc_json_text (json, "colour", sort->colour);
      hc_json_text (json, "size", sort->size->id);
      hc_json_number (json, "eggs", hc_forecast_get_eggs (forecast, week, i));
      hc_json_close (json, '}');
    }
  hc_json_close (json, ']');
}

static void
write_meat (HcJsonWriter *json, const HcForecast *forecast)
{
  const GArray *meat = hc_forecast_get_meat (forecast);
  const HcTimeline *timeline = hc_forecast_get_timeline (forecast);

  hc_json_open (json, "meat", '[');
  for (guint i = 0; i < meat->len; i++)
    {
      const HcMeatDay *day = &g_array_index (meat, HcMeatDay, i);

      hc_json_open (json, NULL, '{');
      write_date (json, "date", day->on);
      hc_json_text (json, "group", hc_timeline_get_group (timeline, day->group)->id);
      hc_json_count (json, "birds", day->birds);
      hc_json_number (json, "live_kg", day->live_kg);
      hc_json_number (json, "dressed_kg", day->dressed_kg);
      hc_json_number (json, "litres", day->litres);
      hc_json_number (json, "freezer_litres", day->freezer_litres);
      hc_json_close (json, '}');
    }
  hc_json_close (json, ']');
}

void
hc_forecast_write_json (const HcCall *call, const HcForecast *forecast, GString *out)
{
  HcJsonWriter json = { out };
  const HcHeap *heap = hc_forecast_get_heap (forecast);
  HcForecastWeek sum;

  hc_forecast_sum (forecast, &sum);
  hc_json_open (&json, NULL, '{');
  hc_json_text (&json, "title", hc_plan_get (call->plan)->title);
  hc_json_text (&json, "uid", hc_plan_get_id (call->plan));
  hc_json_text (&json, "currency", hc_plan_get_keeping (call->plan)->currency);
  hc_json_open (&json, "sum", '{');
  write_numbers (&json, &sum);
  hc_json_close (&json, '}');
  hc_json_open (&json, "weeks", '[');
  for (guint i = 0; i < hc_forecast_get_n_weeks (forecast); i++)
    {
      hc_json_open (&json, NULL, '{');
      write_numbers (&json, hc_forecast_get_week (forecast, i));
      write_feeds (&json, forecast, i);
      write_sorts (&json, forecast, i);
      hc_json_close (&json, '}');
    }
  hc_json_close (&json, ']');
  write_meat (&json, forecast);
  write_date (&json, "freezer_full", hc_forecast_find_freezer_full (forecast));
  hc_json_open (&json, "heap", '{');
  hc_json_number (&json, "kg", heap->kg);
  hc_json_number (&json, "carbon_to_nitrogen", hc_heap_get_ratio (heap));
  hc_json_number (&json, "moisture", hc_heap_get_moisture (heap));
  hc_json_close (&json, '}');
  hc_json_close (&json, '}');
}
