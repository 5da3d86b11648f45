/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Which fittings may be moved, and where they live then. */
#include "config.h"

#include "plan/edit-movable.h"

#include "plan/edit-homes.h"

#include <glib/gi18n-lib.h>
#include <math.h>

HcFitting *
hc_edit_find_fitting (HcPlan *plan, const char *id, GError **error)
{
  HcFitting *found = hc_layout_get_fitting (hc_plan_get_layout (plan), id, NULL);

  if (found == NULL)
    hc_edit_refuse (error, _("That thing is no longer in the plan. Choose another."));
  return found;
}

/**
 * hc_edit_find_movable: (skip)
 * @plan: a plan
 * @ids: (array zero-terminated=1): ids of fittings
 * @found: (element-type HcFitting): filled with them
 * @error: says which of them cannot be moved
 *
 * Returns: whether all of them may be moved
 */
gboolean
hc_edit_find_movable (HcPlan *plan, const char *const *ids, GPtrArray *found, GError **error)
{
  for (guint i = 0; ids[i] != NULL; i++)
    {
      HcFitting *fitting = hc_edit_find_fitting (plan, ids[i], error);

      if (fitting == NULL)
        return FALSE;
      if (hc_fitting_get (fitting)->locked)
        {
          hc_edit_refuse (error, _("It is locked in its place. Unlock it to move it."));
          return FALSE;
        }
      g_ptr_array_add (found, fitting);
    }
  return TRUE;
}

double
hc_turn_within_circle (double turn_deg)
{
  double turned = fmod (turn_deg, 360);

  return turned < 0 ? turned + 360 : turned;
}

/**
 * hc_edit_house_all: (skip)
 * @plan: a plan
 * @fittings: (element-type HcFitting): fittings, new or changed
 *
 * Returns: (transfer full): the plan with each where it stands
 */
HcPlan *
hc_edit_house_all (HcPlan *plan, GPtrArray *fittings)
{
  HcLayout *layout = hc_plan_get_layout (plan);
  g_auto (HcLayoutValues) values = hc_edit_hold_layout (layout);

  for (guint i = 0; i < fittings->len; i++)
    hc_edit_house_fitting (layout, &values, fittings->pdata[i]);
  return hc_edit_with_layout (plan, &values);
}

HcFitting *
hc_edit_placed (HcFitting *fitting, HcPoint to, double turn_deg, HcPlan *plan, GError **error)
{
  HcFittingValues values = *hc_fitting_get (fitting);

  values.x_mm = to.x_mm;
  values.y_mm = to.y_mm;
  values.turn_deg = turn_deg;
  if (!hc_edit_accepts (plan, &hc_fitting_class, &values, error))
    return NULL;
  return hc_fitting_with (fitting, &values);
}

HcPoint
hc_fittings_get_middle (GPtrArray *fittings)
{
  HcPoint sum = { 0, 0 };

  for (guint i = 0; i < fittings->len; i++)
    {
      const HcFittingValues *values = hc_fitting_get (fittings->pdata[i]);

      sum = hc_point_add (sum, (HcPoint){ values->x_mm, values->y_mm });
    }
  return hc_point_scale (sum, 1.0 / MAX (fittings->len, 1));
}

HcBox
hc_fitting_get_box (const HcFitting *fitting)
{
  const HcFittingValues *values = hc_fitting_get (fitting);
  double x = values->width_mm / 2;
  double y = values->form == HC_FORM_ROUND ? x : values->depth_mm / 2;
  HcPoint corners[] = { { -x, -y }, { x, -y }, { x, y }, { -x, y } };

  for (guint i = 0; i < G_N_ELEMENTS (corners); i++)
    corners[i] = hc_point_add (hc_point (values->x_mm, values->y_mm),
                               hc_point_turn (corners[i], values->turn_deg));
  return hc_box_around (corners, G_N_ELEMENTS (corners));
}
