/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Moves corners, lets openings follow their walls, and houses fittings anew. */
#include "config.h"

#include "plan/move-corners.h"

#include "plan/edit-homes.h"
#include "plan/edit-sound.h"
#include "plan/openings-follow.h"
#include "plan/wall-corners.h"

#include <glib/gi18n-lib.h>

static gboolean
put_corner (HcPlan *plan, HcLayoutValues *values, const HcCornerMove *move, GError **error)
{
  HcCorner *corner = hc_parts_find (values->corners, move->corner);
  HcCornerValues place = { move->to.x_mm, move->to.y_mm };
  g_autoptr (HcCorner) moved = NULL;

  if (corner == NULL)
    {
      hc_edit_refuse (error, _("That corner is no longer in the plan. Choose another."));
      return FALSE;
    }
  if (!hc_edit_accepts (plan, &hc_corner_class, &place, error))
    return FALSE;
  moved = hc_corner_with (corner, &place);
  hc_edit_put (&values->corners, moved);
  return TRUE;
}

static gboolean
has_moved (const HcLayout *before, const HcLayout *after, const HcWall *wall)
{
  const HcWallValues *values = hc_wall_get (wall);

  return hc_layout_get_corner (before, values->from) != hc_layout_get_corner (after, values->from)
         || hc_layout_get_corner (before, values->to) != hc_layout_get_corner (after, values->to);
}

static HcLayout *
let_openings_follow (HcLayout *before, HcLayout *after, GError **error)
{
  HcParts *walls = hc_layout_get (after)->walls;
  g_autoptr (HcLayout) layout = hc_layout_ref (after);

  for (guint i = 0; i < walls->len; i++)
    if (has_moved (before, after, walls->pdata[i]))
      {
        g_autoptr (HcLayout) last = g_steal_pointer (&layout);

        layout = hc_openings_follow_wall (before, last, hc_wall_get_id (walls->pdata[i]), error);
        if (layout == NULL)
          return NULL;
      }
  return g_steal_pointer (&layout);
}

/**
 * hc_edit_move_corners: (skip)
 * @plan: a plan
 * @moves: (array length=n_moves): corners and where they go
 * @n_moves: how many
 * @error: says why not
 *
 * Returns: (transfer full): the changed plan, @plan when nothing changed, or
 *   %NULL and a %HC_ERROR_EDIT
 */
HcPlan *
hc_edit_move_corners (HcPlan *plan, const HcCornerMove *moves, guint n_moves, GError **error)
{
  HcLayout *before = hc_plan_get_layout (plan);
  g_auto (HcLayoutValues) values = hc_edit_hold_layout (before);
  g_autoptr (HcLayout) moved = NULL;
  g_autoptr (HcLayout) followed = NULL;
  g_autoptr (HcPlan) after = NULL;

  for (guint i = 0; i < n_moves; i++)
    if (!put_corner (plan, &values, &moves[i], error))
      return NULL;
  moved = hc_layout_with (before, &values);
  if (moved == before)
    return hc_plan_ref (plan);
  followed = let_openings_follow (before, moved, error);
  if (followed == NULL)
    return NULL;
  after = hc_plan_with_layout (plan, followed);
  return hc_edit_if_sound (plan, hc_edit_rehouse_all (after), error);
}
