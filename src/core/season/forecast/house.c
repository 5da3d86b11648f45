/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What the house takes for its birds: bedding and power; and the heap that
 * comes of it. */
#include "config.h"

#include "season/forecast/forecast-private.h"

#include "base/day.h"
#include "flock/heat.h"
#include "supply/house.h"

#define MM3_PER_M3 1e9
#define HOURS_IN_DAY 24
#define W_PER_KW 1000.0

static gboolean
has_birds (const HcForecast *self, const char *pen, guint32 day, gboolean under_heat)
{
  const HcSiteValues *site = hc_plan_get_site (self->plan);

  for (guint i = 0; i < self->timeline->stays->len; i++)
    {
      const HcStay *stay = &g_array_index (self->timeline->stays, HcStay, i);
      const HcGroup *group = hc_timeline_get_group (self->timeline, stay->group);

      if (stay->from > day || day >= stay->until || g_strcmp0 (stay->pen, pen) != 0)
        continue;
      if (!under_heat
          || hc_group_get_weeks (group, day)
                 < hc_heat_get_weeks (self->standard, group->kind, site))
        return TRUE;
    }
  return FALSE;
}

static double
sum_kw (const HcPenValues *pen)
{
  double watts = 0;

  for (guint i = 0; i < pen->fittings->len; i++)
    if (hc_fitting_is_heater (pen->fittings->pdata[i]))
      watts += hc_fitting_get (pen->fittings->pdata[i])->watts;
  return watts / W_PER_KW;
}

/* All of a pen's heaters, day and night, while a chick in it needs one. */
static void
add_heat (HcForecast *self, const HcPen *pen)
{
  double kw = sum_kw (hc_pen_get (pen));

  for (guint i = 0; kw > 0 && i < self->weeks->len; i++)
    {
      HcForecastWeek *week = hc_forecast_week_at (self, i);

      for (guint32 day = week->from; day < week->from + HC_DAYS_IN_WEEK; day++)
        if (has_birds (self, hc_pen_get_id (pen), day, TRUE))
          week->heat_kwh += kw * HOURS_IN_DAY;
    }
}

static double
find_bedding_kg (const HcForecast *self, HcRoom *room)
{
  const HcPenValues *pen = hc_room_get (room);
  const HcBedding *bedding = hc_book_get_bedding (self->book, pen->bedding);

  if (bedding == NULL || !hc_room_is_roofed (room))
    return 0;
  return hc_shape_get_area_mm2 (hc_room_get_outline (room)) * pen->bedding_mm / MM3_PER_M3
         * bedding->loose_kg_m3;
}

/* What is not known as such is taken for straw. */
static const HcCompost *
find_compost (const HcForecast *self, const char *bedding)
{
  const HcCompost *found = hc_book_get_compost (self->book, bedding);

  return found != NULL ? found : hc_book_get_compost (self->book, "straw");
}

/* One filling lasts from one clean-out to the next. */
static void
add_bedding (HcForecast *self, HcRoom *room)
{
  double filling_kg = find_bedding_kg (self, room);
  double days = MAX (hc_book_get_care (self->book, "clean-out")->every_days, 1);
  double week_kg = filling_kg * HC_DAYS_IN_WEEK / days;

  for (guint i = 0; filling_kg > 0 && i < self->weeks->len; i++)
    {
      HcForecastWeek *week = hc_forecast_week_at (self, i);

      if (!has_birds (self, hc_pen_get_id (hc_room_get_pen (room)), week->from, FALSE))
        continue;
      week->bedding_kg += week_kg;
      hc_heap_add (&self->heap, find_compost (self, hc_room_get (room)->bedding), week_kg);
    }
}

void
hc_forecast_add_house (HcForecast *self)
{
  g_autoptr (HcHouse) house = hc_house_new (hc_plan_get_layout (self->plan), NULL);
  const HcCompost *manure = hc_book_get_compost (self->book, "fresh-manure");

  for (guint i = 0; i < hc_house_get_n_rooms (house); i++)
    {
      add_heat (self, hc_room_get_pen (hc_house_get_room (house, i)));
      add_bedding (self, hc_house_get_room (house, i));
    }
  for (guint i = 0; i < self->weeks->len; i++)
    hc_heap_add (&self->heap, manure, hc_forecast_week_at (self, i)->manure_kg);
}
