/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What happens through the year, put in, changed and taken out. */
#include "config.h"

#include "plan/edit-season.h"

#include "plan/edit-possible.h"
#include "plan/edit.h"

#include <glib/gi18n-lib.h>

static HcParts **
list_in (HcPlanValues *values, gsize offset)
{
  return (HcParts **) ((char *) values + offset);
}

static HcPlan *
put (HcPlan *plan, gsize list, const HcPartClass *klass, gpointer part, GError **error)
{
  HcPlanValues values = *hc_plan_get (plan);
  g_autoptr (HcParts) parts = NULL;

  if (!hc_edit_accepts (plan, klass, hc_part_get_values (part), error))
    return NULL;
  parts = hc_parts_with (*list_in (&values, list), part);
  *list_in (&values, list) = parts;
  return hc_edit_possible (hc_plan_with (plan, &values), error);
}

static HcPlan *
drop (HcPlan *plan, gsize list, const char *id)
{
  HcPlanValues values = *hc_plan_get (plan);
  g_autoptr (HcParts) parts = hc_parts_without (*list_in (&values, list), id);

  *list_in (&values, list) = parts;
  return hc_plan_with (plan, &values);
}

static HcPlan *
with_batch (HcPlan *plan, HcBatch *before, const HcBatchValues *values)
{
  HcPlanValues changed = *hc_plan_get (plan);
  g_autoptr (HcBatch) after = hc_batch_with (before, values);
  g_autoptr (HcParts) batches = hc_parts_with (changed.batches, after);

  changed.batches = batches;
  return hc_plan_with (plan, &changed);
}

static HcBatch *
find_batch (HcPlan *plan, const char *id, GError **error)
{
  HcBatch *batch = hc_parts_find (hc_plan_get (plan)->batches, id);

  if (batch == NULL)
    hc_edit_refuse (error, _("Those birds are no longer in the plan. Choose others."));
  return batch;
}

/**
 * hc_plan_put_move:
 * @plan: a plan
 * @batch: id of a group of birds
 * @move: a move; one with the same id is replaced
 * @error: says why it cannot be
 *
 * Returns: (transfer full): the changed plan, @plan when nothing changed, or
 *   %NULL and a %HC_ERROR_EDIT
 */
HcPlan *
hc_plan_put_move (HcPlan *plan, const char *batch, HcMove *move, GError **error)
{
  HcBatch *before = find_batch (plan, batch, error);
  HcBatchValues values;
  g_autoptr (HcParts) moves = NULL;

  if (before == NULL || !hc_edit_accepts (plan, &hc_move_class, hc_move_get (move), error))
    return NULL;
  values = *hc_batch_get (before);
  moves = hc_parts_with (values.moves, move);
  values.moves = moves;
  return hc_edit_possible (with_batch (plan, before, &values), error);
}

/**
 * hc_plan_put_leaving:
 * @plan: a plan
 * @batch: id of a group of birds
 * @leaving: a loss, a sale or a harvest; one with the same id is replaced
 * @error: says why it cannot be
 *
 * Returns: (transfer full): the changed plan, @plan when nothing changed, or
 *   %NULL and a %HC_ERROR_EDIT
 */
HcPlan *
hc_plan_put_leaving (HcPlan *plan, const char *batch, HcLeaving *leaving, GError **error)
{
  HcBatch *before = find_batch (plan, batch, error);
  HcBatchValues values;
  g_autoptr (HcParts) leavings = NULL;

  if (before == NULL
      || !hc_edit_accepts (plan, &hc_leaving_class, hc_leaving_get (leaving), error))
    return NULL;
  values = *hc_batch_get (before);
  leavings = hc_parts_with (values.leavings, leaving);
  values.leavings = leavings;
  return hc_edit_possible (with_batch (plan, before, &values), error);
}

/**
 * hc_plan_remove_from_batch:
 * @plan: a plan
 * @batch: id of a group of birds
 * @id: id of one of its moves or leavings
 *
 * Returns: (transfer full): the plan without it, @plan when there was none
 */
HcPlan *
hc_plan_remove_from_batch (HcPlan *plan, const char *batch, const char *id)
{
  HcBatch *before = find_batch (plan, batch, NULL);
  HcBatchValues values;
  g_autoptr (HcParts) moves = NULL;
  g_autoptr (HcParts) leavings = NULL;

  if (before == NULL)
    return hc_plan_ref (plan);
  values = *hc_batch_get (before);
  moves = hc_parts_without (values.moves, id);
  leavings = hc_parts_without (values.leavings, id);
  values.moves = moves;
  values.leavings = leavings;
  return with_batch (plan, before, &values);
}

/**
 * hc_plan_put_clutch:
 * @plan: a plan
 * @clutch: eggs to hatch; what has the same id is replaced
 * @error: says why it cannot be
 *
 * Returns: (transfer full): the changed plan, @plan when nothing changed, or
 *   %NULL and a %HC_ERROR_EDIT
 */
