/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Warmth for chicks, and a cool end to get away from it. */
#include "config.h"

#include "needs/judges/judges.h"

#include "book/figure-names.h"
#include "needs/count.h"
#include "needs/judges/heaters.h"
#include "needs/serve/sharing.h"

#include <glib/gi18n-lib.h>

enum
{
  COVER,
  PAD,
};

static guint
split (const HcNeedContext *context, const HcPlace *place)
{
  const HcFitting *fitting = hc_need_context_find_fitting (context, place);

  return fitting != NULL && hc_fitting_get (fitting)->kind == HC_FITTING_FLOOR_HEAT_PAD ? PAD
                                                                                       : COVER;
}

static gint64
count_by_maker (const HcNeedContext *context, const HcPlace *place)
{
  const HcFitting *fitting = hc_need_context_find_fitting (context, place);

  return fitting != NULL ? hc_heater_count_chicks (context, hc_fitting_get (fitting)) : 0;
}

static void
serve (const HcNeedContext *context, HcLevel level, gboolean details, HcServing *serving)
{
  static const HcSharedSort sorts[]
      = { [COVER] = { HC_OFFER_WARMTH, HC_FIGURE_WARMTH_COVER, "mm2" },
          [PAD] = { HC_OFFER_WARMTH, HC_FIGURE_WARMTH_PAD, "mm2" } };
  HcSharing sharing = { .sorts = sorts, .n_sorts = G_N_ELEMENTS (sorts), .split = split,
                        .most = count_by_maker };

  for (guint body = 0; body < hc_need_context_get_n_bodies (context); body++)
    if (hc_need_context_get_body (context, body)->under_heat)
      sharing.bodies |= (HcBodies) 1 << body;
  hc_sharing_serve (&sharing, context, level, details, serving);
}

static void
judge (const HcNeedContext *context, HcAnswer *answer)
{
  hc_count_judge (context, answer);
  if (!answer->applies)
    return;
  hc_heaters_tell_cold_rooms (context, answer);
  hc_heaters_tell_no_cool_end (context, answer);
}

const HcNeed hc_need_warmth = {
  .id = HC_NEED_WARMTH,
  .word = "warmth",
  .title = N_("Warmth for chicks"),
  .question = N_("Can every chick get warm, and get away from it?"),
  .why = N_("Chicks cannot keep themselves warm until they are feathered. Too few warm places and "
            "they pile up; with no cool end they overheat."),
  .help = "need-warmth",
  .sort = HC_NEED_COUNTING,
  .scope = HC_SCOPE_NIGHT_ROOM,
  .judge = judge,
  .serve = serve,
  .none = "warmth.none",
  .few = "warmth.too-little",
  .kept = "warmth.maker-says-fewer",
  .confined = "warmth.confined",
  .lifts = { HC_OFFER_WARMTH, HC_N_OFFER_KINDS },
};
