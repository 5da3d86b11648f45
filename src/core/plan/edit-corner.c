/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Corners put into walls, moved, and taken out again. */
#include "config.h"

#include "plan/edit-corner.h"

#include "plan/edit-homes.h"
#include "plan/edit-sound.h"
#include "plan/move-corners.h"
#include "plan/split-wall.h"
#include "plan/wall-places.h"

#include <glib/gi18n-lib.h>

/**
 * hc_plan_insert_corner:
 * @plan: a plan
 * @wall: id of a wall
 * @along_mm: where, from the wall's start
 * @new_corner: an id for the corner
 * @new_wall: an id for the half of the wall behind it
 * @error: says why not
 *
 * The wall becomes two in one line, ready to be pulled into an L. An inserted
 * corner breaks no opening: one that stood across it moves aside.
 *
 * Returns: (transfer full): the changed plan, or %NULL and a %HC_ERROR_EDIT
 */
HcPlan *
hc_plan_insert_corner (HcPlan *plan, const char *wall, double along_mm, const char *new_corner,
                       const char *new_wall, GError **error)
{
  HcLayout *layout = hc_plan_get_layout (plan);
  HcPoint at = hc_layout_get_place_in_wall (layout, wall, along_mm);
  g_autoptr (HcLayout) split = NULL;

  if (!hc_edit_id_is_free (plan, new_corner, error) || !hc_edit_id_is_free (plan, new_wall, error))
    return NULL;
  split = hc_layout_split_wall (layout, wall, at, new_corner, new_wall, error);
  return split != NULL ? hc_plan_with_layout (plan, split) : NULL;
}

/**
 * hc_plan_move_corner:
 * @plan: a plan
 * @corner: id of a corner
 * @to: where it goes
 * @error: says why not: walls would cross, for instance
 *
 * The walls that meet there follow, and their openings with them.
 *
 * Returns: (transfer full): the changed plan, @plan when nothing changed, or
 *   %NULL and a %HC_ERROR_EDIT
 */
HcPlan *
hc_plan_move_corner (HcPlan *plan, const char *corner, HcPoint to, GError **error)
{
  HcCornerMove move = { corner, to };

  return hc_edit_move_corners (plan, &move, 1, error);
}

/**
 * hc_plan_remove_corner:
 * @plan: a plan
 * @corner: id of a corner where two walls meet
 * @error: says why not
 *
 * Returns: (transfer full): the plan with one straight wall in their place, or
 *   %NULL and a %HC_ERROR_EDIT
 */
HcPlan *
hc_plan_remove_corner (HcPlan *plan, const char *corner, GError **error)
{
  HcLayout *layout = hc_plan_get_layout (plan);
  g_autoptr (HcLayout) joined = NULL;
  g_autoptr (HcPlan) after = NULL;

  if (hc_layout_get_corner (layout, corner) == NULL)
    return hc_edit_refuse (error, _("That corner is no longer in the plan. Choose another."));
  joined = hc_layout_join_walls_at (layout, corner, error);
  if (joined == NULL)
    return NULL;
  after = hc_plan_with_layout (plan, joined);
  return hc_edit_if_sound (plan, hc_edit_rehouse_all (after), error);
}

static HcLayout *
without_first_plain_corner (HcLayout *layout)
{
  HcParts *corners = hc_layout_get (layout)->corners;

  for (guint i = 0; i < corners->len; i++)
    {
      const char *id = hc_corner_get_id (corners->pdata[i]);
      HcLayout *joined = hc_layout_is_plain_corner (layout, id)
                             ? hc_layout_join_walls_at (layout, id, NULL)
                             : NULL;

      if (joined != NULL)
        return joined;
    }
  return NULL;
}

/**
 * hc_plan_merge_plain_corners:
 * @plan: a plan
 *
 * Returns: (transfer full): the plan without corners that only cut a straight
 *   wall in two, @plan when it has none
 */
HcPlan *
hc_plan_merge_plain_corners (HcPlan *plan)
{
  g_autoptr (HcLayout) layout = hc_layout_ref (hc_plan_get_layout (plan));
  HcLayout *fewer;

  while ((fewer = without_first_plain_corner (layout)) != NULL)
    {
      hc_layout_unref (layout);
      layout = fewer;
    }
  return hc_plan_with_layout (plan, layout);
}
