/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Room outside. */
#include "config.h"

#include "needs/judges/judges.h"

#include "book/figure-names.h"
#include "needs/count.h"
#include "needs/serve/sharing.h"

#include <glib/gi18n-lib.h>

/* Where no run is drawn at all, birds range free or stay in: the floor knows. */
static gboolean
has_run (const HcCase *about)
{
  for (guint i = 0; i < hc_house_get_n_rooms (about->house); i++)
    if (hc_room_get (hc_house_get_room (about->house, i))->kind == HC_PEN_RUN)
      return TRUE;
  return FALSE;
}

static void
serve (const HcNeedContext *context, HcLevel level, gboolean details, HcServing *serving)
{
  static const HcSharedSort sort = { HC_OFFER_RUN, HC_FIGURE_RUN_AREA, "mm2" };
  HcSharing sharing = { .sorts = &sort, .n_sorts = 1, .bodies = ~(HcBodies) 0 };

  if (!context->about->site->birds_go_out || !has_run (context->about))
    sharing.bodies = 0;
  hc_sharing_serve (&sharing, context, level, details, serving);
}

const HcNeed hc_need_run = {
  .id = HC_NEED_RUN,
  .word = "run",
  .title = N_("Room outside"),
  .question = N_("Is the run large enough?"),
  .why = N_("Birds that scratch, sun and dust themselves outside stay busy and leave each "
            "other in peace. A small run turns to mud."),
  .help = "need-run",
  .sort = HC_NEED_COUNTING,
  .scope = HC_SCOPE_DAY_SPACE,
  .judge = hc_count_judge,
  .serve = serve,
  .none = "run.none",
  .few = "run.too-little",
  .confined = "run.confined",
  .lifts = { HC_OFFER_RUN, HC_N_OFFER_KINDS },
};
