/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The standard chosen, and single figures replaced by the keeper's own. */
#include "config.h"

#include "plan/edit-rules.h"

#include "plan/edit.h"

static HcPlan *
with_rules (HcPlan *plan, const HcRulesValues *values)
{
  HcPlanValues changed = *hc_plan_get (plan);
  g_autoptr (HcRules) rules = hc_rules_with (changed.rules, values);

  changed.rules = rules;
  return hc_plan_with (plan, &changed);
}

/**
 * hc_plan_set_standard:
 * @plan: a plan
 * @standard: id of the standard to judge it by
 *
 * The keeper's own figures stay.
 *
 * Returns: (transfer full): the changed plan, @plan when nothing changed
 */
HcPlan *
hc_plan_set_standard (HcPlan *plan, const char *standard)
{
  HcRulesValues values = *hc_plan_get_rules (plan);

  values.standard = (char *) standard;
  return with_rules (plan, &values);
}

/**
 * hc_plan_find_own_figure:
 * @plan: a plan
 * @figure: id of a figure of the rules
 *
 * Returns: (nullable) (transfer none): the keeper's own in its place
 */
HcOwnFigure *
hc_plan_find_own_figure (const HcPlan *plan, const char *figure)
{
  HcParts *own = hc_plan_get_rules (plan)->own_figures;

  for (guint i = 0; i < own->len; i++)
    if (g_strcmp0 (hc_own_figure_get (own->pdata[i])->figure, figure) == 0)
      return own->pdata[i];
  return NULL;
}

/**
 * hc_plan_set_own_figure:
 * @plan: a plan
 * @new_id: an id for it, used when the figure has no own one yet
 * @figure: id of the figure of the rules it replaces
 * @value: the keeper's value, in the figure's unit
 * @reason: why, in the keeper's words
 * @error: says why it cannot be
 *
 * Returns: (transfer full): the changed plan, or %NULL and a %HC_ERROR_EDIT
 */
HcPlan *
hc_plan_set_own_figure (HcPlan *plan, const char *new_id, const char *figure, double value,
                        const char *reason, GError **error)
{
  HcRulesValues values = *hc_plan_get_rules (plan);
  HcOwnFigureValues own = { (char *) figure, value, (char *) reason };
  HcOwnFigure *before = hc_plan_find_own_figure (plan, figure);
  g_autoptr (HcOwnFigure) after = NULL;
  g_autoptr (HcParts) figures = NULL;

  if (!hc_edit_accepts (plan, &hc_own_figure_class, &own, error))
    return NULL;
  after = before != NULL ? hc_own_figure_with (before, &own) : hc_own_figure_new (new_id, &own);
  figures = hc_parts_with (values.own_figures, after);
  values.own_figures = figures;
  return with_rules (plan, &values);
}

/**
 * hc_plan_unset_own_figure:
 * @plan: a plan
 * @figure: id of a figure of the rules
 *
 * Goes back to the figure of the standard.
 *
 * Returns: (transfer full): the changed plan, @plan when nothing changed
 */
HcPlan *
hc_plan_unset_own_figure (HcPlan *plan, const char *figure)
{
  HcRulesValues values = *hc_plan_get_rules (plan);
  HcOwnFigure *own = hc_plan_find_own_figure (plan, figure);
  g_autoptr (HcParts) figures = NULL;

  if (own == NULL)
    return hc_plan_ref (plan);
  figures = hc_parts_without (values.own_figures, hc_own_figure_get_id (own));
  values.own_figures = figures;
  return with_rules (plan, &values);
}
