/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The forecast as a table: for people, and for spreadsheets. */
#include "config.h"

#include "cli/forecast.h"

#include "base/day.h"
#include "cli/csv-writer.h"
#include "season/hatch-learnt.h"
#include "words/year-words.h"

#include <glib/gi18n.h>
#include <math.h>

/* Half the width of what eight weeks in ten lie in, in standard deviations. */
#define EIGHTY 1.2816

static void
tell_week (const HcForecastWeek *week, GString *out)
{
  g_autofree char *date = hc_day_format (week->from);

  g_string_append_printf (out, "%s  %5d  %5.0f ± %-4.0f %8.1f %8.0f %8.1f %8.1f %9.2f %9.2f\n",
                          date, (int) week->birds, week->eggs, week->eggs_spread * EIGHTY,
                          week->feed_kg, week->water_l, week->bedding_kg, week->heat_kwh,
                          week->cost, week->income);
}

static void
tell_sorts (const HcForecast *forecast, GString *out)
{
  for (guint i = 0; i < hc_forecast_get_n_egg_sorts (forecast); i++)
    {
      const HcEggSort *sort = hc_forecast_get_egg_sort (forecast, i);
      double eggs = 0;

      for (guint week = 0; week < hc_forecast_get_n_weeks (forecast); week++)
        eggs += hc_forecast_get_eggs (forecast, week, i);
      if (eggs >= 0.5)
        g_string_append_printf (out, "  %6.0f  %s, %s\n", eggs,
                                sort->colour != NULL ? hc_care_get_name (sort->colour)
                                                     : _("colour not known"),
                                hc_care_get_name (sort->size->name));
    }
}

static void
tell_feeds (const HcCall *call, const HcForecast *forecast, GString *out)
{
  double bag_kg = hc_plan_get_keeping (call->plan)->feed_bag_kg;

  for (guint i = 0; i < hc_book_get_n_feeds (call->book); i++)
    {
      double kg = 0;

      for (guint week = 0; week < hc_forecast_get_n_weeks (forecast); week++)
        kg += hc_forecast_get_feed_kg (forecast, week, i);
      if (kg >= 0.05)
        g_string_append_printf (
            /* Translators: kilograms, name of the feed, bags, kilograms in a bag. */
            out, ngettext ("  %6.1f kg  %s (%.0f bag of %g kg)\n",
                           "  %6.1f kg  %s (%.0f bags of %g kg)\n",
                           (gulong) ceil (kg / bag_kg)),
            kg, hc_care_get_name (hc_book_get_feed_at (call->book, i)->name), ceil (kg / bag_kg),
            bag_kg);
    }
}

static void
tell_meat (const HcCall *call, const HcForecast *forecast, GString *out)
{
  const GArray *meat = hc_forecast_get_meat (forecast);
  guint32 full = hc_forecast_find_freezer_full (forecast);

  for (guint i = 0; i < meat->len; i++)
    {
      const HcMeatDay *day = &g_array_index (meat, HcMeatDay, i);
      g_autofree char *date = hc_day_format (day->on);
      g_autofree char *group
          = hc_words_group (hc_timeline_get_group (hc_forecast_get_timeline (forecast), day->group));

      g_string_append_printf (
          /* Translators: date, group, birds, kilograms, litres, litres in all. */
          out, _("  %s  %s: %d, %.1f kg dressed, %.0f l (%.0f l in all)\n"), date, group,
          day->birds, day->dressed_kg, day->litres, day->freezer_litres);
    }
  if (full != 0)
    {
      g_autofree char *date = hc_words_day (full);

      g_string_append_printf (out, _("  The freezer is full on %s if nothing is eaten before.\n"),
                              date);
    }
}

static void
tell_heap (const HcForecast *forecast, GString *out)
{
  static const char *const additions[] = { "straw", "leaves", "shavings", "fresh-manure" };
  const HcHeap *heap = hc_forecast_get_heap (forecast);
  const HcBook *book = hc_forecast_get_book (forecast);
  const HcCare *range = hc_book_get_care (book, "heap-ratio");
  double ratio = hc_heap_get_ratio (heap);

  g_string_append_printf (
      /* Translators: kilograms, carbon for one of nitrogen. */
      out, _("  %.0f kg of droppings and bedding, %.0f of carbon to 1 of nitrogen\n"), heap->kg,
      ratio);
  if (heap->kg <= 0 || (ratio >= range->low && ratio <= range->high))
    return;
  for (guint i = 0; i < G_N_ELEMENTS (additions); i++)
    {
      const HcCompost *what = hc_book_get_compost (book, additions[i]);
      double low = hc_heap_find_kg (heap, what, ratio < range->low ? range->low : range->high);
      double high = hc_heap_find_kg (heap, what, ratio < range->low ? range->high : range->low);

      if (low > 0)
        g_string_append_printf (
            /* Translators: kilograms from, to, of what, ratio from, to. */
            out, _("  %.0f to %.0f kg of %s bring it to %g to %g\n"), low, high,
            hc_care_get_name (what->name), range->low, range->high);
    }
}

static void
tell_learnt (const HcForecast *forecast, GString *out)
{
  const HcTimeline *timeline = hc_forecast_get_timeline (forecast);

  for (guint i = 0; i < timeline->groups->len; i++)
    {
      const HcLayLearnt *learnt = hc_forecast_get_learnt (forecast, i);
      g_autofree char *group = hc_words_group (hc_timeline_get_group (timeline, i));

      if (learnt->book > 0)
        g_string_append_printf (
            /* Translators: group, eggs, percentages. */
            out, _("  %s: %d eggs counted; the book expects %.0f for 100 hens a day, your "
                   "count makes it %.0f\n"),
            group, learnt->counted, learnt->book * 100, learnt->learnt * 100);
    }
}

