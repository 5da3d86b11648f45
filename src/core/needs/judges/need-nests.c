/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Nest boxes for hens at lay. */
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
      = { { HC_OFFER_NESTS, HC_FIGURE_NESTS_BOXES, "boxes" },
          { HC_OFFER_GROUP_NESTS, HC_FIGURE_NESTS_GROUP_AREA, "mm2" } };
  HcSharing sharing = { .sorts = sorts, .n_sorts = G_N_ELEMENTS (sorts) };

  for (guint body = 0; body < hc_need_context_get_n_bodies (context); body++)
    if (hc_need_context_get_body (context, body)->at_lay)
      sharing.bodies |= (HcBodies) 1 << body;
  hc_sharing_serve (&sharing, context, level, details, serving);
}

static void
judge (const HcNeedContext *context, HcAnswer *answer)
{
  hc_count_judge (context, answer);
  hc_count_tell_lost_places (context, HC_OFFER_NESTS, "nests.box-lost", answer);
  hc_count_tell_lost_places (context, HC_OFFER_GROUP_NESTS, "nests.box-lost", answer);
}

const HcNeed hc_need_nests = {
  .id = HC_NEED_NESTS,
  .word = "nests",
  .title = N_("Nest boxes"),
  .question = N_("Are there nests enough for the hens at lay?"),
  .why = N_("Hens lay at the same hour and queue for the same box. Eggs laid on the floor are "
            "dirty, broken or eaten."),
  .help = "need-nests",
  .sort = HC_NEED_COUNTING,
  .scope = HC_SCOPE_DAY_SPACE,
  .judge = judge,
  .serve = serve,
  .none = "nests.none",
  .few = "nests.too-few",
  .confined = "nests.confined",
  .lifts = { HC_OFFER_NESTS, HC_OFFER_GROUP_NESTS, HC_N_OFFER_KINDS },
};
