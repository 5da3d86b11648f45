/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What each drag in the side view makes of the plan it began with. */
#include "config.h"

#include "app/side/side-private.h"

#include "flock/own-standard.h"
#include "plan/edit-fitting.h"
#include "plan/edit-opening.h"
#include "plan/edit-pen.h"
#include "supply/rule-distances.h"

#include <glib/gi18n.h>
#include <math.h>

#define EVEN_MM 50.0
#define ROUND_MM 10.0
#define LEAST_HIGH_MM 20.0

/* An opening seen more from its edge than this is not slid. */
#define SEEN_EDGE_ON 0.3

typedef enum
{
  HC_DRAG_RAISE = HC_DRAG_OWN,
  HC_DRAG_OPENING,
  HC_DRAG_EDGE,
  HC_DRAG_BEDDING,
} HcSideDragKind;

/**
 * hc_side_begin_drag: (skip)
 * @canvas: the side view
 * @drag: a drag that begins
 * @item: on what
 */
void
hc_side_begin_drag (HcCanvas *canvas, HcDrag *drag, HcCanvasItem *item)
{
  HcSide *self = HC_SIDE (canvas);

  g_clear_pointer (&self->start, hc_house_unref);
  self->start = hc_house_ref (self->scene->house);
  switch (hc_canvas_item_get_kind (item))
    {
    case HC_ITEM_FITTING:
      drag->kind = HC_DRAG_RAISE;
      break;
    case HC_ITEM_OPENING:
      drag->kind = HC_DRAG_OPENING;
      break;
    case HC_ITEM_BEDDING:
      drag->kind = HC_DRAG_BEDDING;
      break;
    default:
      drag->kind = HC_DRAG_EDGE;
    }
}

static double
rounded (const HcDrag *drag, double mm)
{
  double step_mm = drag->even ? EVEN_MM : drag->free ? 1 : ROUND_MM;

  return round (mm / step_mm) * step_mm;
}

static double
nest_below_mm (HcSide *self, HcPlan *plan)
{
  g_autoptr (HcStandard) standard
      = hc_plan_get_own_standard (plan, hc_panel_get_book (HC_PANEL (self)));

  return hc_standard_get_nest_below_mm (standard, HC_LEVEL_GOOD);
}

/* How high an underside comes to be that was @base_mm: caught, or in round steps. */
static double
raised_to (HcSide *self, const HcDrag *drag, double base_mm)
{
  double wanted_mm = MAX (base_mm - hc_drag_get_way (drag).y_mm, 0);

  self->is_caught = !drag->free && !drag->even
                    && hc_house_catch_height (self->start, drag->id, wanted_mm,
                                              hc_drag_get_reach_mm (drag),
                                              nest_below_mm (self, drag->start), &self->caught);
  return self->is_caught ? self->caught.base_mm : rounded (drag, wanted_mm);
}

/* A thing that is raised keeps its place along the cut until it is pulled away. */
static double
moved_along_mm (const HcDrag *drag)
{
  double way_mm = hc_drag_get_way (drag).x_mm;

  return fabs (way_mm) <= hc_drag_get_reach_mm (drag) ? 0 : rounded (drag, way_mm);
}

static HcPlan *
raise_fittings (HcSide *self, HcDrag *drag, GError **error)
{
  const char *const *ids = (const char *const *) drag->ids;
  HcFitting *fitting
      = hc_layout_get_fitting (hc_plan_get_layout (drag->start), drag->id, NULL);
  double base_mm = hc_fitting_get (fitting)->base_mm, along_mm = moved_along_mm (drag);
  double by_mm = hc_side_has_measure (self, fitting, "base_mm")
                     ? raised_to (self, drag, base_mm) - base_mm
                     : 0;
  g_autoptr (HcPlan) raised = hc_plan_raise_fittings (drag->start, ids, by_mm, error);

  if (raised == NULL || along_mm == 0)
    return g_steal_pointer (&raised);
  return hc_plan_move_fittings (raised, ids,
                                hc_point_scale (self->scene->cut.along, along_mm), error);
}

/* Along its wall by as much as the hand goes along the cut. */
static HcPlan *
slide (HcSide *self, const HcDrag *drag, HcPlan *plan, GError **error)
{
  HcLayout *layout = hc_plan_get_layout (plan);
  const HcOpeningValues *values = hc_opening_get (hc_layout_get_opening (layout, drag->id));
  double way_mm = moved_along_mm (drag), seen;
  HcPoint from, to;

  if (!hc_layout_get_wall_line (layout, hc_layout_get_wall (layout, values->wall), &from, &to))
    return hc_plan_ref (plan);
  seen = hc_point_dot (hc_point_unit (hc_point_subtract (to, from)), self->scene->cut.along);
  if (way_mm == 0 || fabs (seen) < SEEN_EDGE_ON)
    return hc_plan_ref (plan);
  return hc_plan_slide_opening (plan, drag->id, values->wall, values->along_mm + way_mm / seen,
                                error);
}

