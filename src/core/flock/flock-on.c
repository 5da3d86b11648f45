/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The flock of a day, from the groups of birds in a plan. */
#include "config.h"

#include "flock/flock-private.h"

#include "flock/flock-on.h"
#include "flock/heat.h"
#include "flock/own-standard.h"

/* Past this width of an age band every young bird counts as grown. */
#define WIDEST_BAND_WEEKS 1024

typedef struct
{
  HcFlock *flock;
  HcStandard *standard;
  const HcSiteValues *site;
  guint32 day;
  int band_weeks;
} Gathering;

static int
age_in_weeks (const Gathering *gathering, const HcGroup *group)
{
  int weeks;

  if (group->hatched == 0 || gathering->band_weeks == WIDEST_BAND_WEEKS)
    return HC_WEEK_GROWN;
  weeks = (int) MIN ((gathering->day - group->hatched) / 7, HC_WEEK_GROWN);
  return weeks - weeks % gathering->band_weeks;
}

static gboolean
add_birds (Gathering *gathering, const HcGroup *group, const HcStay *stay)
{
  gboolean came = group->came > 0 && group->came <= gathering->day;
  HcFlockRow row = { 0, stay->count, stay->pen, group->id, came,
                     came ? gathering->day - group->came : 0 };
  HcBody body;

  hc_body_init (&body, group->kind, stay->female, age_in_weeks (gathering, group),
                hc_heat_get_weeks (gathering->standard, group->kind, gathering->site));
  if (!hc_bodies_intern (gathering->flock->bodies, &body, &row.body))
    return FALSE;
  hc_flock_add_row (gathering->flock, &row);
  return TRUE;
}

static gboolean
add_all (Gathering *gathering, const HcTimeline *timeline)
{
  for (guint i = 0; i < timeline->stays->len; i++)
    {
      const HcStay *stay = &g_array_index (timeline->stays, HcStay, i);

      if (stay->from <= gathering->day && gathering->day < stay->until
          && !add_birds (gathering, hc_timeline_get_group (timeline, stay->group), stay))
        return FALSE;
    }
  return TRUE;
}

static HcFlock *
new_flock (HcBook *book)
{
  g_autoptr (GArray) bodies = g_array_new (FALSE, FALSE, sizeof (HcBody));

  return hc_flock_new (book, bodies);
}

/**
 * hc_flock_on_timeline: (skip)
 * @timeline: what the groups and eggs of a plan come to
 * @standard: the rules, which say how long chicks need heat
 * @site: the place
 * @day: a Julian day
 *
 * Returns: (transfer full): the birds of that day, as hc_flock_on() says
 */
HcFlock *
hc_flock_on_timeline (const HcTimeline *timeline, HcStandard *standard, const HcSiteValues *site,
                      guint32 day)
{
  Gathering gathering = { new_flock (timeline->book), standard, site, day, 1 };

  while (!add_all (&gathering, timeline) && gathering.band_weeks < WIDEST_BAND_WEEKS)
    {
      hc_flock_unref (gathering.flock);
      gathering.flock = new_flock (timeline->book);
      gathering.band_weeks *= 2;
    }
  return gathering.flock;
}

/**
 * hc_flock_on:
 * @plan: a plan
 * @book: the book
 * @day: a Julian day
 *
 * Where everyone is on that day, after all moves, losses, sales and harvests.
 * Groups that have not hatched or come yet, and groups whose kind of bird the
 * book does not know, are not counted. Of eggs that hatch by then as many
 * chicks are counted as the keeper wants the house to carry. Ages go by the
 * week; where that gives more bodies than a mask holds, by two, four and more
 * weeks.
 *
 * Returns: (transfer full): the birds of that day
 */
HcFlock *
hc_flock_on (const HcPlan *plan, HcBook *book, guint32 day)
{
  g_autoptr (HcStandard) standard = hc_plan_get_own_standard (plan, book);
  g_autoptr (HcTimeline) timeline = hc_timeline_of (plan, book);

  return hc_flock_on_timeline (timeline, standard, hc_plan_get_site (plan), day);
}
