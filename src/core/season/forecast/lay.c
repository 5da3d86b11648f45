/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The curve of the book, the breed's own number, the light and the season, and
 * what was counted here. */
#include "config.h"

#include "season/forecast/lay.h"

#include "base/chance.h"
#include "base/day.h"
#include "season/daylight.h"

#include <math.h>

#define DAYS_IN_YEAR 365
/* Half of the year later south of the equator. */
#define HALF_YEAR 182
/* The shortest day the dark share is stated for. */
#define DARK_HOURS 8.0

#define SUREST 0.99

/* Eight in ten of what is spread as a bell curve lie within so many standard
 * deviations. */
#define WIDTH_OF_EIGHTY 2.5631

/**
 * hc_lay_get_light_share: (skip)
 * @lay: the lay of a kind
 * @keeping: how birds are kept
 * @day: a Julian day
 *
 * Daylight or the lamp, whichever is longer; straight from the share laid on
 * days of eight hours to all of it at the hours full lay takes.
 *
 * Returns: the share of full lay that the light of that day allows
 */
double
hc_lay_get_light_share (const HcLay *lay, const HcKeepingValues *keeping, guint32 day)
{
  double hours = MAX (hc_daylight_hours (keeping->latitude_deg, day), keeping->light_hours);
  double dark = lay->dark_percent / 100;

  if (hours >= lay->light_hours)
    return 1;
  return MAX (dark + (1 - dark) * (hours - DARK_HOURS) / (lay->light_hours - DARK_HOURS), 0);
}

static gboolean
is_in_season (const HcLay *lay, const HcKeepingValues *keeping, guint32 day)
{
  int today;

  if (lay->season_from_day == 0)
    return TRUE;
  if (keeping->latitude_deg < 0)
    day += HALF_YEAR;
  today = (int) hc_day_get_day_of_year (day);
  return today >= lay->season_from_day && today <= lay->season_to_day;
}

/* Birds of one season lay their year's eggs in it, whatever the light. */
static double
in_season_rate (const HcGroup *group, double eggs_a_year)
{
  const HcLay *lay = &group->life->lay;

  return eggs_a_year / MAX (lay->season_to_day - lay->season_from_day + 1, 1);
}

static double
get_eggs_a_year (const HcGroup *group)
{
  return group->breed != NULL && group->breed->eggs_per_year > 0 ? group->breed->eggs_per_year
                                                                 : group->kind->eggs_per_year;
}

static double
get_year_share (const HcLay *lay, double weeks)
{
  guint year = (guint) MAX ((weeks - lay->start_week) / 52, 0);

  return lay->n_years > 0 ? lay->years_percent[MIN (year, lay->n_years - 1)] / 100 : 1;
}

/**
 * hc_lay_on: (skip)
 * @group: a group
 * @keeping: how birds are kept
 * @day: a Julian day
 *
 * Grown birds of unknown age lay the mean of a year, for as long as nobody
 * counts.
 *
 * Returns: eggs of one of its females on that day, 0 to 1
 */
double
hc_lay_on (const HcGroup *group, const HcKeepingValues *keeping, guint32 day)
{
  const HcLay *lay = &group->life->lay;
  double eggs_a_year = get_eggs_a_year (group);
  double weeks = hc_group_get_weeks (group, day);
  double rate;

  if (lay->start_week == 0 || eggs_a_year <= 0 || !is_in_season (lay, keeping, day))
    return 0;
  if (group->hatched != 0 && weeks < lay->start_week)
    return 0;
  if (lay->season_from_day > 0)
    rate = in_season_rate (group, eggs_a_year)
           * (group->hatched != 0 ? get_year_share (lay, weeks) : 1);
  else if (group->hatched == 0)
    rate = eggs_a_year / DAYS_IN_YEAR;
  else
    rate = hc_lay_get_percent (lay, weeks) / 100 * eggs_a_year / hc_lay_get_first_year (lay);
  if (lay->season_from_day == 0)
    rate *= hc_lay_get_light_share (lay, keeping, day);
  return CLAMP (rate, 0, 1);
}

/**
 * hc_lay_get_egg_g: (skip)
 * @group: a group
 * @day: a Julian day
 *
 * Returns: the mean mass of its eggs then, g
 */
double
hc_lay_get_egg_g (const HcGroup *group, guint32 day)
{
  double full_g = group->breed != NULL && group->breed->egg_g > 0 ? group->breed->egg_g
                                                                  : group->kind->egg_g;

  if (group->hatched == 0)
    return full_g;
  return full_g * hc_lay_get_egg_share (&group->life->lay, hc_group_get_weeks (group, day));
}

static int
count_hens (const HcTimeline *timeline, guint group, guint32 day)
{
  int hens = 0;

  for (guint i = 0; i < timeline->stays->len; i++)
    {
      const HcStay *stay = &g_array_index (timeline->stays, HcStay, i);

      if (stay->group == group && stay->female && stay->from <= day && day < stay->until)
        hens += stay->count;
    }
  return hens;
}

static void
add_counted (const HcTimeline *timeline, guint group, const HcResultValues *result,
             HcLayLearnt *learnt, double *expected)
{
  const HcKeepingValues *keeping = hc_plan_get_keeping (timeline->plan);

  learnt->counted += result->count;
  for (int i = 0; i < result->days; i++)
    {
      guint32 day = result->on - (guint32) i;
      int hens = count_hens (timeline, group, day);

      learnt->hen_days += hens;
      *expected += hens * hc_lay_on (hc_timeline_get_group (timeline, group), keeping, day);
    }
}

/**
 * hc_lay_learn: (skip)
 * @timeline: who lives where
 * @group: index of a group
 * @learnt: (out caller-allocates): what was counted, and what follows
 *
 * A hen lays an egg on a day or none: what is known of her is a beta
 * distribution, which every egg counted narrows.
 */
void
hc_lay_learn (const HcTimeline *timeline, guint group, HcLayLearnt *learnt)
{
  HcParts *results = hc_plan_get (timeline->plan)->results;
  const char *id = hc_timeline_get_group (timeline, group)->id;
  const HcCare *flocks = hc_book_get_care (timeline->book, "lay-of-flocks");
  double expected = 0;
  HcBeta rate;

  *learnt = (HcLayLearnt) { .spread = (flocks->high - flocks->low) / 100 / WIDTH_OF_EIGHTY };
  for (guint i = 0; i < results->len; i++)
    {
      const HcResultValues *result = hc_result_get (results->pdata[i]);

      if (result->what == HC_RESULT_LAID && g_strcmp0 (result->of, id) == 0)
        add_counted (timeline, group, result, learnt, &expected);
    }
  if (learnt->hen_days <= 0 || expected <= 0)
    return;
  learnt->book = expected / learnt->hen_days;
  hc_beta_fit (learnt->book * flocks->low / 100,
               MIN (learnt->book * flocks->high / 100, SUREST), &rate);
  hc_beta_learn (&rate, learnt->counted, MAX (learnt->hen_days - learnt->counted, 0));
  learnt->learnt = hc_beta_get_mean (&rate);
  learnt->spread = sqrt (rate.b / (rate.a * (rate.a + rate.b + 1)));
}

/**
 * hc_lay_learnt_get_times: (skip)
 * @self: what was learnt of a group
 *
 * Returns: how many times what the book says is to be expected of it
 */
double
hc_lay_learnt_get_times (const HcLayLearnt *self)
{
  return self->book > 0 ? self->learnt / self->book : 1;
}
