/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Daylight in rooms where birds live. */
#include "config.h"

#include "needs/judges/judges.h"

#include "book/figure-names.h"
#include "needs/judges/daylight.h"
#include "needs/judges/share-of-floor.h"

#include <glib/gi18n-lib.h>

static void
judge (const HcNeedContext *context, HcAnswer *answer)
{
  hc_share_of_floor_judge (context, hc_daylight_sum, HC_FIGURE_LIGHT_WINDOW_AREA,
                           "light.too-little", answer);
}

const HcNeed hc_need_light = {
  .id = HC_NEED_LIGHT,
  .word = "light",
  .title = N_("Daylight"),
  .question = N_("Is it light enough inside by day?"),
  .why = N_("In the dark birds do not eat, and they drift into nests and corners. "
            "Hens lay by the length of the day."),
  .help = "need-light",
  .sort = HC_NEED_CONDITION,
  .scope = HC_SCOPE_NIGHT_ROOM,
  .judge = judge,
  .lifts = { HC_N_OFFER_KINDS },
};
