/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Reading the lives of birds, and what goes on a compost heap. */
#include "config.h"

#include "book/life-reader.h"

#include "book/book-private.h"
#include "book/life.h"

#include <glib/gi18n-lib.h>

static void
read_grounds (HcRecord *record, const HcDataContext *context, HcGrounds *grounds)
{
  grounds->evidence = hc_sources_read_grounds (&context->sources, record, &grounds->source);
  grounds->note = hc_record_maybe_text (record, "note");
}

static void
read_curve (HcRecord *parent, const char *member, const HcDataContext *context, HcCurve *curve)
{
  g_autoptr (HcRecord) record = hc_record_open (parent, member);
  guint n = hc_record_count (record, "points");

  if (n < 2 || n > HC_CURVE_POINTS)
    hc_record_fault (record, "points", _("list 2 to %d points."), HC_CURVE_POINTS);
  curve->n_points = MIN (n, HC_CURVE_POINTS);
  for (guint i = 0; i < curve->n_points; i++)
    {
      g_autoptr (HcRecord) point = hc_record_open_at (record, "points", i);
      double after = i > 0 ? curve->points[i - 1].week + 0.1 : 0;

      curve->points[i].week = hc_record_number (point, "week", after, 520);
      curve->points[i].value = hc_record_number (point, "value", 0, 10000);
    }
  read_grounds (record, context, &curve->grounds);
}

static void
read_hot_days (HcRecord *parent, const HcDataContext *context, HcHotDays *hot)
{
  g_autoptr (HcRecord) record = hc_record_open (parent, "hot_days");

  hot->above_c = hc_record_number (record, "above_c", 0, 60);
  hot->low_times = hc_record_number (record, "low_times", 1, 10);
  hot->high_times = hc_record_number (record, "high_times", hot->low_times, 10);
  read_grounds (record, context, &hot->grounds);
}

static void
read_hatching (HcRecord *parent, const HcDataContext *context, HcHatching *hatching)
{
  g_autoptr (HcRecord) record = hc_record_open (parent, "hatching");

  hatching->days = hc_record_whole (record, "days", 10, 60);
  hatching->days_low = hc_record_whole (record, "days_low", 10, hatching->days);
  hatching->days_high = hc_record_whole (record, "days_high", hatching->days, 60);
  hatching->stop_turning_day = hc_record_whole (record, "stop_turning_day", 1, hatching->days);
  for (guint i = 0; i < MIN (hc_record_count (record, "candle_days"), 2); i++)
    hatching->candle_days[i] = hc_record_whole_at (record, "candle_days", i, 1, hatching->days);
  hatching->fertile_low_percent = hc_record_number (record, "fertile_low_percent", 1, 99);
  hatching->fertile_high_percent
      = hc_record_number (record, "fertile_high_percent", hatching->fertile_low_percent, 99.9);
  hatching->hatch_low_percent = hc_record_number (record, "hatch_low_percent", 1, 99);
  hatching->hatch_high_percent
      = hc_record_number (record, "hatch_high_percent", hatching->hatch_low_percent, 99.9);
  hatching->females_per_male = hc_record_number (record, "females_per_male", 1, 100);
  read_grounds (record, context, &hatching->grounds);
}

static void
read_eggs (HcRecord *record, HcLay *lay)
{
  lay->first_egg_percent = hc_record_number (record, "first_egg_percent", 10, 100);
  lay->full_egg_weeks = hc_record_whole (record, "full_egg_weeks", 1, 200);
  lay->egg_spread_percent = hc_record_number (record, "egg_spread_percent", 0.1, 50);
}

static void
read_lay (HcRecord *parent, const HcDataContext *context, HcLay *lay)
{
  g_autoptr (HcRecord) record = hc_record_open (parent, "lay");

  lay->start_week = hc_record_whole (record, "start_week", 10, 200);
  lay->half_week = hc_record_whole (record, "half_week", lay->start_week, 200);
  lay->peak_week = hc_record_whole (record, "peak_week", lay->half_week, 200);
  lay->peak_percent = hc_record_number (record, "peak_percent", 1, 100);
  lay->weekly_loss_percent = hc_record_number (record, "weekly_loss_percent", 0, 10);
  lay->n_years = MIN (hc_record_count (record, "years_percent"), HC_LIFE_YEARS);
  for (guint i = 0; i < lay->n_years; i++)
    lay->years_percent[i] = hc_record_whole_at (record, "years_percent", i, 0, 100);
  lay->light_hours = hc_record_number (record, "light_hours", 8.5, 24);
  lay->dark_percent = hc_record_number (record, "dark_percent", 0, 100);
  lay->moult_weeks = hc_record_whole (record, "moult_weeks", 0, 51);
  lay->season_from_day = hc_record_maybe_whole (record, "season_from_day", 1, 366, 0);
  lay->season_to_day = hc_record_maybe_whole (record, "season_to_day", 1, 366, 0);
  read_eggs (record, lay);
  read_grounds (record, context, &lay->grounds);
}

static void
read_meat (HcRecord *parent, const HcDataContext *context, HcMeat *meat)
{
  g_autoptr (HcRecord) record = hc_record_open (parent, "meat");

  meat->dressing_percent = hc_record_number (record, "dressing_percent", 10, 100);
  meat->harvest_from_week = hc_record_whole (record, "harvest_from_week", 1, 200);
  meat->harvest_to_week
      = hc_record_whole (record, "harvest_to_week", meat->harvest_from_week, 500);
  meat->litres_per_kg = hc_record_number (record, "litres_per_kg", 0.5, 10);
  read_grounds (record, context, &meat->grounds);
}

void
hc_life_read (HcRecord *record, gpointer item, gpointer user_data)
{
  const HcDataContext *context = user_data;
  HcLife *life = item;

  life->id = hc_record_id (record, "id");
  read_curve (record, "feed", context, &life->feed);
  read_curve (record, "water", context, &life->water);
  read_hot_days (record, context, &life->hot_days);
  read_hatching (record, context, &life->hatching);
  if (hc_record_has (record, "lay"))
    read_lay (record, context, &life->lay);
  read_meat (record, context, &life->meat);
  life->kept_years = hc_record_whole (record, "kept_years", 1, HC_LIFE_YEARS);
  life->manure_dry_g = hc_record_number (record, "manure_dry_g", 1, 500);
}

void
hc_compost_read (HcRecord *record, gpointer item, gpointer user_data)
{
  const HcDataContext *context = user_data;
  HcCompost *compost = item;

  compost->id = hc_record_id (record, "id");
  compost->name = hc_record_text (record, "name");
  compost->carbon_to_nitrogen = hc_record_number (record, "carbon_to_nitrogen", 1, 2000);
  compost->moisture_percent = hc_record_number (record, "moisture_percent", 0, 99);
  compost->nitrogen_percent = hc_record_number (record, "nitrogen_percent", 0.01, 50);
  compost->density_kg_m3 = hc_record_number (record, "density_kg_m3", 10, 2000);
  read_grounds (record, context, &compost->grounds);
}