static HcPlan *
move_opening (HcSide *self, HcDrag *drag, GError **error)
{
  HcOpening *opening = hc_layout_get_opening (hc_plan_get_layout (drag->start), drag->id);
  HcOpeningValues values = *hc_opening_get (opening);
  g_autoptr (HcPlan) raised = NULL;

  values.sill_mm = raised_to (self, drag, values.sill_mm);
  raised = hc_plan_set_opening (drag->start, drag->id, &values, error);
  return raised != NULL ? slide (self, drag, raised, error) : NULL;
}

static double
stretched (const HcDrag *drag, double high_mm, double by_mm)
{
  return MAX (rounded (drag, high_mm + by_mm), LEAST_HIGH_MM);
}

/* The top moves and the sill stays, or the sill moves and the top stays. */
static HcPlan *
stretch_opening (HcSide *self, HcDrag *drag, HcOpening *opening, GError **error)
{
  HcOpeningValues values = *hc_opening_get (opening);
  double top_mm = values.sill_mm + values.height_mm;

  if (drag->role == HC_SIDE_TOP)
    values.height_mm = stretched (drag, values.height_mm, -hc_drag_get_way (drag).y_mm);
  else
    {
      values.sill_mm = MIN (raised_to (self, drag, values.sill_mm), top_mm - LEAST_HIGH_MM);
      values.height_mm = top_mm - values.sill_mm;
    }
  return hc_plan_set_opening (drag->start, drag->id, &values, error);
}

static HcPlan *
stretch_fitting (HcDrag *drag, HcFitting *fitting, GError **error)
{
  HcFittingValues values = *hc_fitting_get (fitting);
  double up_mm = -hc_drag_get_way (drag).y_mm;

  if (values.kind == HC_FITTING_ROOST)
    values.rise_mm = MAX (rounded (drag, values.rise_mm + up_mm / (values.bars - 1)), 0);
  else
    values.height_mm = stretched (drag, values.height_mm, up_mm);
  return hc_plan_set_fitting (drag->start, drag->id, &values, error);
}

static HcPlan *
move_edge (HcSide *self, HcDrag *drag, GError **error)
{
  HcLayout *layout = hc_plan_get_layout (drag->start);
  HcOpening *opening = hc_layout_get_opening (layout, drag->id);

  return opening != NULL
             ? stretch_opening (self, drag, opening, error)
             : stretch_fitting (drag, hc_layout_get_fitting (layout, drag->id, NULL), error);
}

static HcPlan *
raise_bedding (HcDrag *drag, GError **error)
{
  HcPen *pen = hc_layout_get_pen (hc_plan_get_layout (drag->start), drag->id);
  HcPenValues values = *hc_pen_get (pen);

  values.bedding_mm
      = MAX (rounded (drag, values.bedding_mm - hc_drag_get_way (drag).y_mm), 0);
  return hc_plan_set_pen (drag->start, drag->id, &values, error);
}

/**
 * hc_side_get_drag_plan: (skip)
 * @canvas: the side view
 * @drag: a drag
 * @error: return location for why it leads nowhere
 *
 * Returns: (transfer full) (nullable): the plan it leads to from the one it
 *   began with
 */
HcPlan *
hc_side_get_drag_plan (HcCanvas *canvas, HcDrag *drag, GError **error)
{
  HcSide *self = HC_SIDE (canvas);

  self->is_caught = FALSE;
  switch ((HcSideDragKind) drag->kind)
    {
    case HC_DRAG_RAISE:
      return raise_fittings (self, drag, error);
    case HC_DRAG_OPENING:
      return move_opening (self, drag, error);
    case HC_DRAG_EDGE:
      return move_edge (self, drag, error);
    case HC_DRAG_BEDDING:
      return raise_bedding (drag, error);
    default:
      return hc_plan_ref (drag->start);
    }
}

/**
 * hc_side_get_drag_label: (skip)
 * @canvas: the side view
 * @drag: a drag
 *
 * Returns: what the step is called in the undo menu
 */
const char *
hc_side_get_drag_label (HcCanvas *canvas, const HcDrag *drag)
{
  switch ((HcSideDragKind) drag->kind)
    {
    case HC_DRAG_EDGE:
      return _("Resize");
    case HC_DRAG_BEDDING:
      return _("Set the Depth of Bedding");
    default:
      return _("Move");
    }
}

/* The birds find new places. */
void
hc_side_drag_ended (HcCanvas *canvas, const HcDrag *drag)
{
  HcSide *self = HC_SIDE (canvas);

  self->is_caught = FALSE;
  if (drag->claimed && drag->kind >= HC_DRAG_OWN)
    hc_side_follow_check (self);
}

/**
 * hc_side_nudge: (skip)
 * @canvas: the side view
 * @focus: (nullable): what has the focus
 * @by: the step of an arrow key
 *
 * What is selected goes along the cut, up or down.
 */
void
hc_side_nudge (HcCanvas *canvas, HcCanvasItem *focus, HcPoint by)
{
  HcCanvasItem *item = focus != NULL && hc_canvas_is_chosen_alone (canvas, focus)
                           ? focus
                           : hc_canvas_get_item (canvas, *hc_canvas_get_selection (canvas));

  if (item != NULL)
    hc_canvas_nudge_item (canvas, item, by);
}
