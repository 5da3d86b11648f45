/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * One finding for each thing and reason, for all the birds it holds for. */
#include "config.h"

#include "needs/climb/telling.h"

#include "needs/climb/landing.h"

static gboolean
is_one_roost (const HcClimb *climb, const HcHop *hop)
{
  return hc_climb_get_ledge (climb, hop->low)->id == hc_climb_get_ledge (climb, hop->high)->id;
}

static const char *
find_code (const HcClimb *climb, const HcHop *hop, const HcHopGrade *grade, HcRoute route)
{
  switch (grade->cause)
    {
    case HC_HOP_DROPS:
      return "climb.drop";
    case HC_HOP_DROPS_HARD:
      return "climb.drop-hard";
    case HC_HOP_HAS_NO_LANDING:
      return hc_climb_get_ledge (climb, hop->high)->landing.blocker != NULL ? "climb.landing"
                                                                            : "climb.no-landing";
    case HC_HOP_IS_STEEP:
      return "climb.steep";
    case HC_HOP_IS_NARROW:
      return "climb.narrow";
    case HC_HOP_IS_WIDE:
      return "climb.gap";
    default:
      break;
    }
  if (hop->kind == HC_HOP_FLOOR)
    return "climb.first-step";
  if (is_one_roost (climb, hop))
    return "climb.between-bars";
  return route == HC_ROUTE_UP ? "climb.step" : "climb.step-down";
}

/* What else the sentence names: what is in the way, the ramp, or where the hop
 * leads from or to. */
static const char *
find_other (const HcClimb *climb, const HcHop *hop, const HcHopGrade *grade, HcRoute route)
{
  if (grade->cause == HC_HOP_HAS_NO_LANDING)
    return hc_climb_get_ledge (climb, hop->high)->landing.blocker;
  if (hop->kind == HC_HOP_FLOOR)
    return hc_climb_get_ledge (climb, hop->high)->id;
  return hc_climb_get_ledge (climb, route == HC_ROUTE_UP ? hop->low : hop->high)->id;
}

static void
set_measure (HcFinding *finding, const HcClimb *climb, const HcHop *hop, const HcHopGrade *grade)
{
  double bound = 0;

  hc_limit_get (grade->limit, finding->level + 1, &bound);
  if (grade->cause == HC_HOP_HAS_NO_LANDING)
    {
      const HcLedge *ledge = hc_climb_get_ledge (climb, hop->high);

      hc_finding_set_measure (finding, ledge->landing.clear_before_mm, bound * hop->rise_mm, "mm");
      hc_finding_set_area (finding, hc_landing_get_strip (ledge, bound * hop->rise_mm));
    }
  else
    hc_finding_set_measure (finding, grade->measured, bound,
                            grade->cause == HC_HOP_IS_STEEP ? "degrees" : "mm");
}

static HcFinding *
find_alike (const HcAnswer *answer, const HcFinding *finding)
{
  for (guint i = 0; i < answer->findings->len; i++)
    {
      HcFinding *told = answer->findings->pdata[i];

      if (told->code == finding->code && told->level == finding->level
          && g_strv_equal ((const char *const *) told->ids, (const char *const *) finding->ids))
        return told;
    }
  return NULL;
}

static void
add_birds (HcFinding *finding, const HcNeedContext *context, guint body)
{
  if (finding->kinds >> body & 1)
    return;
  finding->kinds |= (HcBodies) 1 << body;
  finding->birds += context->counts[body];
}

/* Birds of several kinds share a finding; the strictest bound among them stays. */
static void
take (HcAnswer *answer, HcFinding *finding, const HcNeedContext *context, guint body)
{
  HcFinding *told = find_alike (answer, finding);

  if (told != NULL)
    {
      told->required = MIN (told->required, finding->required);
      hc_finding_unref (finding);
      finding = told;
    }
  else
    hc_answer_take (answer, finding);
  add_birds (finding, context, body);
}

/* @ledge is not reached as well as is good: by the level it is reached at. */
void
hc_climb_tell (const HcNeedContext *context, const HcRoutes *routes, HcRoute route, guint ledge,
               guint body, HcAnswer *answer)
{
  const HcClimb *climb = routes->climb;
  HcHopGrade grade;
  const HcHop *hop = hc_routes_find_worst (routes, route, ledge, &grade);
  HcFinding *finding;

  if (hop == NULL || grade.limit == NULL)
    return;
  finding = hc_finding_new (find_code (climb, hop, &grade, route), routes->levels[route][ledge]);
  hc_finding_add_id (finding, hc_climb_get_ledge (climb, ledge)->id);
  hc_finding_add_id (finding, find_other (climb, hop, &grade, route));
  set_measure (finding, climb, hop, &grade);
  hc_finding_set_figure (finding, hc_case_get_standard (context->about, HC_LEVEL_GOOD),
                         &grade.limit->figure);
  take (answer, finding, context, body);
}
