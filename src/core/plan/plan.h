/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The plan: everything the keeper has told us, as one immutable value. */
#pragma once

#include "base/part.h"
#include "plan/batch.h"
#include "plan/building.h"
#include "plan/chore.h"
#include "plan/clutch.h"
#include "plan/keeping.h"
#include "plan/layout.h"
#include "plan/price.h"
#include "plan/result.h"
#include "plan/rules.h"
#include "plan/site.h"
#include "plan/stock.h"

G_BEGIN_DECLS

/**
 * HcPlanValues:
 * @title: the keeper's title for it
 * @notes: the keeper's notes
 * @as_of: the day the plan is judged on, 0 for today
 * @site: the place
 * @rules: whose figures count
 * @buildings: (element-type HcBuilding): the buildings
 * @variants: (element-type HcLayout): one or more layouts
 * @variant: id of the layout being worked on
 * @batches: (element-type HcBatch): the birds
 * @clutches: (element-type HcClutch): eggs to hatch
 * @results: (element-type HcResult): what really happened
 * @chores: (element-type HcChore): chores ticked off, and the keeper's own
 * @keeping: how birds are kept through the year
 * @prices: (element-type HcPrice): what things cost and bring
 * @stock: (element-type HcStock): material on hand
 *
 * The plan's id is its `uid`: a copy gets a new one.
 */
typedef struct
{
  char *title;
  char *notes;
  guint32 as_of;
  HcSite *site;
  HcRules *rules;
  HcParts *buildings;
  HcParts *variants;
  char *variant;
  HcParts *batches;
  HcParts *clutches;
  HcParts *results;
  HcParts *chores;
  HcKeeping *keeping;
  HcParts *prices;
  HcParts *stock;
} HcPlanValues;

HC_DECLARE_PART (HcPlan, hc_plan)

HcPlan *hc_plan_new_empty (const char *uid, const char *title) G_GNUC_WARN_UNUSED_RESULT;
HcLayout *hc_plan_get_layout (const HcPlan *plan);
HcPlan *hc_plan_with_layout (HcPlan *plan, HcLayout *layout) G_GNUC_WARN_UNUSED_RESULT;
const HcSiteValues *hc_plan_get_site (const HcPlan *plan);
const HcRulesValues *hc_plan_get_rules (const HcPlan *plan);
const HcKeepingValues *hc_plan_get_keeping (const HcPlan *plan);
guint32 hc_plan_get_day (const HcPlan *plan);

G_END_DECLS
