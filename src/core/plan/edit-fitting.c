/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Fittings added, moved, turned, changed, copied and taken away. */
#include "config.h"

#include "plan/edit-fitting.h"

#include "plan/edit-homes.h"
#include "plan/edit-movable.h"

#include <glib/gi18n-lib.h>

/**
 * hc_plan_add_fitting:
 * @plan: a plan
 * @fitting: a fitting with an id that nothing in the plan has
 * @error: says why it cannot be added
 *
 * It goes into the pen its middle stands in, or stands loose.
 *
 * Returns: (transfer full): the plan with it, or %NULL and a
 *   %HC_ERROR_EDIT
 */
HcPlan *
hc_plan_add_fitting (HcPlan *plan, HcFitting *fitting, GError **error)
{
  g_autoptr (GPtrArray) one = g_ptr_array_new ();

  if (!hc_edit_id_is_free (plan, hc_fitting_get_id (fitting), error)
      || !hc_edit_accepts (plan, &hc_fitting_class, hc_fitting_get (fitting), error))
    return NULL;
  g_ptr_array_add (one, fitting);
  return hc_edit_house_all (plan, one);
}

/**
 * hc_plan_set_fitting:
 * @plan: a plan
 * @id: id of a fitting
 * @values: what it shall be; moved into another pen, it belongs there
 * @error: says why it cannot be so
 *
 * Returns: (transfer full): the changed plan, @plan when nothing changed, or
 *   %NULL and a %HC_ERROR_EDIT
 */
HcPlan *
hc_plan_set_fitting (HcPlan *plan, const char *id, const HcFittingValues *values, GError **error)
{
  HcFitting *before = hc_edit_find_fitting (plan, id, error);
  g_autoptr (HcFitting) after = NULL;
  g_autoptr (GPtrArray) one = g_ptr_array_new ();

  if (before == NULL || !hc_edit_accepts (plan, &hc_fitting_class, values, error))
    return NULL;
  after = hc_fitting_with (before, values);
  if (after == before)
    return hc_plan_ref (plan);
  g_ptr_array_add (one, after);
  return hc_edit_house_all (plan, one);
}

/**
 * hc_plan_rename_fitting:
 * @plan: a plan
 * @id: id of a fitting
 * @name: what the keeper calls it
 * @error: says why not
 *
 * Returns: (transfer full): the changed plan, or %NULL and a %HC_ERROR_EDIT
 */
HcPlan *
hc_plan_rename_fitting (HcPlan *plan, const char *id, const char *name, GError **error)
{
  HcFitting *fitting = hc_edit_find_fitting (plan, id, error);
  HcFittingValues values;

  if (fitting == NULL)
    return NULL;
  values = *hc_fitting_get (fitting);
  values.name = (char *) name;
  return hc_plan_set_fitting (plan, id, &values, error);
}

/**
 * hc_plan_resize_fitting:
 * @plan: a plan
 * @id: id of a fitting
 * @width_mm: its new width along its own x
 * @depth_mm: its new depth along its own y
 * @error: says why not
 *
 * Its middle stays where it is. A thing bought from a maker keeps its size.
 *
 * Returns: (transfer full): the changed plan, or %NULL and a %HC_ERROR_EDIT
 */
HcPlan *
hc_plan_resize_fitting (HcPlan *plan, const char *id, double width_mm, double depth_mm,
                        GError **error)
{
  HcFitting *fitting = hc_edit_find_fitting (plan, id, error);
  HcFittingValues values;

  if (fitting == NULL)
    return NULL;
  values = *hc_fitting_get (fitting);
  if (values.device != NULL && values.device[0] != '\0')
    return hc_edit_refuse (error, _("Bought ones come in the maker's sizes. Choose another model "
                                    "to change its size."));
  values.width_mm = width_mm;
  values.depth_mm = depth_mm;
  return hc_plan_set_fitting (plan, id, &values, error);
}

/* Moves all by @by after turning them by @turn_deg about their common middle. */
static GPtrArray *
turned_and_moved (HcPlan *plan, GPtrArray *fittings, double turn_deg, HcPoint by, GError **error)
{
  g_autoptr (GPtrArray) after = g_ptr_array_new_with_free_func (hc_part_unref);
  HcPoint middle = hc_fittings_get_middle (fittings);

  for (guint i = 0; i < fittings->len; i++)
    {
      const HcFittingValues *values = hc_fitting_get (fittings->pdata[i]);
      HcPoint at = hc_point_turn_about ((HcPoint){ values->x_mm, values->y_mm }, middle, turn_deg);
      HcFitting *one = hc_edit_placed (fittings->pdata[i], hc_point_add (at, by),
                              hc_turn_within_circle (values->turn_deg + turn_deg), plan, error);

      if (one == NULL)
        return NULL;
      g_ptr_array_add (after, one);
    }
  return g_steal_pointer (&after);
}

static HcPlan *
turn_and_move (HcPlan *plan, const char *const *ids, double turn_deg, HcPoint by, GError **error)
{
  g_autoptr (GPtrArray) fittings = g_ptr_array_new ();
  g_autoptr (GPtrArray) after = NULL;

  if (!hc_edit_find_movable (plan, ids, fittings, error))
    return NULL;
  after = turned_and_moved (plan, fittings, turn_deg, by, error);
  return after != NULL ? hc_edit_house_all (plan, after) : NULL;
}

