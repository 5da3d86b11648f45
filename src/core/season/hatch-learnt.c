/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The share of eggs that hatch, before and after the keeper's own results. */
#include "config.h"

#include "season/hatch-learnt.h"

static double
get_share (const HcHatchShares *shares)
{
  return hc_beta_get_mean (&shares->fertile) * hc_beta_get_mean (&shares->hatch);
}

static HcPlan *
without_results (const HcPlan *plan)
{
  HcPlanValues values = *hc_plan_get (plan);
  g_autoptr (HcParts) none = hc_parts_new ();

  values.results = none;
  return hc_plan_with ((HcPlan *) plan, &values);
}

/**
 * hc_hatch_learn_kind: (skip)
 * @plan: a plan
 * @book: the book
 * @kind: a kind of bird
 * @learnt: (out caller-allocates): what was counted, and what follows
 */
void
hc_hatch_learn_kind (const HcPlan *plan, HcBook *book, const HcKind *kind,
                     HcHatchLearnt *learnt)
{
  g_autoptr (HcPlan) bare = without_results (plan);
  HcHatchShares before, after;

  hc_hatch_shares_of_kind (&before, bare, book, kind);
  hc_hatch_shares_of_kind (&after, plan, book, kind);
  *learnt = (HcHatchLearnt) { after.eggs_seen, get_share (&before), get_share (&after) };
}
