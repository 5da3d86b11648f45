/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A survey becomes a pen, or the shape of one. */
#include "config.h"

#include "survey/survey.h"

#include "plan/edit-pen.h"
#include "plan/move-corners.h"

#include <glib/gi18n-lib.h>

/**
 * hc_survey_add_pen:
 * @self: a survey
 * @plan: a plan
 * @values: what the pen is
 * @walls: what its walls are
 * @new_ids: (array zero-terminated=1): ids from hc_pen_ids_new()
 * @error: says why not
 *
 * Returns: (transfer full): the plan with the pen as measured, or %NULL and a
 *   %HC_ERROR_EDIT
 */
HcPlan *
hc_survey_add_pen (const HcSurvey *self, HcPlan *plan, const HcPenValues *values,
                   const HcWallValues *walls, const char *const *new_ids, GError **error)
{
  return hc_plan_add_pen_outline (plan, values, walls, self->corners, self->n_corners, new_ids,
                                  error);
}

/**
 * hc_survey_reshape_pen:
 * @self: a survey with a corner for each of the pen's, in the order of its walls
 * @plan: a plan
 * @pen: id of a pen
 * @error: says why not
 *
 * Pens beside it follow; openings and what stands in it stay.
 *
 * Returns: (transfer full): the changed plan, @plan when nothing changed, or
 *   %NULL and a %HC_ERROR_EDIT
 */
HcPlan *
hc_survey_reshape_pen (const HcSurvey *self, HcPlan *plan, const char *pen, GError **error)
{
  HcLayout *layout = hc_plan_get_layout (plan);
  HcPen *found = hc_layout_get_pen (layout, pen);
  g_autofree HcCornerMove *moves = g_new (HcCornerMove, self->n_corners);
  char **walls;

  if (found == NULL || g_strv_length (hc_pen_get (found)->walls) != self->n_corners)
    return hc_edit_refuse (error, _("The pen has other corners than were measured. Draw the "
                                    "survey as a pen of its own."));
  walls = hc_pen_get (found)->walls;
  for (guint i = 0; i < self->n_corners; i++)
    {
      const char *before = walls[(i + self->n_corners - 1) % self->n_corners];

      moves[i].corner = hc_layout_get_shared_corner (hc_layout_get_wall (layout, before),
                                                     hc_layout_get_wall (layout, walls[i]));
      moves[i].to = self->corners[i];
    }
  return hc_edit_move_corners (plan, moves, self->n_corners, error);
}
