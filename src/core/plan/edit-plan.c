/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Title, notes and the day a plan is judged on. */
#include "config.h"

#include "plan/edit-plan.h"

#include "plan/edit.h"

#include <glib/gi18n-lib.h>

/**
 * hc_plan_set_title:
 * @plan: a plan
 * @title: what the keeper calls it
 *
 * Returns: (transfer full): the changed plan, @plan when nothing changed
 */
HcPlan *
hc_plan_set_title (HcPlan *plan, const char *title)
{
  HcPlanValues values = *hc_plan_get (plan);

  values.title = (char *) title;
  return hc_plan_with (plan, &values);
}

/**
 * hc_plan_set_notes:
 * @plan: a plan
 * @notes: what the keeper notes about it
 *
 * Returns: (transfer full): the changed plan, @plan when nothing changed
 */
HcPlan *
hc_plan_set_notes (HcPlan *plan, const char *notes)
{
  HcPlanValues values = *hc_plan_get (plan);

  values.notes = (char *) notes;
  return hc_plan_with (plan, &values);
}

/**
 * hc_plan_set_day:
 * @plan: a plan
 * @as_of: the Julian day to judge it on, 0 for always today
 *
 * Returns: (transfer full): the changed plan, @plan when nothing changed
 */
HcPlan *
hc_plan_set_day (HcPlan *plan, guint32 as_of)
{
  HcPlanValues values = *hc_plan_get (plan);

  g_return_val_if_fail (as_of == 0 || g_date_valid_julian (as_of), NULL);
  values.as_of = as_of;
  return hc_plan_with (plan, &values);
}

/**
 * hc_plan_copy_as:
 * @plan: a plan
 * @uid: an id that no other plan has
 * @title: (nullable): a title for the copy, %NULL for the same
 *
 * Returns: (transfer full): a plan of its own with the same in it
 */
HcPlan *
hc_plan_copy_as (HcPlan *plan, const char *uid, const char *title)
{
  g_autoptr (HcPlan) titled
      = title != NULL ? hc_plan_set_title (plan, title) : hc_plan_ref (plan);

  return hc_part_with_id (titled, uid);
}
