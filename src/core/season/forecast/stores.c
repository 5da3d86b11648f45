/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What birds eat, drink, drop and lay on a day. */
#include "config.h"

#include "season/forecast/forecast-private.h"

#include "climate/season-curve.h"
#include "season/forecast/egg-sizes.h"

#define G_PER_KG 1000.0
#define ML_PER_L 1000.0

static gboolean
is_at_lay (const HcStayDay *at)
{
  return at->stay->female && at->group->kind->at_lay_week > 0
         && (at->group->hatched == 0
             || HC_WEEK_OF_LIFE ((int) at->weeks) >= at->group->kind->at_lay_week);
}

static gboolean
fits (const HcFeed *feed, const HcStayDay *at)
{
  const HcKind *kind = at->group->kind;

  return (feed->species >> kind->species & 1) != 0
         && (kind->species != HC_SPECIES_CHICKEN || feed->meat == kind->raised_for_meat)
         && at->weeks >= feed->from_week && (!feed->at_lay || is_at_lay (at));
}

/* The last that fits; the first of all where none does. */
static guint
find_feed (const HcBook *book, const HcStayDay *at)
{
  for (guint i = hc_book_get_n_feeds (book); i > 0; i--)
    if (fits (hc_book_get_feed_at (book, i - 1), at))
      return i - 1;
  return 0;
}

/* Droppings go with what is eaten. */
void
hc_forecast_add_feed (HcForecast *self, const HcStayDay *at)
{
  HcForecastWeek *week = hc_forecast_week_at (self, at->week);
  const HcLife *life = at->group->life;
  const HcCompost *manure = hc_book_get_compost (self->book, "fresh-manure");
  double grown_g = hc_curve_get (&life->feed, HC_WEEK_GROWN);
  double each_g = hc_curve_get (&life->feed, at->weeks);
  double kg = each_g * at->stay->count / G_PER_KG;
  double dry_kg = life->manure_dry_g / G_PER_KG * at->stay->count * each_g / MAX (grown_g, 1);

  week->feed_kg += kg;
  self->feeds[at->week * hc_book_get_n_feeds (self->book) + find_feed (self->book, at)] += kg;
  week->manure_kg += dry_kg / (1 - manure->moisture_percent / 100);
}

void
hc_forecast_add_water (HcForecast *self, const HcStayDay *at)
{
  HcForecastWeek *week = hc_forecast_week_at (self, at->week);
  const HcLife *life = at->group->life;
  double litres = hc_curve_get (&life->water, at->weeks) * at->stay->count / ML_PER_L;
  HcSeasonDay weather = hc_season_day (self->book, hc_plan_get_site (self->plan),
                                       hc_plan_get_keeping (self->plan)->latitude_deg, at->day);
  gboolean hot = weather.day_c > life->hot_days.above_c;

  week->water_l += litres;
  week->water_hot_l += litres * (hot ? life->hot_days.high_times : 1);
  if (weather.night_c < 0)
    week->water_carried_l += litres;
}

static const char *
get_colour (const HcGroup *group)
{
  return group->breed != NULL ? group->breed->egg_colour : NULL;
}

static gboolean
has_colour (const HcForecast *self, const char *colour)
{
  for (guint i = 0; i < self->sorts->len; i++)
    if (g_strcmp0 (g_array_index (self->sorts, HcEggSort, i).colour, colour) == 0)
      return TRUE;
  return FALSE;
}

/* Every size of every colour that any group lays. */
void
hc_forecast_list_egg_sorts (HcForecast *self)
{
  HcUnits units = (HcUnits) hc_plan_get_site (self->plan)->units;

  for (guint i = 0; i < self->timeline->groups->len; i++)
    {
      const HcGroup *group = hc_timeline_get_group (self->timeline, i);

      if (group->life->lay.start_week == 0 || has_colour (self, get_colour (group)))
        continue;
      for (guint j = 0; j < hc_book_get_n_egg_classes (self->book); j++)
        {
          HcEggSort sort = { get_colour (group), hc_book_get_egg_class_at (self->book, j) };

          if (sort.size->units == units)
            g_array_append_val (self->sorts, sort);
        }
    }
}

static void
sort_eggs (HcForecast *self, const HcStayDay *at, double eggs)
{
  double egg_g = hc_lay_get_egg_g (at->group, at->day);
  double spread_percent = at->group->life->lay.egg_spread_percent;

  for (guint i = 0; i < self->sorts->len; i++)
    {
      const HcEggSort *sort = hc_forecast_get_egg_sort (self, i);

      if (g_strcmp0 (sort->colour, get_colour (at->group)) == 0)
        self->eggs[at->week * self->sorts->len + i]
            += eggs * hc_egg_class_get_share (self->book, sort->size, egg_g, spread_percent);
    }
}

void
hc_forecast_add_eggs (HcForecast *self, const HcStayDay *at, double *group_eggs)
{
  HcForecastWeek *week = hc_forecast_week_at (self, at->week);
  const HcLayLearnt *learnt = hc_forecast_get_learnt (self, at->stay->group);
  double each;

  if (!at->stay->female)
    return;
  each = hc_lay_on (at->group, hc_plan_get_keeping (self->plan), at->day)
         * hc_lay_learnt_get_times (learnt);
  each = MIN (each, 1);
  if (each <= 0)
    return;
  week->eggs += each * at->stay->count;
  week->eggs_spread += each * (1 - each) * at->stay->count;
  group_eggs[at->stay->group] += each * at->stay->count;
  sort_eggs (self, at, each * at->stay->count);
}
