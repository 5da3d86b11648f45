/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What the sun and the frost bring. */
#include "config.h"

#include "season/chores/listing.h"

#include "base/day.h"
#include "climate/season-curve.h"
#include "season/daylight.h"

/* The whole place, where no pen is meant. */
#define PLACE "place"

static gboolean
has_layers (const HcListing *self, guint32 day)
{
  for (guint i = 0; i < self->bands->len; i++)
    {
      const HcBand *band = &g_array_index (self->bands, HcBand, i);

      if (band->stage == HC_STAGE_AT_LAY && band->from <= day && day < band->until)
        return TRUE;
    }
  return FALSE;
}

static guint
get_year (guint32 day)
{
  GDate date;

  g_date_clear (&date, 1);
  g_date_set_julian (&date, day);
  return g_date_get_year (&date);
}

static gboolean
is_dark (const HcListing *self, guint32 day)
{
  const HcKeepingValues *keeping = hc_plan_get_keeping (self->plan);

  return hc_daylight_hours (keeping->latitude_deg, day) < keeping->light_hours;
}

static void
add_light (HcListing *self, guint32 day)
{
  gboolean dark = is_dark (self, day);

  if (dark == is_dark (self, day - 1) || (dark && !has_layers (self, day)))
    return;
  hc_listing_add (self, (HcTask) { dark ? HC_TASK_LIGHT_ON : HC_TASK_LIGHT_OFF, PLACE,
                                   get_year (day), day });
}

static gboolean
freezes (const HcListing *self, guint32 day)
{
  return hc_season_day (self->book, hc_plan_get_site (self->plan),
                        hc_plan_get_keeping (self->plan)->latitude_deg, day)
             .night_c
         < 0;
}

static void
add_mesh_check (HcListing *self, guint32 day)
{
  guint32 frost = day + (guint32) hc_book_get_care (self->book, "mesh-check")->lead_days;

  if (freezes (self, frost)
      && !freezes (self, frost - 1))
    hc_listing_add (self, (HcTask) { HC_TASK_MESH_CHECK, PLACE, get_year (frost), day });
}

void
hc_listing_add_seasons (HcListing *self)
{
  gboolean lit = hc_plan_get_keeping (self->plan)->light_hours > 0;

  for (guint32 day = self->from; day < self->until; day++)
    {
      if (lit)
        add_light (self, day);
      add_mesh_check (self, day);
    }
}