static void
tell_hatches (const HcCall *call, GString *out)
{
  for (guint i = 0; i < hc_book_get_n_kinds (call->book); i++)
    {
      const HcKind *kind = hc_book_get_kind_at (call->book, i);
      HcHatchLearnt learnt;

      hc_hatch_learn_kind (call->plan, call->book, kind, &learnt);
      if (learnt.eggs > 0)
        g_string_append_printf (
            /* Translators: kind of bird, eggs, percentages. */
            out, _("  %s: the hatch of %d eggs counted; the book expects %.0f of 100 to hatch, "
                   "your count makes it %.0f\n"),
            hc_kind_get_name (kind, 2), learnt.eggs, learnt.book * 100, learnt.learnt * 100);
    }
}

static void
tell_section (GString *out, const char *heading, GString *text)
{
  if (text->len > 0)
    g_string_append_printf (out, "\n%s\n%s", heading, text->str);
  g_string_set_size (text, 0);
}

/* For people: the weeks, then what they come to by sort. */
void
hc_forecast_tell (const HcCall *call, const HcForecast *forecast, GString *out)
{
  g_autoptr (GString) text = g_string_new (NULL);
  HcForecastWeek sum;

  g_string_append_printf (out, "%s\n\n%s\n", hc_plan_get (call->plan)->title,
                          _("week        birds  eggs         feed kg  water l  bedding kg    "
                            "kWh      cost    income"));
  for (guint i = 0; i < hc_forecast_get_n_weeks (forecast); i++)
    tell_week (hc_forecast_get_week (forecast, i), out);
  hc_forecast_sum (forecast, &sum);
  g_string_append_printf (out, "\n%s\n", _("All weeks, from the first"));
  tell_week (&sum, out);
  tell_sorts (forecast, text);
  tell_section (out, _("Eggs"), text);
  tell_learnt (forecast, text);
  tell_hatches (call, text);
  tell_section (out, _("What your own count says"), text);
  tell_feeds (call, forecast, text);
  tell_section (out, _("Feed"), text);
  g_string_append_printf (
      /* Translators: litres, litres, litres. */
      text, _("  %.0f l in mild weather, %.0f l with hot days as hot as they get, %.0f l of it "
              "carried while nights freeze\n"),
      sum.water_l, sum.water_hot_l, sum.water_carried_l);
  tell_section (out, _("Water"), text);
  tell_meat (call, forecast, text);
  tell_section (out, _("Freezer"), text);
  tell_heap (forecast, text);
  tell_section (out, _("Compost"), text);
}

static void
write_heading (HcCsvWriter *csv, const HcForecast *forecast)
{
  static const char *const columns[]
      = { "week", "birds", "eggs", "eggs_spread", "feed_kg", "water_l", "water_hot_l",
          "water_carried_l", "manure_kg", "bedding_kg", "heat_kwh", "dressed", "meat_kg", "cost",
          "income" };
  const HcBook *book = hc_forecast_get_book (forecast);

  for (guint i = 0; i < G_N_ELEMENTS (columns); i++)
    hc_csv_text (csv, columns[i]);
  for (guint i = 0; i < hc_book_get_n_feeds (book); i++)
    {
      g_autofree char *name = g_strconcat (hc_book_get_feed_at (book, i)->id, "_kg", NULL);

      hc_csv_text (csv, name);
    }
  for (guint i = 0; i < hc_forecast_get_n_egg_sorts (forecast); i++)
    {
      const HcEggSort *sort = hc_forecast_get_egg_sort (forecast, i);
      g_autofree char *name = g_strdup_printf (
          "eggs %s %s", sort->colour != NULL ? sort->colour : "unknown", sort->size->name);

      hc_csv_text (csv, name);
    }
  hc_csv_end_row (csv);
}

static void
write_week (HcCsvWriter *csv, const HcForecast *forecast, guint at)
{
  const HcForecastWeek *week = hc_forecast_get_week (forecast, at);
  const double numbers[] = { week->eggs, week->eggs_spread, week->feed_kg, week->water_l,
                             week->water_hot_l, week->water_carried_l, week->manure_kg,
                             week->bedding_kg, week->heat_kwh, week->dressed, week->meat_kg,
                             week->cost, week->income };
  g_autofree char *date = hc_day_format (week->from);

  hc_csv_text (csv, date);
  hc_csv_count (csv, week->birds);
  for (guint i = 0; i < G_N_ELEMENTS (numbers); i++)
    hc_csv_number (csv, numbers[i]);
  for (guint i = 0; i < hc_book_get_n_feeds (hc_forecast_get_book (forecast)); i++)
    hc_csv_number (csv, hc_forecast_get_feed_kg (forecast, at, i));
  for (guint i = 0; i < hc_forecast_get_n_egg_sorts (forecast); i++)
    hc_csv_number (csv, hc_forecast_get_eggs (forecast, at, i));
  hc_csv_end_row (csv);
}

/* For spreadsheets: a row for each week. */
void
hc_forecast_write_csv (const HcForecast *forecast, GString *out)
{
  HcCsvWriter csv = { out };

  write_heading (&csv, forecast);
  for (guint i = 0; i < hc_forecast_get_n_weeks (forecast); i++)
    write_week (&csv, forecast, i);
}
