/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The place as the keeper changes it. */
#include "config.h"

#include "plan/edit-site.h"

#include "plan/edit.h"

/**
 * hc_plan_set_site:
 * @plan: a plan
 * @values: what the place shall be
 * @error: says which of them cannot be
 *
 * Returns: (transfer full): the changed plan, @plan when nothing changed, or
 *   %NULL and a %HC_ERROR_EDIT
 */
HcPlan *
hc_plan_set_site (HcPlan *plan, const HcSiteValues *values, GError **error)
{
  HcPlanValues changed = *hc_plan_get (plan);
  g_autoptr (HcSite) site = NULL;

  if (!hc_edit_accepts (plan, &hc_site_class, values, error))
    return NULL;
  site = hc_site_with (changed.site, values);
  changed.site = site;
  return hc_plan_with (plan, &changed);
}
