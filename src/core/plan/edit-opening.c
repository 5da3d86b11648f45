/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Openings put into walls, slid along them, changed and taken away. */
#include "config.h"

#include "plan/edit-opening.h"

#include "plan/bounds.h"
#include "plan/edit.h"
#include "plan/wall-places.h"

#include <glib/gi18n-lib.h>

static HcOpening *
find (HcPlan *plan, const char *id, GError **error)
{
  HcOpening *found = hc_layout_get_opening (hc_plan_get_layout (plan), id);

  if (found == NULL)
    hc_edit_refuse (error, _("That opening is no longer in the plan. Choose another."));
  return found;
}

static HcPlan *
put (HcPlan *plan, HcOpening *opening)
{
  g_auto (HcLayoutValues) values = hc_edit_hold_layout (hc_plan_get_layout (plan));

  hc_edit_put (&values.openings, opening);
  return hc_edit_with_layout (plan, &values);
}

/* Moves @values to the nearest free place of their wall. */
static gboolean
settle (HcPlan *plan, const char *id, HcOpeningValues *values, GError **error)
{
  HcLayout *layout = hc_plan_get_layout (plan);

  values->along_mm = CLAMP (values->along_mm, 0, HC_FARTHEST_MM);
  if (!hc_edit_accepts (plan, &hc_opening_class, values, error))
    return FALSE;
  if (hc_layout_get_wall (layout, values->wall) == NULL)
    hc_edit_refuse (error, _("That wall is no longer in the plan. Choose another."));
  else if (!hc_layout_find_place_in_wall (layout, id, values, &values->along_mm))
    hc_edit_refuse (error, _("There is no room for it in that wall. Make it narrower, or choose "
                             "another wall."));
  else
    return TRUE;
  return FALSE;
}

/**
 * hc_plan_add_opening:
 * @plan: a plan
 * @opening: an opening with an id that nothing in the plan has
 * @error: says why it cannot be added
 *
 * Where its place is taken it goes to the nearest free one in the same wall.
 *
 * Returns: (transfer full): the plan with it, or %NULL and a
 *   %HC_ERROR_EDIT
 */
HcPlan *
hc_plan_add_opening (HcPlan *plan, HcOpening *opening, GError **error)
{
  const char *id = hc_opening_get_id (opening);
  HcOpeningValues values = *hc_opening_get (opening);
  g_autoptr (HcOpening) settled = NULL;

  if (!hc_edit_id_is_free (plan, id, error) || !settle (plan, id, &values, error))
    return NULL;
  settled = hc_opening_with (opening, &values);
  return put (plan, settled);
}

/**
 * hc_plan_set_opening:
 * @plan: a plan
 * @id: id of an opening
 * @values: what it shall be
 * @error: says why it cannot be so
 *
 * It stays inside its wall and beside the others: where it does not fit it
 * goes to the nearest free place.
 *
 * Returns: (transfer full): the changed plan, @plan when nothing changed, or
 *   %NULL and a %HC_ERROR_EDIT
 */
HcPlan *
hc_plan_set_opening (HcPlan *plan, const char *id, const HcOpeningValues *values, GError **error)
{
  HcOpening *before = find (plan, id, error);
  HcOpeningValues settled = *values;
  g_autoptr (HcOpening) after = NULL;

  if (before == NULL || !settle (plan, id, &settled, error))
    return NULL;
  after = hc_opening_with (before, &settled);
  return put (plan, after);
}

/**
 * hc_plan_slide_opening:
 * @plan: a plan
 * @id: id of an opening
 * @wall: id of the wall it shall be in
 * @along_mm: where, from the wall's start
 * @error: says why not
 *
 * Returns: (transfer full): the changed plan, or %NULL and a %HC_ERROR_EDIT
 */
HcPlan *
hc_plan_slide_opening (HcPlan *plan, const char *id, const char *wall, double along_mm,
                       GError **error)
{
  HcOpening *opening = find (plan, id, error);
  HcOpeningValues values;

  if (opening == NULL)
    return NULL;
  values = *hc_opening_get (opening);
  values.wall = (char *) wall;
  values.along_mm = along_mm;
  return hc_plan_set_opening (plan, id, &values, error);
}

/**
 * hc_plan_remove_openings:
 * @plan: a plan
 * @ids: (array zero-terminated=1): ids of openings
 * @error: says why not
 *
 * Returns: (transfer full): the changed plan, or %NULL and a %HC_ERROR_EDIT
 */
HcPlan *
hc_plan_remove_openings (HcPlan *plan, const char *const *ids, GError **error)
{
  g_auto (HcLayoutValues) values = hc_edit_hold_layout (hc_plan_get_layout (plan));

  for (guint i = 0; ids[i] != NULL; i++)
    {
      if (find (plan, ids[i], error) == NULL)
        return NULL;
      hc_edit_drop (&values.openings, ids[i]);
    }
  return hc_edit_with_layout (plan, &values);
}
