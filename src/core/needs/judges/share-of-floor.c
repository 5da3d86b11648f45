/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Windows and vents held against the floor of the rooms they serve. */
#include "config.h"

#include "needs/judges/share-of-floor.h"

#include "needs/serve/asking.h"
#include "needs/serve/found.h"

double
hc_share_of_floor_sum (const HcNeedContext *context, HcOfferKind kind, HcLevel level)
{
  HcFounds founds;
  double sum;

  hc_founds_init (&founds);
  hc_founds_gather (&founds, context, kind, 0, level, hc_room_is_roofed);
  sum = hc_founds_sum (&founds, 0);
  hc_founds_clear (&founds);
  return sum;
}

static gboolean
reaches (const HcNeedContext *context, HcAreaOffered offered_at, const char *name,
         HcLevel level, HcFinding *finding)
{
  const HcDemand *demand = hc_standard_find_demand (
      hc_case_get_standard (context->about, level), name, NULL, HC_WEEK_GROWN,
      context->condition);
  HcBasis basis = { .ground_floor_mm2 = hc_need_context_get_ground_floor_mm2 (context) };
  double offered = offered_at (context, level);

  if (demand == NULL || hc_demand_grade (demand, offered, 1, 0, &basis) >= level)
    return TRUE;
  hc_finding_set_measure (finding, offered, hc_demand_required (demand, level, 1, 0, &basis),
                          "mm2");
  hc_finding_set_figure (finding, hc_case_get_standard (context->about, level),
                         &demand->figure);
  return FALSE;
}

static gboolean
has_roof (const HcNeedContext *context)
{
  for (guint i = 0; i < hc_need_context_get_n_rooms (context); i++)
    if (hc_room_is_roofed (hc_need_context_get_room (context, i)))
      return TRUE;
  return FALSE;
}

void
hc_share_of_floor_judge (const HcNeedContext *context, HcAreaOffered offered,
                         const char *figure, const char *code, HcAnswer *answer)
{
  gint64 birds = hc_need_context_count_birds (context, ~(HcBodies) 0);
  HcLevel reached = HC_LEVEL_SHORT;
  g_autoptr (HcFinding) finding = hc_finding_new (code, HC_LEVEL_SHORT);

  if (birds == 0 || !has_roof (context))
    return;
  answer->birds = birds;
  while (reached < HC_LEVEL_PLENTY && reaches (context, offered, figure, reached + 1, finding))
    {
      reached++;
      finding->level = reached;
    }
  hc_answer_lower (answer, reached);
  for (HcLevel level = HC_LEVEL_TIGHT; level <= HC_LEVEL_PLENTY; level++)
    if (answer->level < level)
      answer->served[level - HC_LEVEL_TIGHT] = 0;
    else
      answer->served[level - HC_LEVEL_TIGHT] = birds;
  if (reached >= HC_LEVEL_GOOD)
    return;
  finding->birds = birds;
  hc_need_context_name_pens (context, finding);
  hc_answer_take (answer, g_steal_pointer (&finding));
}
