/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Lay times hens a male covers times days eggs keep. */
#include "config.h"

#include "season/in-hand.h"

#include "season/forecast/lay.h"

#include <math.h>

static gboolean
is_there (const HcTimeline *timeline, const HcStay *stay, const HcKind *kind, guint32 day)
{
  return hc_timeline_get_group (timeline, stay->group)->kind == kind && stay->from <= day
         && day < stay->until;
}

/* Males old enough to tread are as old as hens that lay. */
static gboolean
is_grown (const HcGroup *group, guint32 day)
{
  return hc_group_get_weeks (group, day) >= group->kind->at_lay_week;
}

static void
count_birds (const HcTimeline *timeline, const HcKind *kind, guint32 day, int *females,
             int *males, double *eggs)
{
  *females = *males = 0;
  *eggs = 0;
  for (guint i = 0; i < timeline->stays->len; i++)
    {
      const HcStay *stay = &g_array_index (timeline->stays, HcStay, i);
      const HcGroup *group = hc_timeline_get_group (timeline, stay->group);

      if (!is_there (timeline, stay, kind, day) || !is_grown (group, day))
        continue;
      if (!stay->female)
        *males += stay->count;
      else
        {
          *females += stay->count;
          *eggs += stay->count * hc_lay_on (group, hc_plan_get_keeping (timeline->plan), day);
        }
    }
}

static int
count_taken (const HcTimeline *timeline, guint32 day)
{
  int taken = 0;

  for (guint i = 0; i < timeline->settings->len; i++)
    {
      const HcSetting *setting = &g_array_index (timeline->settings, HcSetting, i);
      const HcClutchValues *clutch = hc_clutch_get (setting->clutch);

      if (clutch->place == HC_CLUTCH_INCUBATOR && setting->set_on <= day
          && day < setting->hatch_on)
        taken += clutch->eggs;
    }
  return taken;
}

/**
 * hc_in_hand_count: (skip)
 * @timeline: who lives where
 * @kind: a kind of bird
 * @day: the day eggs are to be set
 * @in_hand: (out caller-allocates): what there is for it
 */
void
hc_in_hand_count (const HcTimeline *timeline, const HcKind *kind, guint32 day, HcInHand *in_hand)
{
  const HcKeepingValues *keeping = hc_plan_get_keeping (timeline->plan);
  const HcHatching *hatching = &hc_book_get_life (timeline->book, kind->id)->hatching;

  *in_hand = (HcInHand) { .places = keeping->incubator_places };
  for (int i = 1; i <= keeping->egg_storage_days; i++)
    {
      int males;
      double eggs;

      count_birds (timeline, kind, day - (guint32) i, &in_hand->females, &males, &eggs);
      in_hand->covered = (int) MIN (in_hand->females, floor (males * hatching->females_per_male));
      if (in_hand->females > 0)
        in_hand->eggs += eggs * in_hand->covered / in_hand->females;
    }
  for (int i = 0; i < hatching->days; i++)
    in_hand->taken = MAX (in_hand->taken, count_taken (timeline, day + (guint32) i));
}
