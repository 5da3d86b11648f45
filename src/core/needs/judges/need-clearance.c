/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Does it all fit: things in each other's way, in the birds' or the keeper's. */
#include "config.h"

#include "needs/judges/judges.h"

#include "book/figure-names.h"
#include "needs/clearance/clearance.h"
#include "needs/clearance/walk.h"

#include <glib/gi18n-lib.h>

static GPtrArray *
look_at_room (HcRoom *room, HcStandard *standard)
{
  HcClearance clearance = { room, standard, hc_room_get (room)->fittings, NULL };

  clearance.findings = g_ptr_array_new_with_free_func ((GDestroyNotify) hc_finding_unref);
  hc_clearance_look_at_overlaps (&clearance);
  hc_clearance_look_at_walls (&clearance);
  hc_clearance_look_at_doors (&clearance);
  hc_clearance_look_at_openings (&clearance);
  hc_clearance_look_under_bars (&clearance);
  hc_clearance_look_at_nest_heights (&clearance);
  hc_clearance_look_at_feed_and_water (&clearance);
  hc_clearance_look_at_lamps (&clearance);
  return clearance.findings;
}

static void
tell_loose (const HcNeedContext *context, HcAnswer *answer)
{
  HcParts *loose = hc_layout_get (context->about->layout)->loose;

  for (guint i = 0; i < loose->len; i++)
    {
      HcFinding *finding = hc_finding_new ("clearance.in-no-pen", HC_LEVEL_SHORT);

      hc_finding_add_id (finding, hc_fitting_get_id (loose->pdata[i]));
      hc_answer_take (answer, finding);
    }
}

static void
tell_rooms (const HcNeedContext *context, HcAnswer *answer)
{
  HcStandard *standard = hc_case_get_standard (context->about, HC_LEVEL_GOOD);

  for (guint i = 0; i < hc_need_context_get_n_rooms (context); i++)
    {
      HcRoom *room = hc_need_context_get_room (context, i);
      GPtrArray *findings = hc_check_cache_get_room_findings (context->about->cache, room,
                                                              standard, look_at_room);

      answer->applies = TRUE;
      for (guint j = 0; j < findings->len; j++)
        hc_answer_take_once (answer, hc_finding_ref (findings->pdata[j]));
    }
}

static void
tell_walks (const HcNeedContext *context, HcAnswer *answer)
{
  const HcHouse *house = context->about->house;
  HcCondition condition = hc_case_get_condition (context->about, HC_SCOPE_DAY_SPACE);

  for (guint space = 0; space < hc_house_get_n_spaces (house, condition); space++)
    {
      HcNeedContext here = *context;

      here.space = hc_house_get_space (house, condition, space);
      here.condition = condition;
      hc_need_context_count (&here, context->about->flock);
      if (hc_need_context_get_bodies (&here) == 0)
        continue;
      hc_walk_tell_farthest (&here, HC_FITTING_FEEDER, HC_FIGURE_FEED_WALK,
                             "clearance.far-from-feed", answer);
      hc_walk_tell_farthest (&here, HC_FITTING_DRINKER, HC_FIGURE_WATER_WALK,
                             "clearance.far-from-water", answer);
    }
}

static void
judge (const HcNeedContext *context, HcAnswer *answer)
{
  tell_rooms (context, answer);
  tell_loose (context, answer);
  tell_walks (context, answer);
}

const HcNeed hc_need_clearance = {
  .id = HC_NEED_CLEARANCE,
  .word = "clearance",
  .title = N_("Things in the way"),
  .question = N_("Is anything in the way?"),
  .why = N_("What stands in the way of a door, a perch or a pop hole is not used, however much "
            "of it there is. What stands under bars is fouled every night."),
  .help = "need-clearance",
  .sort = HC_NEED_CONDITION,
  .scope = HC_SCOPE_LAYOUT,
  .judge = judge,
  .lifts = { HC_N_OFFER_KINDS },
};