HcPlan *
hc_plan_put_clutch (HcPlan *plan, HcClutch *clutch, GError **error)
{
  return put (plan, G_STRUCT_OFFSET (HcPlanValues, clutches), &hc_clutch_class, clutch, error);
}

/**
 * hc_plan_remove_clutch:
 * @plan: a plan
 * @id: id of eggs to hatch
 *
 * Returns: (transfer full): the plan without it, @plan when there was none
 */
HcPlan *
hc_plan_remove_clutch (HcPlan *plan, const char *id)
{
  return drop (plan, G_STRUCT_OFFSET (HcPlanValues, clutches), id);
}

/**
 * hc_plan_put_result:
 * @plan: a plan
 * @result: what really happened; what has the same id is replaced
 * @error: says why it cannot be
 *
 * Returns: (transfer full): the changed plan, @plan when nothing changed, or
 *   %NULL and a %HC_ERROR_EDIT
 */
HcPlan *
hc_plan_put_result (HcPlan *plan, HcResult *result, GError **error)
{
  return put (plan, G_STRUCT_OFFSET (HcPlanValues, results), &hc_result_class, result, error);
}

/**
 * hc_plan_remove_result:
 * @plan: a plan
 * @id: id of what really happened
 *
 * Returns: (transfer full): the plan without it, @plan when there was none
 */
HcPlan *
hc_plan_remove_result (HcPlan *plan, const char *id)
{
  return drop (plan, G_STRUCT_OFFSET (HcPlanValues, results), id);
}

/**
 * hc_plan_put_chore:
 * @plan: a plan
 * @chore: a chore ticked off or an own one; what has the same id is replaced
 * @error: says why it cannot be
 *
 * Returns: (transfer full): the changed plan, @plan when nothing changed, or
 *   %NULL and a %HC_ERROR_EDIT
 */
HcPlan *
hc_plan_put_chore (HcPlan *plan, HcChore *chore, GError **error)
{
  return put (plan, G_STRUCT_OFFSET (HcPlanValues, chores), &hc_chore_class, chore, error);
}

/**
 * hc_plan_remove_chore:
 * @plan: a plan
 * @id: id of a chore ticked off or an own one
 *
 * Returns: (transfer full): the plan without it, @plan when there was none
 */
HcPlan *
hc_plan_remove_chore (HcPlan *plan, const char *id)
{
  return drop (plan, G_STRUCT_OFFSET (HcPlanValues, chores), id);
}

/**
 * hc_plan_put_price:
 * @plan: a plan
 * @price: a price; what has the same id is replaced
 * @error: says why it cannot be
 *
 * Returns: (transfer full): the changed plan, @plan when nothing changed, or
 *   %NULL and a %HC_ERROR_EDIT
 */
HcPlan *
hc_plan_put_price (HcPlan *plan, HcPrice *price, GError **error)
{
  return put (plan, G_STRUCT_OFFSET (HcPlanValues, prices), &hc_price_class, price, error);
}

/**
 * hc_plan_remove_price:
 * @plan: a plan
 * @id: id of a price
 *
 * Returns: (transfer full): the plan without it, @plan when there was none
 */
HcPlan *
hc_plan_remove_price (HcPlan *plan, const char *id)
{
  return drop (plan, G_STRUCT_OFFSET (HcPlanValues, prices), id);
}

/**
 * hc_plan_put_stock:
 * @plan: a plan
 * @stock: material on hand; what has the same id is replaced
 * @error: says why it cannot be
 *
 * Returns: (transfer full): the changed plan, @plan when nothing changed, or
 *   %NULL and a %HC_ERROR_EDIT
 */
HcPlan *
hc_plan_put_stock (HcPlan *plan, HcStock *stock, GError **error)
{
  return put (plan, G_STRUCT_OFFSET (HcPlanValues, stock), &hc_stock_class, stock, error);
}

/**
 * hc_plan_remove_stock:
 * @plan: a plan
 * @id: id of material on hand
 *
 * Returns: (transfer full): the plan without it, @plan when there was none
 */
HcPlan *
hc_plan_remove_stock (HcPlan *plan, const char *id)
{
  return drop (plan, G_STRUCT_OFFSET (HcPlanValues, stock), id);
}

/**
 * hc_plan_set_keeping:
 * @plan: a plan
 * @values: how birds shall be kept through the year
 * @error: says which of them cannot be
 *
 * Returns: (transfer full): the changed plan, @plan when nothing changed, or
 *   %NULL and a %HC_ERROR_EDIT
 */
HcPlan *
hc_plan_set_keeping (HcPlan *plan, const HcKeepingValues *values, GError **error)
{
  HcPlanValues changed = *hc_plan_get (plan);
  g_autoptr (HcKeeping) keeping = NULL;

  if (!hc_edit_accepts (plan, &hc_keeping_class, values, error))
    return NULL;
  keeping = hc_keeping_with (changed.keeping, values);
  changed.keeping = keeping;
  return hc_plan_with (plan, &changed);
}
