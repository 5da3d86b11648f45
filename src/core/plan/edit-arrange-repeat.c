/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * One fitting many times along a wall. */
#include "config.h"

#include "plan/edit-arrange.h"

#include "plan/edit-fitting.h"
#include "plan/edit-movable.h"
#include "plan/new-ids.h"
#include "plan/wall-corners.h"

#include <glib/gi18n-lib.h>

/* More are a slip of the hand. */
#define MOST_TIMES 200

static gboolean
may_repeat (HcPlan *plan, const char *wall, guint times, double spacing_mm, GError **error)
{
  if (hc_layout_get_wall (hc_plan_get_layout (plan), wall) == NULL)
    hc_edit_refuse (error, _("That wall is no longer in the plan. Choose another."));
  else if (times == 0 || times > MOST_TIMES)
    hc_edit_refuse (error, _("Type how many more there shall be, from 1 to %u."), MOST_TIMES);
  else if (spacing_mm == 0)
    hc_edit_refuse (error, _("They need a spacing. Type one, for instance 30 cm."));
  else
    return TRUE;
  return FALSE;
}

static HcPlan *
refuse_too_many (guint fit, GError **error)
{
  if (fit == 0)
    return hc_edit_refuse (error, _("There is no room for another at that spacing. Type a smaller "
                                    "one, or choose another wall."));
  return hc_edit_refuse (error, ngettext ("There is room for only %u more at that spacing. Type "
                                          "fewer, or a smaller spacing.",
                                          "There is room for only %u more at that spacing. Type "
                                          "fewer, or a smaller spacing.", fit), fit);
}

/**
 * hc_plan_repeat_along_wall:
 * @plan: a plan
 * @id: id of a fitting
 * @wall: id of the wall along which it is repeated
 * @times: how many more there shall be
 * @spacing_mm: from middle to middle; below 0 towards the wall's start
 * @new_ids: (array zero-terminated=1): ids for the new ones
 * @error: says why not, and how many there is room for
 *
 * All stay in the pen the first stands in.
 *
 * Returns: (transfer full): the changed plan, or %NULL and a %HC_ERROR_EDIT
 */
HcPlan *
hc_plan_repeat_along_wall (HcPlan *plan, const char *id, const char *wall, guint times,
                           double spacing_mm, const char *const *new_ids, GError **error)
{
  HcNewIds ids = { new_ids, 0 };
  HcLayout *layout = hc_plan_get_layout (plan);
  HcFitting *first = hc_edit_find_fitting (plan, id, error);
  g_autoptr (HcPlan) after = hc_plan_ref (plan);
  HcPoint step;
  HcPen *home;

  if (first == NULL || !may_repeat (plan, wall, times, spacing_mm, error))
    return NULL;
  hc_layout_get_fitting (layout, id, &home);
  step = hc_point_scale (hc_wall_get_way (layout, hc_layout_get_wall (layout, wall)), spacing_mm);
  for (guint i = 1; i <= times; i++)
    {
      const HcFittingValues *values = hc_fitting_get (first);
      HcPoint at
          = hc_point_add (hc_point (values->x_mm, values->y_mm), hc_point_scale (step, i));
      const char *new_id = hc_new_ids_take (&ids, plan, error);
      g_autoptr (HcPlan) before = g_steal_pointer (&after);

      if (new_id == NULL)
        return NULL;
      if (hc_layout_find_pen_at (layout, at) != home)
        return refuse_too_many (i - 1, error);
      after = hc_plan_duplicate_fittings (before, (const char *const[]){ id, NULL },
                                          (const char *const[]){ new_id, NULL },
                                          hc_point_scale (step, i), error);
      if (after == NULL)
        return NULL;
    }
  return g_steal_pointer (&after);
}
