/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Room on the floor, larger for birds that cannot go out. */
#include "config.h"

#include "needs/judges/judges.h"

#include "book/figure-names.h"
#include "needs/count.h"
#include "needs/serve/sharing.h"

#include <glib/gi18n-lib.h>

static gboolean
goes_out (const HcNeedContext *context)
{
  return context->about->site->birds_go_out
         && hc_need_context_sum_offer (context, HC_OFFER_RUN, HC_LEVEL_TIGHT) > 0;
}

static gboolean
is_short_spell (const HcNeedContext *context, HcLevel level)
{
  const HcLimit *spell
      = hc_need_context_find_plain_limit (context, HC_FIGURE_FLOOR_SHORT_SPELL, level);

  return spell != NULL
         && hc_limit_is_met (spell, HC_LEVEL_TIGHT, context->about->site->longest_shut_in_days);
}

/* Birds without a run are shut in today, for as long as it takes. */
static double
find_factor (const HcNeedContext *context, HcLevel level)
{
  const HcLimit *factor
      = hc_need_context_find_plain_limit (context, HC_FIGURE_FLOOR_SHUT_IN_FACTOR, level);
  double times;

  if (factor == NULL || !hc_limit_get (factor, level, &times))
    return 1;
  if (context->condition == HC_CONDITION_SHUT_IN)
    return is_short_spell (context, level) ? 1 : times;
  return goes_out (context) ? 1 : times;
}

static void
serve (const HcNeedContext *context, HcLevel level, gboolean details, HcServing *serving)
{
  static const HcSharedSort sort = { HC_OFFER_FLOOR, HC_FIGURE_FLOOR_AREA, "mm2" };
  HcSharing sharing = { .sorts = &sort, .n_sorts = 1, .test = hc_room_is_roofed,
                        .bodies = ~(HcBodies) 0, .times = find_factor (context, level) };

  hc_sharing_serve (&sharing, context, level, details, serving);
}

const HcNeed hc_need_floor = {
  .id = HC_NEED_FLOOR,
  .word = "floor",
  .title = N_("Room on the floor"),
  .question = N_("Is there room on the floor for all of them?"),
  .why = N_("Crowded birds peck each other, and the bedding stays wet under them. "
            "They need more room when they cannot go out."),
  .help = "need-floor",
  .sort = HC_NEED_COUNTING,
  .scope = HC_SCOPE_DAY_SPACE,
  .judge = hc_count_judge,
  .serve = serve,
  .none = "floor.none",
  .few = "floor.too-little",
  .confined = "floor.confined",
  .lifts = { HC_OFFER_FLOOR, HC_N_OFFER_KINDS },
};
