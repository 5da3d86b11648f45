/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Gathers events from groups, moves and leavings, those of one day and one
 * sort together. */
#include "config.h"

#include "season/events.h"

static void
add_settings (GArray *events, const HcTimeline *timeline)
{
  for (guint i = 0; i < timeline->settings->len; i++)
    {
      const HcSetting *setting = &g_array_index (timeline->settings, HcSetting, i);
      const HcClutchValues *clutch = hc_clutch_get (setting->clutch);
      HcEvent event = { setting->set_on, HC_EVENT_SET, i, clutch->eggs,
                        g_intern_string (clutch->pen != NULL ? clutch->pen : "") };

      g_array_append_val (events, event);
    }
}

/* Grown birds of unknown age that were always there did not come. */
static void
add_arrival (GArray *events, const HcGroup *group, const HcBand *band)
{
  HcEvent event = { band->from, HC_EVENT_HATCH, band->group, band->count, band->pen };

  if (group->came == 0 || band->from != group->came)
    return;
  if (group->came != group->hatched)
    event.what = HC_EVENT_COME;
  g_array_append_val (events, event);
}

static void
add_stage (GArray *events, const HcBand *band)
{
  HcEvent event = { band->from, HC_EVENT_LAY, band->group, band->count, band->pen };

  if (!band->begins)
    return;
  if (band->stage == HC_STAGE_GROWING)
    event.what = HC_EVENT_OFF_HEAT;
  else if (band->stage != HC_STAGE_AT_LAY)
    return;
  g_array_append_val (events, event);
}

static void
add_bands (GArray *events, const HcTimeline *timeline, const GArray *bands)
{
  for (guint i = 0; i < bands->len; i++)
    {
      const HcBand *band = &g_array_index (bands, HcBand, i);

      add_arrival (events, hc_timeline_get_group (timeline, band->group), band);
      add_stage (events, band);
    }
}

static void
add_movements (GArray *events, const HcTimeline *timeline)
{
  for (guint i = 0; i < timeline->movements->len; i++)
    {
      const HcMovement *movement = &g_array_index (timeline->movements, HcMovement, i);
      HcEvent event = { movement->on, HC_EVENT_MOVE, movement->group, movement->count,
                        movement->pen };

      g_array_append_val (events, event);
    }
}

static void
add_departures (GArray *events, const HcTimeline *timeline)
{
  for (guint i = 0; i < timeline->departures->len; i++)
    {
      const HcDeparture *gone = &g_array_index (timeline->departures, HcDeparture, i);
      HcEvent event = { gone->on, HC_EVENT_LEAVE, gone->group, gone->count, NULL, gone->why };

      g_array_append_val (events, event);
    }
}

static int
compare (gconstpointer a, gconstpointer b)
{
  const HcEvent *one = a;
  const HcEvent *other = b;

  if (one->on != other->on)
    return one->on < other->on ? -1 : 1;
  if (one->what != other->what)
    return (int) one->what - (int) other->what;
  if (one->group != other->group)
    return one->group < other->group ? -1 : 1;
  if (one->why != other->why)
    return (int) one->why - (int) other->why;
  return g_strcmp0 (one->pen, other->pen);
}

/* Females and males to whom the same happens are told of together. */
static void
merge (GArray *events)
{
  guint kept = 0;

  for (guint i = 1; i < events->len; i++)
    {
      HcEvent *last = &g_array_index (events, HcEvent, kept);
      const HcEvent *event = &g_array_index (events, HcEvent, i);

      if (compare (last, event) == 0)
        last->count += event->count;
      else
        g_array_index (events, HcEvent, ++kept) = *event;
    }
  if (events->len > 0)
    g_array_set_size (events, kept + 1);
}

/**
 * hc_events_of: (skip)
 * @timeline: who lives where
 * @bands: (element-type HcBand): what they are, from hc_bands_of()
 *
 * Returns: (transfer full) (element-type HcEvent): what happens, by day
 */
GArray *
hc_events_of (const HcTimeline *timeline, const GArray *bands)
{
  GArray *events = g_array_new (FALSE, FALSE, sizeof (HcEvent));

  add_settings (events, timeline);
  add_bands (events, timeline, bands);
  add_movements (events, timeline);
  add_departures (events, timeline);
  g_array_sort (events, compare);
  merge (events);
  return events;
}