/**
 * hc_plan_move_fittings:
 * @plan: a plan
 * @ids: (array zero-terminated=1): ids of fittings
 * @by: how far they move
 * @error: says why not: one of them is locked, for instance
 *
 * What crosses into another pen belongs there afterwards.
 *
 * Returns: (transfer full): the changed plan, or %NULL and a %HC_ERROR_EDIT
 */
HcPlan *
hc_plan_move_fittings (HcPlan *plan, const char *const *ids, HcPoint by, GError **error)
{
  return turn_and_move (plan, ids, 0, by, error);
}

/**
 * hc_plan_raise_fittings:
 * @plan: a plan
 * @ids: (array zero-terminated=1): ids of fittings
 * @by_mm: how much higher their undersides come to be; negative to lower them
 * @error: says why not: one of them is locked, for instance
 *
 * None comes to be below the floor.
 *
 * Returns: (transfer full): the changed plan, @plan when nothing changed, or
 *   %NULL and a %HC_ERROR_EDIT
 */
HcPlan *
hc_plan_raise_fittings (HcPlan *plan, const char *const *ids, double by_mm, GError **error)
{
  g_autoptr (GPtrArray) fittings = g_ptr_array_new ();
  g_autoptr (GPtrArray) after = g_ptr_array_new_with_free_func (hc_part_unref);
  gboolean changed = FALSE;

  if (!hc_edit_find_movable (plan, ids, fittings, error))
    return NULL;
  for (guint i = 0; i < fittings->len; i++)
    {
      HcFittingValues values = *hc_fitting_get (fittings->pdata[i]);
      HcFitting *raised;

      values.base_mm = MAX (values.base_mm + by_mm, 0);
      if (!hc_edit_accepts (plan, &hc_fitting_class, &values, error))
        return NULL;
      raised = hc_fitting_with (fittings->pdata[i], &values);
      changed = changed || raised != fittings->pdata[i];
      g_ptr_array_add (after, raised);
    }
  return changed ? hc_edit_house_all (plan, after) : hc_plan_ref (plan);
}

/**
 * hc_plan_turn_fittings:
 * @plan: a plan
 * @ids: (array zero-terminated=1): ids of fittings
 * @by_deg: how far they turn, clockwise on screen
 * @error: says why not
 *
 * One fitting turns about its middle, several about their common middle.
 *
 * Returns: (transfer full): the changed plan, or %NULL and a %HC_ERROR_EDIT
 */
HcPlan *
hc_plan_turn_fittings (HcPlan *plan, const char *const *ids, double by_deg, GError **error)
{
  return turn_and_move (plan, ids, by_deg, (HcPoint){ 0, 0 }, error);
}

/**
 * hc_plan_remove_fittings:
 * @plan: a plan
 * @ids: (array zero-terminated=1): ids of fittings
 * @error: says why not
 *
 * Returns: (transfer full): the changed plan, or %NULL and a %HC_ERROR_EDIT
 */
HcPlan *
hc_plan_remove_fittings (HcPlan *plan, const char *const *ids, GError **error)
{
  g_auto (HcLayoutValues) values = hc_edit_hold_layout (hc_plan_get_layout (plan));

  for (guint i = 0; ids[i] != NULL; i++)
    {
      if (hc_edit_find_fitting (plan, ids[i], error) == NULL)
        return NULL;
      hc_edit_take_fitting (&values, ids[i]);
    }
  return hc_edit_with_layout (plan, &values);
}

static HcFitting *
copy_of (HcPlan *plan, const char *id, const char *new_id, HcPoint by, GError **error)
{
  HcFitting *original = hc_edit_find_fitting (plan, id, error);
  g_autoptr (HcFitting) copy = NULL;
  HcFittingValues values;

  if (original == NULL || !hc_edit_id_is_free (plan, new_id, error))
    return NULL;
  values = *hc_fitting_get (original);
  values.x_mm += by.x_mm;
  values.y_mm += by.y_mm;
  values.locked = FALSE;
  if (!hc_edit_accepts (plan, &hc_fitting_class, &values, error))
    return NULL;
  copy = hc_fitting_with (original, &values);
  return hc_part_with_id (copy, new_id);
}

/**
 * hc_plan_duplicate_fittings:
 * @plan: a plan
 * @ids: (array zero-terminated=1): ids of fittings
 * @new_ids: (array zero-terminated=1): as many ids that nothing has
 * @by: where the copies stand, from the originals
 * @error: says why not
 *
 * Returns: (transfer full): the plan with the copies, or %NULL and a
 *   %HC_ERROR_EDIT
 */
HcPlan *
hc_plan_duplicate_fittings (HcPlan *plan, const char *const *ids, const char *const *new_ids,
                            HcPoint by, GError **error)
{
  g_autoptr (GPtrArray) copies = g_ptr_array_new_with_free_func (hc_part_unref);

  g_return_val_if_fail (g_strv_length ((char **) ids) == g_strv_length ((char **) new_ids), NULL);
  for (guint i = 0; ids[i] != NULL; i++)
    {
      HcFitting *copy = copy_of (plan, ids[i], new_ids[i], by, error);

      if (copy == NULL)
        return NULL;
      g_ptr_array_add (copies, copy);
    }
  return hc_edit_house_all (plan, copies);
}
