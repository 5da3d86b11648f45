/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What is done for a group: its heater, its moves, its end. */
#include "config.h"

#include "season/chores/listing.h"

#include "base/day.h"

/* Figure of the rules: days new birds stay apart. */
#define QUARANTINE "company.quarantine"

static HcTask
about (const HcListing *self, guint group, HcTaskWhat what, guint number, guint32 on)
{
  const HcGroup *who = hc_timeline_get_group (self->timeline, group);
  const char *name = who->name;

  if (name == NULL || *name == '\0')
    name = who->breed != NULL ? who->breed->name : who->kind->plural;
  return (HcTask) { what, who->id, number, on, .name = name };
}

/* Groups of several hatches of the same eggs have one id. */
static guint
number_in (const HcListing *self, guint group, guint number)
{
  return hc_timeline_get_group (self->timeline, group)->setting * 1000 + number;
}

static void
add_event (HcListing *self, const HcEvent *event, guint number)
{
  static const HcTaskWhat whats[] = {
    [HC_EVENT_OFF_HEAT] = HC_TASK_OFF_HEAT, [HC_EVENT_MOVE] = HC_TASK_MOVE,
    [HC_EVENT_LEAVE] = HC_TASK_HARVEST,
  };
  HcTask task;

  if (event->what != HC_EVENT_OFF_HEAT && event->what != HC_EVENT_MOVE
      && (event->what != HC_EVENT_LEAVE
          || (event->why != HC_LEAVING_HARVESTED && event->why != HC_LEAVING_SOLD)))
    return;
  task = about (self, event->group, whats[event->what], number, event->on);
  if (event->why == HC_LEAVING_SOLD)
    task.what = HC_TASK_SELL;
  task.count = event->count;
  task.pen = event->pen;
  hc_listing_add (self, task);
}

/* How many such events the group had before. */
static guint
count_before (const GArray *events, guint index)
{
  const HcEvent *event = &g_array_index (events, HcEvent, index);
  guint n = 0;

  for (guint i = 0; i < index; i++)
    {
      const HcEvent *other = &g_array_index (events, HcEvent, i);

      n += other->what == event->what && other->group == event->group
           && other->why == event->why;
    }
  return n;
}

static void
add_events (HcListing *self)
{
  g_autoptr (GArray) events = hc_events_of (self->timeline, self->bands);

  for (guint i = 0; i < events->len; i++)
    {
      const HcEvent *event = &g_array_index (events, HcEvent, i);

      if (event->what != HC_EVENT_SET)
        add_event (self, event, number_in (self, event->group, count_before (events, i)));
    }
}

static gboolean
came_before (const HcListing *self, guint index)
{
  const HcBand *band = &g_array_index (self->bands, HcBand, index);

  for (guint i = 0; i < index; i++)
    {
      const HcBand *other = &g_array_index (self->bands, HcBand, i);

      if (other->group == band->group && other->stage == HC_STAGE_UNDER_HEAT)
        return TRUE;
    }
  return FALSE;
}

/* As often as the routine says, from the day they come until they need no
 * heater. */
static void
add_plates (HcListing *self)
{
  guint32 every = (guint32) MAX (hc_book_get_care (self->book, "raise-plate")->every_days, 1);

  for (guint i = 0; i < self->bands->len; i++)
    {
      const HcBand *band = &g_array_index (self->bands, HcBand, i);
      guint number = 0;

      if (band->stage != HC_STAGE_UNDER_HEAT || came_before (self, i))
        continue;
      for (guint32 on = band->from + every; on < band->until && on < self->until; on += every)
        {
          HcTask task = about (self, band->group, HC_TASK_RAISE_PLATE,
                               number_in (self, band->group, number++), on);

          task.pen = band->pen;
          hc_listing_add (self, task);
        }
    }
}

static void
add_quarantine (HcListing *self, guint group)
{
  const HcGroup *who = hc_timeline_get_group (self->timeline, group);
  const HcLimit *limit = hc_standard_find_limit (self->standard, QUARANTINE, who->kind,
                                                 HC_WEEK_GROWN, HC_CONDITION_DAY);
  double days;

  if (who->came == 0 || who->came == who->hatched || limit == NULL
      || !hc_limit_get (limit, HC_LEVEL_TIGHT, &days))
    return;
  hc_listing_add (self, about (self, group, HC_TASK_QUARANTINE_OVER, number_in (self, group, 0),
                               who->came + (guint32) days));
}

void
hc_listing_add_birds (HcListing *self)
{
  add_events (self);
  add_plates (self);
  for (guint i = 0; i < self->timeline->groups->len; i++)
    add_quarantine (self, i);
}
