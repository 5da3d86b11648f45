/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Bedding: how much of the floor has it, and how deep it lies. */
#include "config.h"

#include "needs/judges/judges.h"

#include "base/shape.h"
#include "book/figure-names.h"
#include "needs/answer.h"
#include "needs/context.h"
#include "needs/serve/asking.h"

#include <glib/gi18n-lib.h>

/* Corners are rounded to 0.001 mm. */
#define FORGIVEN_MM2 25.0

static gboolean
is_bedded (const HcRoom *room)
{
  const HcPenValues *pen = hc_room_get (room);

  return hc_room_is_roofed (room) && pen->bedding != NULL && *pen->bedding != '\0'
         && pen->bedding_mm > 0;
}

static double
sum_bedded_mm2 (const HcNeedContext *context)
{
  double sum = 0;

  for (guint i = 0; i < hc_need_context_get_n_rooms (context); i++)
    if (is_bedded (hc_need_context_get_room (context, i)))
      sum += hc_shape_get_area_mm2 (hc_room_get_outline (hc_need_context_get_room (context, i)));
  return sum;
}

/* What the birds that ask for most of it ask of all the floor, as if all were
 * their like. */
static const HcDemand *
find_largest (const HcNeedContext *context, HcLevel level, double *required_mm2)
{
  HcBasis basis = { .ground_floor_mm2 = hc_need_context_get_ground_floor_mm2 (context) };
  gint64 birds = hc_need_context_count_birds (context, ~(HcBodies) 0);
  const HcDemand *largest = NULL;

  *required_mm2 = 0;
  for (guint body = 0; body < hc_need_context_get_n_bodies (context); body++)
    {
      const HcDemand *demand
          = context->counts[body] > 0
                ? hc_need_context_find_demand (context, HC_FIGURE_LITTER_AREA, body, level)
                : NULL;
      double this_mm2
          = demand != NULL ? hc_demand_required (demand, level, birds, 0, &basis) : 0;

      if (demand == NULL || this_mm2 <= *required_mm2)
        continue;
      *required_mm2 = this_mm2;
      largest = demand;
    }
  return largest;
}

static void
judge_area (const HcNeedContext *context, HcAnswer *answer)
{
  double required_mm2;
  const HcDemand *demand = find_largest (context, HC_LEVEL_TIGHT, &required_mm2);
  double bedded_mm2 = sum_bedded_mm2 (context);
  HcFinding *finding;

  if (demand == NULL || bedded_mm2 >= required_mm2 - FORGIVEN_MM2)
    return;
  finding = hc_finding_new (bedded_mm2 == 0 ? "litter.none" : "litter.too-little",
                            HC_LEVEL_SHORT);
  finding->birds = hc_need_context_count_birds (context, ~(HcBodies) 0);
  hc_finding_set_measure (finding, bedded_mm2, required_mm2, "mm2");
  hc_finding_set_figure (finding, hc_case_get_standard (context->about, HC_LEVEL_TIGHT),
                         &demand->figure);
  hc_need_context_name_pens (context, finding);
  hc_answer_take (answer, finding);
}

static void
judge_depth (const HcNeedContext *context, const HcRoom *room, HcAnswer *answer)
{
  const HcLimit *limit
      = hc_need_context_find_plain_limit (context, HC_FIGURE_LITTER_DEPTH, HC_LEVEL_GOOD);
  double depth_mm = hc_room_get (room)->bedding_mm;
  double wanted_mm;
  HcFinding *finding;

  if (limit == NULL || hc_limit_is_met (limit, HC_LEVEL_TIGHT, depth_mm)
      || !hc_limit_get (limit, HC_LEVEL_TIGHT, &wanted_mm))
    return;
  finding = hc_finding_new ("litter.thin", HC_LEVEL_TIGHT);
  hc_finding_set_measure (finding, depth_mm, wanted_mm, "mm");
  hc_finding_set_figure (finding, hc_case_get_standard (context->about, HC_LEVEL_GOOD),
                         &limit->figure);
  hc_finding_add_id (finding, hc_pen_get_id (hc_room_get_pen (room)));
  hc_answer_take (answer, finding);
}

static void
judge (const HcNeedContext *context, HcAnswer *answer)
{
  gboolean has_roof = FALSE;

  for (guint i = 0; i < hc_need_context_get_n_rooms (context); i++)
    {
      const HcRoom *room = hc_need_context_get_room (context, i);

      has_roof = has_roof || hc_room_is_roofed (room);
      if (is_bedded (room))
        judge_depth (context, room, answer);
    }
  if (!has_roof)
    return;
  hc_answer_lower (answer, HC_LEVEL_GOOD);
  judge_area (context, answer);
}

const HcNeed hc_need_litter = {
  .id = HC_NEED_LITTER,
  .word = "litter",
  .title = N_("Bedding"),
  .question = N_("Is there enough dry bedding to scratch in?"),
  .why = N_("Bedding takes up what the birds drop and keeps their feet dry. Hens that cannot "
            "scratch peck at each other."),
  .help = "need-litter",
  .sort = HC_NEED_CONDITION,
  .scope = HC_SCOPE_DAY_SPACE,
  .judge = judge,
  .lifts = { HC_N_OFFER_KINDS },
};
