/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What happens to birds, on which day, and how they are served then. */
#include "config.h"

#include "words/year-words.h"

#include "words/words.h"

#include <glib/gi18n-lib.h>

/**
 * hc_words_day:
 * @day: a Julian day
 *
 * Returns: (transfer full): the day with its month in words
 */
char *
hc_words_day (guint32 day)
{
  char text[64];
  GDate date;

  g_date_clear (&date, 1);
  g_date_set_julian (&date, day);
  /* Translators: a day as strftime() writes it: "10 April 2026". */
  g_date_strftime (text, sizeof text, _("%d %B %Y"), &date);
  return g_strdup (text);
}

/**
 * hc_words_group: (skip)
 * @group: a group of birds, or of chicks to come
 *
 * Returns: (transfer full): what the keeper calls them, else their breed or
 *   kind
 */
char *
hc_words_group (const HcGroup *group)
{
  if (group->name != NULL && *group->name != '\0')
    return g_strdup (group->name);
  return g_strdup (group->breed != NULL ? hc_breed_get_name (group->breed)
                                        : hc_kind_get_name (group->kind, 2));
}

/**
 * hc_words_stage:
 * @stage: a stage of life
 *
 * Returns: what birds are in it
 */
const char *
hc_words_stage (HcStage stage)
{
  switch (stage)
    {
    case HC_STAGE_UNDER_HEAT:
      return _("under heat");
    case HC_STAGE_GROWING:
      return _("growing");
    case HC_STAGE_GROWN:
      return _("grown");
    case HC_STAGE_AT_LAY:
      return _("at lay");
    default:
      g_return_val_if_reached ("");
    }
}

static char *
name_pen (const HcYear *year, const char *id)
{
  HcLayout *layout = hc_plan_get_layout (hc_year_get_plan (year));
  const HcPen *pen = hc_parts_find (hc_layout_get (layout)->pens, id);

  return pen != NULL ? hc_words_pen_name (pen) : g_strdup (_("no pen"));
}

static char *
tell_set (const HcYear *year, const HcEvent *event)
{
  const HcTimeline *timeline = hc_year_get_timeline (year);
  const HcSetting *setting = &g_array_index (timeline->settings, HcSetting, event->group);
  const HcClutchValues *clutch = hc_clutch_get (setting->clutch);

  if (clutch->name != NULL && *clutch->name != '\0')
    /* Translators: a number of eggs, and what the keeper calls them. */
    return g_strdup_printf (ngettext ("%d egg is set: %s", "%d eggs are set: %s",
                                      (gulong) event->count),
                            event->count, clutch->name);
  return g_strdup_printf (ngettext ("%d egg is set", "%d eggs are set", (gulong) event->count),
                          event->count);
}

static char *
tell_leaving (const HcEvent *event, const char *group)
{
  gulong n = (gulong) event->count;

  switch (event->why)
    {
    case HC_LEAVING_HARVESTED:
      /* Translators: what a group of birds is called, and how many of it. */
      return g_strdup_printf (ngettext ("%s: %d goes to the freezer", "%s: %d go to the freezer",
                                        n),
                              group, event->count);
    case HC_LEAVING_SOLD:
      return g_strdup_printf (ngettext ("%s: %d is sold", "%s: %d are sold", n), group,
                              event->count);
    case HC_LEAVING_GIVEN:
      return g_strdup_printf (ngettext ("%s: %d is given away", "%s: %d are given away", n),
                              group, event->count);
    default:
      return g_strdup_printf (ngettext ("%s: %d is lost", "%s: %d are lost", n), group,
                              event->count);
    }
}

static char *
tell_of_group (const HcYear *year, const HcEvent *event)
{
  g_autofree char *group
      = hc_words_group (hc_timeline_get_group (hc_year_get_timeline (year), event->group));
  g_autofree char *pen = event->pen != NULL ? name_pen (year, event->pen) : NULL;
  gulong n = (gulong) event->count;

  switch (event->what)
    {
    case HC_EVENT_HATCH:
      /* Translators: group, how many, and the pen they live in. */
      return g_strdup_printf (ngettext ("%s: %d hatches, into %s", "%s: %d hatch, into %s", n),
                              group, event->count, pen);
    case HC_EVENT_COME:
      return g_strdup_printf (ngettext ("%s: %d comes, into %s", "%s: %d come, into %s", n),
                              group, event->count, pen);
    case HC_EVENT_OFF_HEAT:
      return g_strdup_printf (ngettext ("%s: %d comes off heat", "%s: %d come off heat", n),
                              group, event->count);
    case HC_EVENT_LAY:
      return g_strdup_printf (ngettext ("%s: %d begins to lay", "%s: %d begin to lay", n), group,
                              event->count);
    case HC_EVENT_MOVE:
      return g_strdup_printf (ngettext ("%s: %d moves to %s", "%s: %d move to %s", n), group,
                              event->count, pen);
    default:
      return tell_leaving (event, group);
    }
}

/**
 * hc_words_event: (skip)
 * @year: a year
 * @event: one of its events
 *
 * Returns: (transfer full): what happens, in one line without the day
 */
char *
hc_words_event (const HcYear *year, const HcEvent *event)
{
  return event->what == HC_EVENT_SET ? tell_set (year, event) : tell_of_group (year, event);
}

/**
 * hc_words_tallied: (skip)
 * @need: a need
 * @tallied: what it comes to on a day
 *
 * Returns: (transfer full): the need, how many birds of those there it serves,
 *   and its level
 */
char *
hc_words_tallied (HcNeedId need, const HcTallied *tallied)
{
  const char *title = hc_words_need_title (need);
  const char *level = hc_words_need_level (need, tallied->level);

  if (tallied->birds == 0 || tallied->served == tallied->birds)
    /* Translators: a need and its level: "Nest boxes: just enough". */
    return g_strdup_printf (_("%s: %s"), title, level);
  /* Translators: a need, its level, birds served of birds there. */
  return g_strdup_printf (_("%s: %s (%d of %d)"), title, level, (int) tallied->served,
                          (int) tallied->birds);
}

static const char *
head_of (HcLevel level, HcCondition condition)
{
  if (level == HC_LEVEL_SHORT)
    return condition == HC_CONDITION_SHUT_IN
               /* Translators: a day, birds there, and the need that falls short. */
               ? _("The worst day is %s, with %d birds, when they are shut in. %s.")
               : _("The worst day is %s, with %d birds. %s.");
  return condition == HC_CONDITION_SHUT_IN
             ? _("Nothing falls short. The fullest day is %s, with %d birds, when they are shut "
                 "in. %s.")
             : _("Nothing falls short. The fullest day is %s, with %d birds. %s.");
}

/**
 * hc_words_worst_day: (skip)
 * @year: a year
 *
 * Returns: (transfer full): the worst day and what makes it so, in a sentence
 */
char *
hc_words_worst_day (const HcYear *year)
{
  const HcYearDay *day;
  const HcTally *tally;
  HcCondition condition;
  guint index;
  g_autofree char *date = NULL;
  g_autofree char *need = NULL;

  if (!hc_year_find_worst (year, &index, &condition))
    return g_strdup (_("There are no birds in these weeks."));
  day = hc_year_get_day (year, index);
  tally = hc_year_day_get_worse (day, NULL);
  date = hc_words_day (day->day);
  need = hc_words_tallied (tally->worst, &tally->needs[tally->worst]);
  return g_strdup_printf (head_of (tally->level, condition), date,
                          (int) hc_flock_get_total (day->flock), need);
}
