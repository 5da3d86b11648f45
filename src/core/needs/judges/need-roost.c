/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Places to sleep: a seat on a bar for every bird that roosts. */
#include "config.h"

#include "needs/judges/judges.h"

#include "book/figure-names.h"
#include "needs/count.h"
#include "needs/serve/seating.h"

#include <glib/gi18n-lib.h>

static void
serve (const HcNeedContext *context, HcLevel level, gboolean details, HcServing *serving)
{
  HcBodies roosting = 0;

  for (guint body = 0; body < hc_need_context_get_n_bodies (context); body++)
    if (hc_need_context_get_body (context, body)->roosts)
      roosting |= (HcBodies) 1 << body;
  hc_seating_serve (context, HC_OFFER_ROOST, HC_FIGURE_ROOST_SEAT, roosting, level, details,
                    serving);
}

static gboolean
has_cold_nights (const HcNeedContext *context)
{
  const HcLimit *cold = hc_need_context_find_plain_limit (context, HC_FIGURE_ROOST_COLD_NIGHT,
                                                          HC_LEVEL_GOOD);

  return cold != NULL
         && !hc_limit_is_met (cold, HC_LEVEL_TIGHT, context->about->site->coldest_night_c);
}

static void
tell_narrow_bars (const HcNeedContext *context, const HcLimit *width, HcRoom *room,
                  HcAnswer *answer)
{
  HcParts *fittings = hc_room_get (room)->fittings;
  double wanted_mm;

  for (guint i = 0; i < fittings->len; i++)
    {
      const HcFittingValues *values = hc_fitting_get (fittings->pdata[i]);
      HcFinding *finding;

      if (values->kind != HC_FITTING_ROOST
          || hc_limit_is_met (width, HC_LEVEL_GOOD, values->bar_width_mm)
          || !hc_limit_get (width, HC_LEVEL_GOOD, &wanted_mm))
        continue;
      finding = hc_finding_new ("roost.bar-narrow-for-cold", HC_LEVEL_TIGHT);
      hc_finding_add_id (finding, hc_fitting_get_id (fittings->pdata[i]));
      hc_finding_set_measure (finding, values->bar_width_mm, wanted_mm, "mm");
      hc_finding_set_figure (finding, hc_case_get_standard (context->about, HC_LEVEL_GOOD),
                             &width->figure);
      hc_answer_take (answer, finding);
    }
}

/* A bird covers its toes with its breast only on a bar wide enough to stand
 * flat on. */
static void
judge (const HcNeedContext *context, HcAnswer *answer)
{
  const HcLimit *width = hc_need_context_find_plain_limit (
      context, HC_FIGURE_ROOST_BAR_WIDTH_COLD, HC_LEVEL_GOOD);

  hc_count_judge (context, answer);
  hc_count_tell_lost_places (context, HC_OFFER_ROOST, "roost.bar-lost", answer);
  if (!answer->applies || width == NULL || !has_cold_nights (context))
    return;
  for (guint i = 0; i < hc_need_context_get_n_rooms (context); i++)
    tell_narrow_bars (context, width, hc_need_context_get_room (context, i), answer);
}

const HcNeed hc_need_roost = {
  .id = HC_NEED_ROOST,
  .word = "roost",
  .title = N_("Places to sleep"),
  .question = N_("Does every bird find a seat for the night?"),
  .why = N_("Hens sleep off the ground, side by side. One without a seat sleeps in a nest or in "
            "the droppings."),
  .help = "need-roost",
  .sort = HC_NEED_COUNTING,
  .scope = HC_SCOPE_NIGHT_ROOM,
  .judge = judge,
  .serve = serve,
  .none = "roost.none",
  .few = "roost.too-few-seats",
  .confined = "roost.confined",
  .lifts = { HC_OFFER_ROOST, HC_N_OFFER_KINDS },
};
