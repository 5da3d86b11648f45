/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Every week's night and day in the house. */
#include "config.h"

#include "climate/year-nights.h"

#include "climate/risk.h"
#include "climate/season-curve.h"

struct _HcYearNights
{
  HcPlan *plan;
  HcHouse *house;
  HcHouseAir *by_night;
  HcHouseAir *by_day;
  HcAirState last_night;
  HcAirState last_day;
  gboolean has_last;
};

/**
 * hc_year_nights_new: (skip)
 * @plan: a plan
 * @house: (nullable): its house, where it is known
 *
 * Returns: (transfer full): its weeks, none worked out yet
 */
HcYearNights *
hc_year_nights_new (HcPlan *plan, HcHouse *house)
{
  HcYearNights *self = g_new0 (HcYearNights, 1);

  self->plan = hc_plan_ref (plan);
  self->house = house != NULL ? hc_house_ref (house)
                              : hc_house_new (hc_plan_get_layout (plan), NULL);
  return self;
}

void
hc_year_nights_free (HcYearNights *self)
{
  g_clear_pointer (&self->by_night, hc_house_air_free);
  g_clear_pointer (&self->by_day, hc_house_air_free);
  hc_house_unref (self->house);
  hc_plan_unref (self->plan);
  g_free (self);
}

/* The house with the birds and weather of @ask, made when it is first wanted. */
static HcHouseAir *
take_weather (HcHouseAir **house, const HcHouseAirAsk *ask)
{
  if (*house == NULL)
    *house = hc_house_air_new (ask);
  else
    hc_house_air_set_birds (*house, ask);
  if (*house != NULL)
    hc_house_air_set_weather (*house, ask, &ask->weather);
  return *house;
}

static void
settle_night (HcYearNights *self, HcHouseAirAsk *ask, HcYearNight *week)
{
  HcNight night;
  const HcNightSpace *worst;

  if (take_weather (&self->by_night, ask) == NULL)
    return;
  hc_night_settle (self->by_night, ask, self->has_last ? &self->last_night : NULL, &night);
  self->last_night = night.state;
  worst = &night.spaces[night.worst];
  week->inside_c = worst->air.t_c;
  week->humidity = worst->air.humidity;
  week->faults = hc_night_get_faults (&night);
  for (guint i = 0; i < night.n_spaces; i++)
    if (night.spaces[i].birds > 0)
      week->cold = MAX (week->cold, night.spaces[i].cold);
}

static void
settle_day (HcYearNights *self, HcHouseAirAsk *ask, HcYearNight *week)
{
  HcHotDay day = { 0 };

  if (take_weather (&self->by_day, ask) == NULL)
    return;
  hc_hot_day_settle_near (self->by_day, ask, self->has_last ? &self->last_day : NULL, &day,
                          &self->last_day);
  week->hot_inside_c = day.n_spaces > 0 ? day.t_c : week->hot_outside_c;
  week->heat = day.risk;
}

/**
 * hc_year_nights_work_out: (skip)
 * @self: the weeks of a plan
 * @flock: its birds on that day
 * @day: the Julian day
 * @week: (out caller-allocates): the cold night and the hot day of that season
 *
 * Walls, openings and roofs are looked at once for all weeks, and each week is followed
 * from the one before. Where nothing is under a
 * roof, it is inside as it is outside.
 */
void
hc_year_nights_work_out (HcYearNights *self, HcFlock *flock, guint32 day, HcYearNight *week)
{
  const HcSiteValues *site = hc_plan_get_site (self->plan);
  HcSeasonDay season = hc_season_day (hc_flock_get_book (flock), site,
                                      hc_plan_get_keeping (self->plan)->latitude_deg, day);
  HcHouseAirAsk ask;

  *week = (HcYearNight){ .day = day,
                         .outside_c = season.night_c,
                         .inside_c = season.night_c,
                         .humidity = site->humidity_percent / 100,
                         .hot_outside_c = season.day_c,
                         .hot_inside_c = season.day_c };
  hc_house_air_ask_init (&ask, self->house, flock, site);
  ask.weather.t_c = season.night_c;
  settle_night (self, &ask, week);
  hc_hot_day_init_weather (&ask, season.day_c);
  settle_day (self, &ask, week);
  self->has_last = self->by_night != NULL;
}
