/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What there is to do as an iCalendar, RFC 5545. */
#include "config.h"

#include "words/task-words.h"

#include <libical/ical.h>

/* Marks what is ticked off, in calendars that know no ticks. */
#define TICK "✓ "

static struct icaltimetype
to_date (guint32 day)
{
  GDate date;
  struct icaltimetype time = icaltime_null_date ();

  g_date_clear (&date, 1);
  g_date_set_julian (&date, day);
  time.year = g_date_get_year (&date);
  time.month = (int) g_date_get_month (&date);
  time.day = g_date_get_day (&date);
  return time;
}

static icalcomponent *
make_event (const HcPlan *plan, const HcTask *task, struct icaltimetype stamp)
{
  g_autofree char *uid = hc_task_get_uid (task, plan);
  g_autofree char *line = hc_words_task (task, plan);
  g_autofree char *summary = g_strconcat (task->done != 0 ? TICK : "", line, NULL);

  return icalcomponent_vanew (
      ICAL_VEVENT_COMPONENT, icalproperty_new_uid (uid), icalproperty_new_dtstamp (stamp),
      icalproperty_new_dtstart (to_date (task->on)),
      icalproperty_new_dtend (to_date (task->on + 1)), icalproperty_new_summary (summary),
      icalproperty_new_description (hc_words_task_reason (task->what)),
      icalproperty_new_categories (hc_task_get_word (task->what)),
      icalproperty_new_transp (ICAL_TRANSP_TRANSPARENT), NULL);
}

/**
 * hc_calendar_write: (skip)
 * @plan: a plan
 * @tasks: (element-type HcTask): what there is to do
 * @stamp: when this is written, in seconds since 1970
 *
 * A whole-day event for each. Its id stays when its day moves, so that a
 * calendar which is given the file again moves it too.
 *
 * Returns: (transfer full): the calendar
 */
char *
hc_calendar_write (const HcPlan *plan, const GArray *tasks, gint64 stamp)
{
  struct icaltimetype now
      = icaltime_from_timet_with_zone ((time_t) stamp, FALSE, icaltimezone_get_utc_timezone ());
  icalcomponent *calendar = icalcomponent_vanew (
      ICAL_VCALENDAR_COMPONENT, icalproperty_new_version ("2.0"),
      icalproperty_new_prodid ("-//Hencote//" HC_VERSION "//EN"),
      icalproperty_new_method (ICAL_METHOD_PUBLISH), NULL);
  char *text;
  char *copy;

  for (guint i = 0; i < tasks->len; i++)
    icalcomponent_add_component (
        calendar, make_event (plan, &g_array_index (tasks, HcTask, i), now));
  text = icalcomponent_as_ical_string_r (calendar);
  copy = g_strdup (text);
  icalmemory_free_buffer (text);
  icalcomponent_free (calendar);
  return copy;
}
