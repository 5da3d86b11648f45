/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Cuts each stay where its birds come off heat, are grown or begin to lay. */
#include "config.h"

#include "season/stage.h"

#include "base/day.h"
#include "flock/heat.h"

/* The first day of a week of life, the first week being 1. */
static guint32
get_first_day (const HcGroup *group, int week)
{
  return group->hatched + (guint32) (week - 1) * HC_DAYS_IN_WEEK;
}

/**
 * hc_stage_on: (skip)
 * @group: a group
 * @female: whether its females or its males are meant
 * @heat_weeks: weeks of life its chicks need a heater for
 * @day: a day not before they hatched
 *
 * Returns: what they are on that day
 */
HcStage
hc_stage_on (const HcGroup *group, gboolean female, int heat_weeks, guint32 day)
{
  const HcKind *kind = group->kind;

  if (group->hatched != 0 && day < get_first_day (group, heat_weeks + 1))
    return HC_STAGE_UNDER_HEAT;
  if (female && kind->at_lay_week > 0
      && (group->hatched == 0 || day >= get_first_day (group, kind->at_lay_week)))
    return HC_STAGE_AT_LAY;
  if (group->hatched != 0 && day < get_first_day (group, kind->grown_week))
    return HC_STAGE_GROWING;
  return HC_STAGE_GROWN;
}

/* The first day after @day on which they may be something else. */
static guint32
find_next_change (const HcGroup *group, int heat_weeks, guint32 day)
{
  const int weeks[] = { heat_weeks + 1, group->kind->at_lay_week, group->kind->grown_week };
  guint32 next = HC_FOR_EVER;

  if (group->hatched == 0)
    return HC_FOR_EVER;
  for (guint i = 0; i < G_N_ELEMENTS (weeks); i++)
    if (weeks[i] > 0 && get_first_day (group, weeks[i]) > day)
      next = MIN (next, get_first_day (group, weeks[i]));
  return next;
}

static void
add_band (GArray *bands, const HcBand *band)
{
  HcBand *last = bands->len > 0 ? &g_array_index (bands, HcBand, bands->len - 1) : NULL;

  if (last != NULL && last->group == band->group && last->female == band->female
      && last->pen == band->pen && last->stage == band->stage && last->count == band->count
      && last->until == band->from)
    last->until = band->until;
  else
    g_array_append_vals (bands, band, 1);
}

static void
cut_stay (GArray *bands, const HcGroup *group, const HcStay *stay, int heat_weeks)
{
  HcBand band = { stay->group, stay->female, stay->count, stay->pen, .from = stay->from };

  while (band.from < stay->until)
    {
      band.stage = hc_stage_on (group, stay->female, heat_weeks, band.from);
      band.begins = band.from > group->came
                    && hc_stage_on (group, stay->female, heat_weeks, band.from - 1) != band.stage;
      band.until = MIN (find_next_change (group, heat_weeks, band.from), stay->until);
      add_band (bands, &band);
      band.from = band.until;
    }
}

/**
 * hc_bands_of: (skip)
 * @timeline: who lives where
 * @standard: the rules, which say how long chicks need heat
 * @site: the place
 *
 * Returns: (transfer full) (element-type HcBand): everyone, by group and pen,
 *   in the order of their days
 */
GArray *
hc_bands_of (const HcTimeline *timeline, const HcStandard *standard, const HcSiteValues *site)
{
  GArray *bands = g_array_new (FALSE, FALSE, sizeof (HcBand));

  for (guint i = 0; i < timeline->stays->len; i++)
    {
      const HcStay *stay = &g_array_index (timeline->stays, HcStay, i);
      const HcGroup *group = hc_timeline_get_group (timeline, stay->group);

      cut_stay (bands, group, stay, hc_heat_get_weeks (standard, group->kind, site));
    }
  return bands;
}
