/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Looks a whole plan through for the first thing that is unsound. */
#include "config.h"

#include "plan/soundness.h"

#include "base/error.h"
#include "base/ids.h"
#include "plan/fault-private.h"

static gboolean
gather_ids (HcParts *parts,
            const char *member,
            GHashTable *ids,
            HcFault *fault)
{
  for (guint i = 0; i < parts->len; i++)
    {
      const char *id = hc_part_get_id (parts->pdata[i]);

      if (g_hash_table_add (ids, (char *) id))
        continue;
      hc_fault_set (fault, HC_FAULT_ID_TWICE, "id", id, NULL);
      return hc_fault_inside_item (fault, member, i);
    }
  return FALSE;
}

static gboolean
find_id_twice (HcParts *parts,
               const char *member,
               HcFault *fault)
{
  g_autoptr (GHashTable) ids = g_hash_table_new (g_str_hash, g_str_equal);

  return gather_ids (parts, member, ids, fault);
}

static gboolean
find_fault_of_rules (const HcPlan *plan,
                     HcFault *fault)
{
  return find_id_twice (hc_plan_get_rules (plan)->own_figures, "own_figures", fault)
         && hc_fault_inside (fault, "rules");
}

static gboolean
find_fault_of_variants (const HcPlanValues *values,
                        HcFault *fault)
{
  g_autoptr (GHashTable) ids = g_hash_table_new (g_str_hash, g_str_equal);

  if (values->variants->len == 0)
    return hc_fault_set (fault, HC_FAULT_NO_LAYOUT, "variants", NULL, NULL);
  if (gather_ids (values->variants, "variants", ids, fault))
    return TRUE;
  return values->variant != NULL && *values->variant != '\0'
         && !g_hash_table_contains (ids, values->variant)
         && hc_fault_set (fault, HC_FAULT_NO_SUCH, "variant", values->variant, NULL);
}

static gboolean
find_fault_of_layouts (const HcPlanValues *values,
                       HcFault *fault)
{
  g_autoptr (GHashTable) buildings = g_hash_table_new (g_str_hash, g_str_equal);

  if (gather_ids (values->buildings, "buildings", buildings, fault))
    return TRUE;
  for (guint i = 0; i < values->variants->len; i++)
    if (hc_layout_find_fault (values->variants->pdata[i], buildings, fault))
      return hc_fault_inside_item (fault, "variants", i);
  return FALSE;
}

/* Variants share the birds, so a home pen may be missing from some of them. */
static GHashTable *
pens_of_all_variants (const HcPlanValues *values)
{
  GHashTable *ids = g_hash_table_new (g_str_hash, g_str_equal);

  for (guint i = 0; i < values->variants->len; i++)
    {
      HcParts *pens = hc_layout_get (values->variants->pdata[i])->pens;

      for (guint j = 0; j < pens->len; j++)
        g_hash_table_add (ids, (char *) hc_part_get_id (pens->pdata[j]));
    }
  return ids;
}

static gboolean
find_fault_of_homes (const HcPlanValues *values,
                     GHashTable *pens,
                     HcFault *fault)
{
  for (guint i = 0; i < values->batches->len; i++)
    {
      const char *pen = hc_batch_get (values->batches->pdata[i])->pen;

      if (pen == NULL || *pen == '\0' || g_hash_table_contains (pens, pen))
        continue;
      hc_fault_set (fault, HC_FAULT_NO_SUCH, "pen", pen, NULL);
      return hc_fault_inside_item (fault, "batches", i);
    }
  return FALSE;
}

static gboolean
find_fault_of_birds (const HcPlan *plan,
                     HcFault *fault)
{
  const HcPlanValues *values = hc_plan_get (plan);
  g_autoptr (GHashTable) pens = pens_of_all_variants (values);

  return find_fault_of_homes (values, pens, fault)
         || find_id_twice (values->batches, "batches", fault)
         || find_id_twice (values->clutches, "clutches", fault)
         || find_id_twice (values->results, "results", fault)
         || find_id_twice (values->chores, "chores", fault)
         || find_id_twice (values->prices, "prices", fault)
         || find_id_twice (values->stock, "stock", fault)
         || hc_season_find_fault (plan, pens, fault);
}

/**
 * hc_plan_find_fault: (skip)
 * @plan: a plan
 * @fault: (out caller-allocates): what is wrong, filled when something is;
 *   clear it with hc_fault_clear()
 *
 * Looks for what no plan may have: members out of bounds, ids that stand twice
 * or name nothing, pens without a floor, openings that are in no wall. Every
 * plan that is read, written or the outcome of an edit has none of it.
 *
 * An id stands once in a layout, whatever it names there, and once in each
 * other list of the plan.
 *
 * Returns: whether something is wrong
 */
gboolean
hc_plan_find_fault (const HcPlan *plan,
                    HcFault *fault)
{
  const HcPlanValues *values;

  g_return_val_if_fail (plan != NULL && fault != NULL, FALSE);
  values = hc_plan_get (plan);
  *fault = (HcFault){ HC_FAULT_NONE };
  if (!hc_id_is_valid (hc_plan_get_id (plan)))
    return hc_fault_set (fault, HC_FAULT_ID, "uid", hc_plan_get_id (plan), NULL);
  return hc_part_find_fault ((const HcPart *) plan, fault) || find_fault_of_rules (plan, fault)
         || find_fault_of_variants (values, fault) || find_fault_of_layouts (values, fault)
         || find_fault_of_birds (plan, fault);
}

/**
 * hc_plan_is_sound:
 * @plan: a plan
 * @error: where to put %HC_ERROR_EDIT
 *
 * Looks for what no plan may have: members out of bounds, ids that stand twice
 * or name nothing, pens without a floor, openings that are in no wall.
 *
 * Returns: whether nothing is wrong with @plan
 */
gboolean
hc_plan_is_sound (const HcPlan *plan,
                  GError **error)
{
  g_auto (HcFault) fault = { HC_FAULT_NONE };
  g_autofree char *sentence = NULL;

  if (!hc_plan_find_fault (plan, &fault))
    return TRUE;
  sentence = hc_fault_describe (&fault);
  g_set_error (error, HC_ERROR, HC_ERROR_EDIT, "%s: %s", fault.path, sentence);
  return FALSE;
}
