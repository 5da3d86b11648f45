/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Groups of birds that come, change and go. */
#include "config.h"

#include "plan/edit-flock.h"

#include "plan/edit-possible.h"
#include "plan/edit.h"

#include <glib/gi18n-lib.h>

static gboolean
accepts (HcPlan *plan, const HcBatchValues *values, GError **error)
{
  if (!hc_edit_accepts (plan, &hc_batch_class, values, error))
    return FALSE;
  if (values->pen == NULL || values->pen[0] == '\0'
      || hc_layout_get_pen (hc_plan_get_layout (plan), values->pen) != NULL)
    return TRUE;
  hc_edit_refuse (error, _("Their pen is no longer in the plan. Choose another for them."));
  return FALSE;
}

static HcPlan *
with_batches (HcPlan *plan, HcParts *batches)
{
  HcPlanValues values = *hc_plan_get (plan);

  values.batches = batches;
  return hc_plan_with (plan, &values);
}

static HcPlan *
put (HcPlan *plan, HcBatch *batch)
{
  g_autoptr (HcParts) batches = hc_parts_with (hc_plan_get (plan)->batches, batch);

  return with_batches (plan, batches);
}

/**
 * hc_plan_add_batch:
 * @plan: a plan
 * @batch: a group of birds with an id that nothing in the plan has
 * @error: says why it cannot be added
 *
 * Returns: (transfer full): the plan with them, or %NULL and a
 *   %HC_ERROR_EDIT
 */
HcPlan *
hc_plan_add_batch (HcPlan *plan, HcBatch *batch, GError **error)
{
  if (!hc_edit_id_is_free (plan, hc_batch_get_id (batch), error)
      || !accepts (plan, hc_batch_get (batch), error))
    return NULL;
  return hc_edit_possible (put (plan, batch), error);
}

/**
 * hc_plan_set_batch:
 * @plan: a plan
 * @id: id of a group of birds
 * @values: what they shall be
 * @error: says why they cannot be
 *
 * Returns: (transfer full): the changed plan, @plan when nothing changed, or
 *   %NULL and a %HC_ERROR_EDIT
 */
HcPlan *
hc_plan_set_batch (HcPlan *plan, const char *id, const HcBatchValues *values, GError **error)
{
  HcBatch *before = hc_parts_find (hc_plan_get (plan)->batches, id);
  g_autoptr (HcBatch) after = NULL;

  if (before == NULL)
    return hc_edit_refuse (error, _("Those birds are no longer in the plan. Choose others."));
  if (!accepts (plan, values, error))
    return NULL;
  after = hc_batch_with (before, values);
  return hc_edit_possible (put (plan, after), error);
}

/**
 * hc_plan_remove_batch:
 * @plan: a plan
 * @id: id of a group of birds
 *
 * Returns: (transfer full): the plan without them, @plan when it had none such
 */
HcPlan *
hc_plan_remove_batch (HcPlan *plan, const char *id)
{
  g_autoptr (HcParts) batches = hc_parts_without (hc_plan_get (plan)->batches, id);

  return with_batches (plan, batches);
}
