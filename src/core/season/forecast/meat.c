/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Birds for the freezer. */
#include "config.h"

#include "season/forecast/forecast-private.h"

#include "base/day.h"

static int
compare (gconstpointer a, gconstpointer b)
{
  const HcMeatDay *one = a;
  const HcMeatDay *other = b;

  return (one->on > other->on) - (one->on < other->on);
}

static double
weigh (const HcGroup *group, const HcDeparture *gone)
{
  HcSex sex = gone->female ? HC_SEX_FEMALE : HC_SEX_MALE;

  return gone->count * hc_kind_get_mass_kg (group->kind, sex, hc_group_get_weeks (group, gone->on));
}

static HcMeatDay
dress (const HcForecast *self, const HcDeparture *gone)
{
  const HcGroup *group = hc_timeline_get_group (self->timeline, gone->group);
  HcMeatDay day = { gone->on, gone->group, gone->count, weigh (group, gone) };

  day.dressed_kg = day.live_kg * group->life->meat.dressing_percent / 100;
  day.litres = day.dressed_kg * group->life->meat.litres_per_kg;
  return day;
}

static void
fill_freezer (HcForecast *self)
{
  double litres = 0;

  for (guint i = 0; i < self->meat->len; i++)
    {
      HcMeatDay *day = &g_array_index (self->meat, HcMeatDay, i);

      litres += day->litres;
      day->freezer_litres = litres;
    }
}

void
hc_forecast_add_meat (HcForecast *self)
{
  guint32 from = hc_forecast_week_at (self, 0)->from;
  guint32 until = from + self->weeks->len * HC_DAYS_IN_WEEK;

  for (guint i = 0; i < self->timeline->departures->len; i++)
    {
      const HcDeparture *gone = &g_array_index (self->timeline->departures, HcDeparture, i);
      HcForecastWeek *week;
      HcMeatDay day;

      if (gone->why != HC_LEAVING_HARVESTED || gone->on < from || gone->on >= until)
        continue;
      day = dress (self, gone);
      week = hc_forecast_week_at (self, (gone->on - from) / HC_DAYS_IN_WEEK);
      week->dressed += day.birds;
      week->meat_kg += day.dressed_kg;
      g_array_append_val (self->meat, day);
    }
  g_array_sort (self->meat, compare);
  fill_freezer (self);
}
