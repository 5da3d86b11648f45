/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The way out: pop holes wide enough, for each bird one it fits through. */
#include "config.h"

#include "needs/judges/judges.h"

#include "book/figure-names.h"
#include "needs/count.h"
#include "needs/serve/sharing.h"

#include <glib/gi18n-lib.h>

/* Chicks under heat stay in. */
static HcBodies
find_bodies (const HcNeedContext *context)
{
  HcBodies bodies = 0;

  if (!context->about->site->birds_go_out)
    return 0;
  for (guint body = 0; body < hc_need_context_get_n_bodies (context); body++)
    if (!hc_need_context_get_body (context, body)->under_heat)
      bodies |= (HcBodies) 1 << body;
  return bodies;
}

static gboolean
is_house (const HcNeedContext *context)
{
  for (guint i = 0; i < hc_need_context_get_n_rooms (context); i++)
    if (hc_room_is_roofed (hc_need_context_get_room (context, i)))
      return TRUE;
  return FALSE;
}

static void
serve (const HcNeedContext *context, HcLevel level, gboolean details, HcServing *serving)
{
  static const HcSharedSort sort = { HC_OFFER_WAY_OUT, HC_FIGURE_WAY_OUT_TOTAL_WIDTH, "mm" };
  HcSharing sharing = { .sorts = &sort, .n_sorts = 1, .test = hc_room_is_roofed };
  HcBasis basis = { .ground_floor_mm2 = hc_need_context_get_ground_floor_mm2 (context) };
  HcAsking floor;

  if (is_house (context))
    sharing.bodies = find_bodies (context);
  hc_asking_init (&floor, context, HC_FIGURE_FLOOR_AREA, level);
  basis.required_floor_mm2
      = hc_asking_get_total (&floor, context->counts, ~(HcBodies) 0, NULL);
  sharing.basis = &basis;
  hc_sharing_serve (&sharing, context, level, details, serving);
}

static void
judge (const HcNeedContext *context, HcAnswer *answer)
{
  hc_count_judge (context, answer);
  hc_count_tell_lost_places (context, HC_OFFER_WAY_OUT, "way-out.hole-lost", answer);
}

const HcNeed hc_need_way_out = {
  .id = HC_NEED_WAY_OUT,
  .word = "way-out",
  .title = N_("Way out"),
  .question = N_("Can every bird get out and in?"),
  .why = N_("A hole that is small or single is easily guarded by one bold bird, and the others "
            "stay where they are."),
  .help = "need-way-out",
  .sort = HC_NEED_COUNTING,
  .scope = HC_SCOPE_DAY_SPACE,
  .judge = judge,
  .serve = serve,
  .none = "way-out.none",
  .few = "way-out.too-narrow",
  .confined = "way-out.confined",
  .lifts = { HC_OFFER_WAY_OUT, HC_N_OFFER_KINDS },
};
