/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The plan as a table of its members, and what is asked of it most. */
#include "config.h"

#include "plan/plan.h"

static const HcMember members[] = {
  HC_TEXT (HcPlanValues, title, "title"),
  HC_TEXT (HcPlanValues, notes, "notes"),
  HC_DATE (HcPlanValues, as_of, "as_of"),
  HC_PART (HcPlanValues, site, "site", &hc_site_class),
  HC_PART (HcPlanValues, rules, "rules", &hc_rules_class),
  HC_PARTS (HcPlanValues, buildings, "buildings", &hc_building_class),
  HC_PARTS (HcPlanValues, variants, "variants", &hc_layout_class),
  HC_TEXT (HcPlanValues, variant, "variant"),
  HC_PARTS (HcPlanValues, batches, "batches", &hc_batch_class),
  HC_PARTS (HcPlanValues, clutches, "clutches", &hc_clutch_class),
  HC_PARTS (HcPlanValues, results, "results", &hc_result_class),
  HC_PARTS (HcPlanValues, chores, "chores", &hc_chore_class),
  HC_PART (HcPlanValues, keeping, "keeping", &hc_keeping_class),
  HC_PARTS (HcPlanValues, prices, "prices", &hc_price_class),
  HC_PARTS (HcPlanValues, stock, "stock", &hc_stock_class),
};

HC_DEFINE_PART (HcPlan, hc_plan, FALSE, members)

/**
 * hc_plan_new_empty:
 * @uid: an id no other plan has
 * @title: its title
 *
 * Returns: (transfer full): a plan with one empty layout and no birds
 */
HcPlan *
hc_plan_new_empty (const char *uid, const char *title)
{
  g_autoptr (HcLayout) layout = hc_layout_new ("main", NULL);
  g_autoptr (HcParts) variants = hc_parts_new ();
  HcPlanValues values;

  g_ptr_array_add (variants, hc_layout_ref (layout));
  hc_plan_values_init (&values);
  values.title = (char *) title;
  values.variants = variants;
  values.variant = (char *) "main";
  return hc_plan_new (uid, &values);
}

/**
 * hc_plan_get_layout:
 * @plan: a plan
 *
 * Returns: (transfer none): the layout being worked on: the one named, else
 *   the first. Plans read and edited through this library have one.
 */
HcLayout *
hc_plan_get_layout (const HcPlan *plan)
{
  const HcPlanValues *values = hc_plan_get (plan);
  HcLayout *named = hc_parts_find (values->variants, values->variant);

  if (named != NULL || values->variants->len == 0)
    return named;
  return values->variants->pdata[0];
}

/**
 * hc_plan_with_layout:
 * @plan: a plan
 * @layout: a layout; one with the same id is replaced
 *
 * Returns: (transfer full): the plan with @layout in it
 */
HcPlan *
hc_plan_with_layout (HcPlan *plan, HcLayout *layout)
{
  HcPlanValues values = *hc_plan_get (plan);
  g_autoptr (HcParts) variants = hc_parts_with (values.variants, layout);

  values.variants = variants;
  return hc_plan_with (plan, &values);
}

/**
 * hc_plan_get_site:
 * @plan: a plan
 *
 * Returns: what the keeper told us of the place
 */
const HcSiteValues *
hc_plan_get_site (const HcPlan *plan)
{
  return hc_site_get (hc_plan_get (plan)->site);
}

/**
 * hc_plan_get_rules:
 * @plan: a plan
 *
 * Returns: whose figures the plan is judged by
 */
const HcRulesValues *
hc_plan_get_rules (const HcPlan *plan)
{
  return hc_rules_get (hc_plan_get (plan)->rules);
}

/**
 * hc_plan_get_keeping:
 * @plan: a plan
 *
 * Returns: how birds are kept through the year
 */
const HcKeepingValues *
hc_plan_get_keeping (const HcPlan *plan)
{
  return hc_keeping_get (hc_plan_get (plan)->keeping);
}

/**
 * hc_plan_get_day:
 * @plan: a plan
 *
 * Returns: the Julian day the plan is judged on: its own, or today
 */
guint32
hc_plan_get_day (const HcPlan *plan)
{
  guint32 as_of = hc_plan_get (plan)->as_of;
  GDate today;

  if (as_of != 0)
    return as_of;
  g_date_clear (&today, 1);
  g_date_set_time_t (&today, g_get_real_time () / G_USEC_PER_SEC);
  return g_date_get_julian (&today);
}
