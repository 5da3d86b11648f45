/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Goes through the days of each week and adds up. */
#include "config.h"

#include "season/forecast/forecast-private.h"

#include "base/day.h"
#include "flock/own-standard.h"
#include "season/year.h"

#include <math.h>

static gboolean
is_there (const HcStay *stay, guint32 day)
{
  return stay->from <= day && day < stay->until;
}

static void
add_day (HcForecast *self, guint week, guint32 day, double *group_eggs)
{
  for (guint i = 0; i < self->timeline->stays->len; i++)
    {
      const HcStay *stay = &g_array_index (self->timeline->stays, HcStay, i);
      const HcGroup *group = hc_timeline_get_group (self->timeline, stay->group);
      HcStayDay at = { week, day, stay, group };

      if (!is_there (stay, day))
        continue;
      at.weeks = hc_group_get_weeks (group, day);
      if (day == hc_forecast_week_at (self, week)->from)
        hc_forecast_week_at (self, week)->birds += stay->count;
      hc_forecast_add_feed (self, &at);
      hc_forecast_add_water (self, &at);
      hc_forecast_add_eggs (self, &at, group_eggs);
    }
}

/* Hens of one flock lay well or badly together: what is not known of a flock
 * is added to the chance of each day. */
static void
spread_eggs (HcForecast *self, HcForecastWeek *week, const double *group_eggs)
{
  double variance = week->eggs_spread;

  for (guint i = 0; i < self->timeline->groups->len; i++)
    variance += pow (group_eggs[i] * g_array_index (self->learnt, HcLayLearnt, i).spread, 2);
  week->eggs_spread = sqrt (variance);
}

static void
add_week (HcForecast *self, guint week)
{
  HcForecastWeek *this = hc_forecast_week_at (self, week);
  g_autofree double *group_eggs = g_new0 (double, self->timeline->groups->len + 1);

  for (guint32 day = this->from; day < this->from + HC_DAYS_IN_WEEK; day++)
    add_day (self, week, day, group_eggs);
  spread_eggs (self, this, group_eggs);
}

static void
learn (HcForecast *self)
{
  for (guint i = 0; i < self->timeline->groups->len; i++)
    {
      HcLayLearnt learnt;

      hc_lay_learn (self->timeline, i, &learnt);
      g_array_append_val (self->learnt, learnt);
    }
}

static HcForecast *
new_empty (HcPlan *plan, HcBook *book, guint32 from, guint weeks)
{
  HcForecast *self = g_new0 (HcForecast, 1);

  g_atomic_ref_count_init (&self->refs);
  self->plan = hc_plan_ref (plan);
  self->book = hc_book_ref (book);
  self->standard = hc_plan_get_own_standard (plan, book);
  self->timeline = hc_timeline_of (plan, book);
  self->weeks = g_array_new (FALSE, TRUE, sizeof (HcForecastWeek));
  g_array_set_size (self->weeks, weeks);
  for (guint i = 0; i < weeks; i++)
    hc_forecast_week_at (self, i)->from = from + i * HC_DAYS_IN_WEEK;
  self->sorts = g_array_new (FALSE, FALSE, sizeof (HcEggSort));
  hc_forecast_list_egg_sorts (self);
  self->eggs = g_new0 (double, (gsize) weeks * self->sorts->len + 1);
  self->feeds = g_new0 (double, (gsize) weeks * hc_book_get_n_feeds (book) + 1);
  self->learnt = g_array_new (FALSE, FALSE, sizeof (HcLayLearnt));
  self->meat = g_array_new (FALSE, FALSE, sizeof (HcMeatDay));
  return self;
}

/**
 * hc_forecast_new: (skip)
 * @plan: a plan
 * @book: the book
 * @from: the first day
 * @weeks: how many weeks, at most %HC_YEAR_MOST_WEEKS
 *
 * Eggs that are set count as the chicks the keeper wants the house to carry.
 * What was counted here shifts what is expected.
 *
 * Returns: (transfer full): what the flock gives and takes
 */
HcForecast *
hc_forecast_new (HcPlan *plan, HcBook *book, guint32 from, guint weeks)
{
  HcForecast *self = new_empty (plan, book, from, CLAMP (weeks, 1, HC_YEAR_MOST_WEEKS));

  learn (self);
  for (guint i = 0; i < self->weeks->len; i++)
    add_week (self, i);
  hc_forecast_add_meat (self);
  hc_forecast_add_house (self);
  hc_forecast_add_money (self);
  return self;
}

HcForecast *
hc_forecast_ref (HcForecast *self)
{
  g_return_val_if_fail (self != NULL, NULL);
  g_atomic_ref_count_inc (&self->refs);
  return self;
}

