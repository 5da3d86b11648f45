/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Drinkers: edge or nipples for every bird, deep enough for waterfowl. */
#include "config.h"

#include "needs/judges/judges.h"

#include "book/figure-names.h"
#include "needs/count.h"
#include "needs/serve/sharing.h"

#include <glib/gi18n-lib.h>

static void
serve (const HcNeedContext *context, HcLevel level, gboolean details, HcServing *serving)
{
  static const HcSharedSort sorts[]
      = { { HC_OFFER_WATER_LONG, HC_FIGURE_WATER_LONG_EDGE, "mm" },
          { HC_OFFER_WATER_ROUND, HC_FIGURE_WATER_ROUND_EDGE, "mm" },
          { HC_OFFER_NIPPLES, HC_FIGURE_WATER_NIPPLES, "nipples" } };
  HcSharing sharing
      = { .sorts = sorts, .n_sorts = G_N_ELEMENTS (sorts), .bodies = ~(HcBodies) 0 };

  hc_sharing_serve (&sharing, context, level, details, serving);
}

static gboolean
dip_their_heads (const HcNeedContext *context, HcBodies bodies)
{
  for (guint body = 0; body < hc_need_context_get_n_bodies (context); body++)
    if ((bodies >> body & 1) && !hc_need_context_get_body (context, body)->kind->head_deep_water)
      return FALSE;
  return bodies != 0;
}

/* Waterfowl among drinkers they cannot dip into are not short of edge. */
static void
tell_shallow_water (const HcNeedContext *context, HcAnswer *answer)
{
  for (guint i = 0; i < answer->findings->len; i++)
    {
      HcFinding *finding = answer->findings->pdata[i];

      if (g_str_equal (finding->code, "water.too-little")
          && dip_their_heads (context, finding->kinds) && finding->birds > 0)
        finding->code = "water.not-head-deep";
    }
}

static gboolean
find_drinkers (const HcNeedContext *context, HcFinding *finding)
{
  gboolean heated = FALSE;

  for (guint i = 0; i < hc_need_context_get_n_rooms (context); i++)
    {
      HcParts *fittings = hc_room_get (hc_need_context_get_room (context, i))->fittings;

      for (guint j = 0; j < fittings->len; j++)
        if (hc_fitting_get (fittings->pdata[j])->kind == HC_FITTING_DRINKER)
          {
            hc_finding_add_id (finding, hc_fitting_get_id (fittings->pdata[j]));
            heated = heated || hc_fitting_get (fittings->pdata[j])->heated;
          }
    }
  return heated;
}

static void
tell_frost (const HcNeedContext *context, HcAnswer *answer)
{
  g_autoptr (HcFinding) finding = hc_finding_new ("water.freezes", HC_LEVEL_TIGHT);

  if (context->about->site->coldest_night_c >= 0 || find_drinkers (context, finding)
      || finding->ids[0] == NULL)
    return;
  hc_finding_set_measure (finding, context->about->site->coldest_night_c, 0, "celsius");
  hc_answer_remark (answer, g_steal_pointer (&finding));
}

static void
judge (const HcNeedContext *context, HcAnswer *answer)
{
  hc_count_judge (context, answer);
  tell_shallow_water (context, answer);
  hc_count_tell_lost_places (context, HC_OFFER_WATER_LONG, "water.edge-lost", answer);
  hc_count_tell_lost_places (context, HC_OFFER_WATER_ROUND, "water.edge-lost", answer);
  if (answer->applies && context->condition == HC_CONDITION_SHUT_IN)
    tell_frost (context, answer);
}

const HcNeed hc_need_water = {
  .id = HC_NEED_WATER,
  .word = "water",
  .title = N_("Drinkers"),
  .question = N_("Can all of them drink?"),
  .why = N_("A hen that misses water for a day stops laying. Ducks and geese must dip their "
            "heads to keep their eyes and nostrils clean."),
  .help = "need-water",
  .sort = HC_NEED_COUNTING,
  .scope = HC_SCOPE_DAY_SPACE,
  .judge = judge,
  .serve = serve,
  .none = "water.none",
  .few = "water.too-little",
  .confined = "water.confined",
  .lifts = { HC_OFFER_NIPPLES, HC_OFFER_WATER_LONG, HC_OFFER_WATER_ROUND, HC_N_OFFER_KINDS },
};
