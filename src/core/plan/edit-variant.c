/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Variants added, chosen, named and taken away. */
#include "config.h"

#include "plan/edit-variant.h"

#include "plan/edit.h"

#include <glib/gi18n-lib.h>

static HcLayout *
find (HcPlan *plan, const char *variant, GError **error)
{
  HcLayout *found = hc_parts_find (hc_plan_get (plan)->variants, variant);

  if (found == NULL)
    hc_edit_refuse (error, _("That variant is no longer in the plan. Choose another."));
  return found;
}

static HcLayout *
named (HcLayout *layout, const char *name)
{
  HcLayoutValues values = *hc_layout_get (layout);

  values.name = (char *) name;
  return hc_layout_with (layout, &values);
}

static HcPlan *
with_variants (HcPlan *plan, HcParts *variants, const char *chosen)
{
  HcPlanValues values = *hc_plan_get (plan);

  values.variants = variants;
  values.variant = (char *) chosen;
  return hc_plan_with (plan, &values);
}

/**
 * hc_plan_add_variant:
 * @plan: a plan
 * @new_id: an id that nothing in the plan has
 * @name: what the keeper calls it
 * @error: says why not
 *
 * The new variant begins as a copy of the layout being worked on, and is the
 * one worked on then.
 *
 * Returns: (transfer full): the changed plan, or %NULL and a %HC_ERROR_EDIT
 */
HcPlan *
hc_plan_add_variant (HcPlan *plan, const char *new_id, const char *name, GError **error)
{
  g_autoptr (HcLayout) renamed = NULL;
  g_autoptr (HcLayout) copy = NULL;
  g_autoptr (HcParts) variants = NULL;

  if (!hc_edit_id_is_free (plan, new_id, error))
    return NULL;
  renamed = named (hc_plan_get_layout (plan), name);
  copy = hc_part_with_id (renamed, new_id);
  variants = hc_parts_with (hc_plan_get (plan)->variants, copy);
  return with_variants (plan, variants, new_id);
}

/**
 * hc_plan_choose_variant:
 * @plan: a plan
 * @variant: id of the variant to work on
 * @error: says why not
 *
 * Returns: (transfer full): the changed plan, @plan when nothing changed, or
 *   %NULL and a %HC_ERROR_EDIT
 */
HcPlan *
hc_plan_choose_variant (HcPlan *plan, const char *variant, GError **error)
{
  if (find (plan, variant, error) == NULL)
    return NULL;
  return with_variants (plan, hc_plan_get (plan)->variants, variant);
}

/**
 * hc_plan_rename_variant:
 * @plan: a plan
 * @variant: id of a variant
 * @name: what the keeper calls it
 * @error: says why not
 *
 * Returns: (transfer full): the changed plan, @plan when nothing changed, or
 *   %NULL and a %HC_ERROR_EDIT
 */
HcPlan *
hc_plan_rename_variant (HcPlan *plan, const char *variant, const char *name, GError **error)
{
  HcLayout *layout = find (plan, variant, error);
  g_autoptr (HcLayout) renamed = layout != NULL ? named (layout, name) : NULL;
  g_autoptr (HcParts) variants = NULL;

  if (renamed == NULL)
    return NULL;
  variants = hc_parts_with (hc_plan_get (plan)->variants, renamed);
  return with_variants (plan, variants, hc_plan_get (plan)->variant);
}

/**
 * hc_plan_remove_variant:
 * @plan: a plan
 * @variant: id of a variant
 * @error: says why not
 *
 * When it was the one worked on, the first of the others is then.
 *
 * Returns: (transfer full): the changed plan, or %NULL and a %HC_ERROR_EDIT
 */
HcPlan *
hc_plan_remove_variant (HcPlan *plan, const char *variant, GError **error)
{
  g_autoptr (HcParts) variants = NULL;
  const char *chosen = hc_layout_get_id (hc_plan_get_layout (plan));

  if (find (plan, variant, error) == NULL)
    return NULL;
  if (hc_plan_get (plan)->variants->len < 2)
    return hc_edit_refuse (error, _("A plan needs one layout at least. Add another variant "
                                    "first."));
  variants = hc_parts_without (hc_plan_get (plan)->variants, variant);
  if (g_str_equal (chosen, variant))
    chosen = hc_layout_get_id (variants->pdata[0]);
  return with_variants (plan, variants, chosen);
}
