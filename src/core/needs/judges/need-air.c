/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Air: vents for the cold and for the heat, above sleeping birds, and the coldest
 * night itself. */
#include "config.h"

#include "needs/judges/judges.h"

#include "book/figure-names.h"
#include "needs/count.h"
#include "needs/judges/night-air.h"
#include "needs/judges/share-of-floor.h"

#include <glib/gi18n-lib.h>

static double
sum_winter_vents (const HcNeedContext *context, HcLevel level)
{
  return hc_share_of_floor_sum (context, HC_OFFER_VENTS_WINTER, level);
}

static double
sum_summer_vents (const HcNeedContext *context, HcLevel level)
{
  return hc_share_of_floor_sum (context, HC_OFFER_VENTS_SUMMER, level);
}

static void
judge (const HcNeedContext *context, HcAnswer *answer)
{
  hc_share_of_floor_judge (context, sum_winter_vents, HC_FIGURE_AIR_WINTER_VENTS,
                           "air.winter-vents", answer);
  hc_share_of_floor_judge (context, sum_summer_vents, HC_FIGURE_AIR_SUMMER_VENTS,
                           "air.summer-vents", answer);
  hc_count_tell_lost_places (context, HC_OFFER_VENTS_WINTER, "air.vent-too-low", answer);
  hc_night_air_judge (context, answer);
}

const HcNeed hc_need_air = {
  .id = HC_NEED_AIR,
  .word = "air",
  .title = N_("Air"),
  .question = N_("Does damp air get out without a draught on the birds?"),
  .why = N_("Birds stand dry cold well and damp air badly: it frosts combs and hurts lungs. "
            "A draught on sleeping birds takes their warmth."),
  .help = "need-air",
  .sort = HC_NEED_BALANCE,
  .scope = HC_SCOPE_AIR_SPACE,
  .settles = TRUE,
  .judge = judge,
  .lifts = { HC_N_OFFER_KINDS },
};