void
hc_forecast_unref (HcForecast *self)
{
  g_return_if_fail (self != NULL);
  if (!g_atomic_ref_count_dec (&self->refs))
    return;
  g_array_unref (self->weeks);
  g_array_unref (self->sorts);
  g_array_unref (self->learnt);
  g_array_unref (self->meat);
  g_free (self->eggs);
  g_free (self->feeds);
  hc_timeline_unref (self->timeline);
  hc_standard_unref (self->standard);
  hc_book_unref (self->book);
  hc_plan_unref (self->plan);
  g_free (self);
}

HcBook *
hc_forecast_get_book (const HcForecast *self)
{
  return self->book;
}

const HcTimeline *
hc_forecast_get_timeline (const HcForecast *self)
{
  return self->timeline;
}

guint
hc_forecast_get_n_weeks (const HcForecast *self)
{
  return self->weeks->len;
}

/**
 * hc_forecast_get_week: (skip)
 * @self: a forecast
 * @week: which, from 0
 *
 * Returns: (transfer none): that week
 */
const HcForecastWeek *
hc_forecast_get_week (const HcForecast *self, guint week)
{
  g_return_val_if_fail (week < self->weeks->len, NULL);
  return hc_forecast_week_at (self, week);
}

/**
 * hc_forecast_sum: (skip)
 * @self: a forecast
 * @sum: (out caller-allocates): all weeks together, from the first day on
 *
 * A flock lays well or badly all year: spreads are added, not their squares.
 */
void
hc_forecast_sum (const HcForecast *self, HcForecastWeek *sum)
{
  *sum = (HcForecastWeek) { hc_forecast_week_at (self, 0)->from,
                            hc_forecast_week_at (self, 0)->birds };
  for (guint i = 0; i < self->weeks->len; i++)
    {
      const HcForecastWeek *week = hc_forecast_week_at (self, i);

      sum->eggs += week->eggs;
      sum->eggs_spread += week->eggs_spread;
      sum->feed_kg += week->feed_kg;
      sum->water_l += week->water_l;
      sum->water_hot_l += week->water_hot_l;
      sum->water_carried_l += week->water_carried_l;
      sum->manure_kg += week->manure_kg;
      sum->bedding_kg += week->bedding_kg;
      sum->heat_kwh += week->heat_kwh;
      sum->dressed += week->dressed;
      sum->meat_kg += week->meat_kg;
      sum->cost += week->cost;
      sum->income += week->income;
    }
}

guint
hc_forecast_get_n_egg_sorts (const HcForecast *self)
{
  return self->sorts->len;
}

const HcEggSort *
hc_forecast_get_egg_sort (const HcForecast *self, guint sort)
{
  g_return_val_if_fail (sort < self->sorts->len, NULL);
  return &g_array_index (self->sorts, HcEggSort, sort);
}

/**
 * hc_forecast_get_eggs: (skip)
 * @self: a forecast
 * @week: which week, from 0
 * @sort: which colour and size
 *
 * Returns: eggs of that sort in that week
 */
double
hc_forecast_get_eggs (const HcForecast *self, guint week, guint sort)
{
  return self->eggs[week * self->sorts->len + sort];
}

/**
 * hc_forecast_get_feed_kg: (skip)
 * @self: a forecast
 * @week: which week, from 0
 * @feed: which feed of the book
 *
 * Returns: feed of that sort eaten in that week, kg
 */
double
hc_forecast_get_feed_kg (const HcForecast *self, guint week, guint feed)
{
  return self->feeds[week * hc_book_get_n_feeds (self->book) + feed];
}

/**
 * hc_forecast_get_meat: (skip)
 * @self: a forecast
 *
 * Returns: (transfer none) (element-type HcMeatDay): birds for the freezer, by
 *   day
 */
const GArray *
hc_forecast_get_meat (const HcForecast *self)
{
  return self->meat;
}

/**
 * hc_forecast_find_freezer_full: (skip)
 * @self: a forecast
 *
 * Returns: the day on which the freezer is full when nothing is eaten
 *   meanwhile; 0 when it never is, or nobody entered how large it is
 */
guint32
hc_forecast_find_freezer_full (const HcForecast *self)
{
  double litres = hc_plan_get_keeping (self->plan)->freezer_litres;

  for (guint i = 0; litres > 0 && i < self->meat->len; i++)
    if (g_array_index (self->meat, HcMeatDay, i).freezer_litres > litres)
      return g_array_index (self->meat, HcMeatDay, i).on;
  return 0;
}

/**
 * hc_forecast_get_learnt: (skip)
 * @self: a forecast
 * @group: index of a group in the timeline
 *
 * Returns: (transfer none): what the keeper's own count says of it
 */
const HcLayLearnt *
hc_forecast_get_learnt (const HcForecast *self, guint group)
{
  g_return_val_if_fail (group < self->learnt->len, NULL);
  return &g_array_index (self->learnt, HcLayLearnt, group);
}

/**
 * hc_forecast_get_heap: (skip)
 * @self: a forecast
 *
 * Returns: (transfer none): the heap that all droppings and bedding make
 */
const HcHeap *
hc_forecast_get_heap (const HcForecast *self)
{
  return &self->heap;
}
