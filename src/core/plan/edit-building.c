/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Buildings come with the first pen that is part of them and go with the last. */
#include "config.h"

#include "plan/edit-building.h"

#include "plan/edit-pen.h"
#include "plan/edit.h"

#include <glib/gi18n-lib.h>

/**
 * hc_plan_put_building:
 * @plan: a plan
 * @building: a building, new or in the place of the one with its id
 *
 * Returns: (transfer full): the changed plan, @plan when nothing changed
 */
HcPlan *
hc_plan_put_building (HcPlan *plan, HcBuilding *building)
{
  HcPlanValues values = *hc_plan_get (plan);
  g_autoptr (HcParts) buildings = hc_parts_with (values.buildings, building);

  values.buildings = buildings;
  return hc_plan_with (plan, &values);
}

static gboolean
has_pens_in (const HcLayout *layout, const char *building)
{
  HcParts *pens = hc_layout_get (layout)->pens;

  for (guint i = 0; i < pens->len; i++)
    if (g_strcmp0 (hc_pen_get (pens->pdata[i])->building, building) == 0)
      return TRUE;
  return FALSE;
}

static gboolean
has_pens (const HcPlan *plan, const char *building)
{
  HcParts *variants = hc_plan_get (plan)->variants;

  for (guint i = 0; i < variants->len; i++)
    if (has_pens_in (variants->pdata[i], building))
      return TRUE;
  return FALSE;
}

/**
 * hc_plan_remove_building:
 * @plan: a plan
 * @id: id of a building
 * @error: set when pens are still part of it
 *
 * Returns: (transfer full): the changed plan, or %NULL and a %HC_ERROR_EDIT
 */
HcPlan *
hc_plan_remove_building (HcPlan *plan, const char *id, GError **error)
{
  HcPlanValues values = *hc_plan_get (plan);
  g_autoptr (HcParts) buildings = NULL;

  if (has_pens (plan, id))
    return hc_edit_refuse (error, _("Pens are still part of this building. Remove them, or give "
                                      "them to another building first."));
  buildings = hc_parts_without (values.buildings, id);
  values.buildings = buildings;
  return hc_plan_with (plan, &values);
}

static HcPlan *
found_building (HcPlan *plan, const char *id)
{
  g_autoptr (HcBuilding) building = NULL;
  HcBuildingValues values;

  if (*id == '\0' || hc_parts_find (hc_plan_get (plan)->buildings, id) != NULL)
    return hc_plan_ref (plan);
  hc_building_values_init (&values);
  building = hc_building_new (id, &values);
  return hc_plan_put_building (plan, building);
}

/**
 * hc_plan_give_building:
 * @plan: a plan
 * @pen: id of a pen
 * @building: id of the building it is to be part of, a new one when the plan has
 *   none of that id; empty for none
 * @error: set when there is no such pen
 *
 * The building it was part of before goes when no other pen is part of it.
 *
 * Returns: (transfer full): the changed plan, or %NULL and a %HC_ERROR_EDIT
 */
HcPlan *
hc_plan_give_building (HcPlan *plan, const char *pen, const char *building, GError **error)
{
  g_autoptr (HcPlan) with = found_building (plan, building);
  HcPen *before = hc_layout_get_pen (hc_plan_get_layout (plan), pen);
  HcPenValues values;
  HcPlan *given;
  const char *left;

  if (before == NULL)
    return hc_edit_refuse (error, _("This pen is not in the plan any more."));
  values = *hc_pen_get (before);
  left = values.building;
  values.building = (char *) building;
  given = hc_plan_set_pen (with, pen, &values, error);
  if (given == NULL || left == NULL || *left == '\0' || has_pens (given, left))
    return given;
  g_clear_pointer (&with, hc_plan_unref);
  with = given;
  return hc_plan_remove_building (with, left, error);
}
