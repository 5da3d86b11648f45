/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Feeders: an edge to eat at for every bird, long or round. */
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
      = { { HC_OFFER_FEED_LONG, HC_FIGURE_FEED_LONG_EDGE, "mm" },
          { HC_OFFER_FEED_ROUND, HC_FIGURE_FEED_ROUND_EDGE, "mm" } };
  HcSharing sharing
      = { .sorts = sorts, .n_sorts = G_N_ELEMENTS (sorts), .bodies = ~(HcBodies) 0 };

  hc_sharing_serve (&sharing, context, level, details, serving);
}

static void
judge (const HcNeedContext *context, HcAnswer *answer)
{
  hc_count_judge (context, answer);
  hc_count_tell_lost_places (context, HC_OFFER_FEED_LONG, "feed.edge-lost", answer);
  hc_count_tell_lost_places (context, HC_OFFER_FEED_ROUND, "feed.edge-lost", answer);
}

const HcNeed hc_need_feed = {
  .id = HC_NEED_FEED,
  .word = "feed",
  .title = N_("Feeders"),
  .question = N_("Can all of them eat?"),
  .why = N_("Birds want to eat together. Where the edge is short, the timid ones get what is "
            "left."),
  .help = "need-feed",
  .sort = HC_NEED_COUNTING,
  .scope = HC_SCOPE_DAY_SPACE,
  .judge = judge,
  .serve = serve,
  .none = "feed.none",
  .few = "feed.too-little",
  .confined = "feed.confined",
  .lifts = { HC_OFFER_FEED_LONG, HC_OFFER_FEED_ROUND, HC_N_OFFER_KINDS },
};
