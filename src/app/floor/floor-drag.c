/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What each drag on the floor makes of the plan it began with. */
#include "config.h"

#include "app/floor/floor-handle.h"
#include "app/floor/floor-private.h"

#include "base/ids.h"
#include "plan/edit-corner.h"
#include "plan/edit-fitting.h"
#include "plan/edit-opening.h"
#include "plan/edit-pen.h"
#include "plan/edit-wall.h"
#include "plan/wall-places.h"

#include <glib/gi18n.h>
#include <math.h>

typedef enum
{
  HC_DRAG_FITTINGS = HC_DRAG_OWN,
  HC_DRAG_OPENING,
  HC_DRAG_EDGE,
  HC_DRAG_TURN,
  HC_DRAG_CORNER,
  HC_DRAG_WALL,
  HC_DRAG_NEW_PEN,
} HcFloorDragKind;

#define EVEN_MM 50.0
#define TURN_EVEN_DEG 15.0
#define TURN_CATCH_DEG 4.0
#define LEAST_SIDE_MM 20.0

static int
kind_of (HcFloor *self, HcCanvasItem *item)
{
  if (self->tool != HC_TOOL_CHOOSE)
    return HC_DRAG_NEW_PEN;
  switch (hc_canvas_item_get_kind (item))
    {
    case HC_ITEM_FITTING:
      return HC_DRAG_FITTINGS;
    case HC_ITEM_OPENING:
      return HC_DRAG_OPENING;
    case HC_ITEM_HANDLE:
      break;
    default:
      return HC_DRAG_PAN;
    }
  switch ((HcHandleRole) hc_canvas_item_get_number (item))
    {
    case HC_HANDLE_TURN:
      return HC_DRAG_TURN;
    case HC_HANDLE_CORNER:
      return HC_DRAG_CORNER;
    case HC_HANDLE_WALL:
      return HC_DRAG_WALL;
    default:
      return HC_DRAG_EDGE;
    }
}

/**
 * hc_floor_begin_drag: (skip)
 * @canvas: the floor
 * @drag: a drag that begins
 * @item: (nullable): on what; a tool needs nothing
 */
void
hc_floor_begin_drag (HcCanvas *canvas, HcDrag *drag, HcCanvasItem *item)
{
  drag->kind = kind_of (HC_FLOOR (canvas), item);
  if (drag->kind == HC_DRAG_NEW_PEN)
    drag->new_ids = hc_pen_ids_new ();
}

static HcPlan *
move_fittings (HcDrag *drag, GError **error)
{
  const char *const *ids = (const char *const *) drag->ids;
  HcSnap snap = hc_snap_fittings (drag->start, ids, hc_drag_get_way (drag), hc_drag_get_reach_mm (drag),
                                  &drag->rules);

  drag->n_caught = snap.n_caught;
  memcpy (drag->caught, snap.caught, sizeof drag->caught);
  return hc_plan_move_fittings (drag->start, ids, snap.by, error);
}

static HcPlan *
slide_opening (HcDrag *drag, GError **error)
{
  double along_mm = 0;
  HcWall *wall = hc_layout_find_nearest_wall (hc_plan_get_layout (drag->start), drag->to, &along_mm);

  if (drag->even)
    along_mm = round (along_mm / EVEN_MM) * EVEN_MM;
  return hc_plan_slide_opening (drag->start, drag->id, hc_wall_get_id (wall), along_mm, error);
}

static double
stretched (double length_mm, double by_mm, gboolean even)
{
  double now_mm = MAX (length_mm + by_mm, LEAST_SIDE_MM);

  return MAX (even ? round (now_mm / EVEN_MM) * EVEN_MM : round (now_mm), LEAST_SIDE_MM);
}

/* One edge moves, the opposite one stays. */
static HcPlan *
move_edge (HcDrag *drag, GError **error)
{
  HcFitting *fitting
      = hc_layout_get_fitting (hc_plan_get_layout (drag->start), drag->id, NULL);
  HcFittingValues values = *hc_fitting_get (fitting);
  HcPoint by = hc_point_turn (hc_drag_get_way (drag), -values.turn_deg);
  gboolean sideways = drag->role == HC_HANDLE_LEFT || drag->role == HC_HANDLE_RIGHT;
  double side = drag->role == HC_HANDLE_LEFT || drag->role == HC_HANDLE_BACK ? -1 : 1;
  double *length_mm = sideways ? &values.width_mm : &values.depth_mm;
  double before_mm = *length_mm;
  HcPoint shift = { 0, 0 };

  *length_mm = stretched (before_mm, side * (sideways ? by.x_mm : by.y_mm), drag->even);
  *(sideways ? &shift.x_mm : &shift.y_mm) = side * (*length_mm - before_mm) / 2;
  if (values.form == HC_FORM_ROUND)
    values.depth_mm = values.width_mm;
  shift = hc_point_turn (shift, values.turn_deg);
  values.x_mm += shift.x_mm;
  values.y_mm += shift.y_mm;
  return hc_plan_set_fitting (drag->start, drag->id, &values, error);
}

static double
caught_turn (double turn_deg)
{
  double square = round (turn_deg / 90) * 90;

  return fabs (turn_deg - square) < TURN_CATCH_DEG ? square : round (turn_deg);
}

static HcPlan *
turn_fitting (HcDrag *drag, GError **error)
{
  const char *const ids[] = { drag->id, NULL };
  HcFitting *fitting
      = hc_layout_get_fitting (hc_plan_get_layout (drag->start), drag->id, NULL);
  const HcFittingValues *values = hc_fitting_get (fitting);
  double turn_deg = atan2 (drag->to.y_mm - values->y_mm, drag->to.x_mm - values->x_mm) * 180 / G_PI
                    + 90;

  if (drag->even)
    turn_deg = round (turn_deg / TURN_EVEN_DEG) * TURN_EVEN_DEG;
  else if (!drag->free)
    turn_deg = caught_turn (turn_deg);
  return hc_plan_turn_fittings (drag->start, ids, turn_deg - values->turn_deg, error);
}

static HcPlan *
move_corner (HcDrag *drag, GError **error)
{
  HcSnap snap = hc_snap_corner (drag->start, drag->id, drag->to, hc_drag_get_reach_mm (drag));

  drag->n_caught = snap.n_caught;
  memcpy (drag->caught, snap.caught, sizeof drag->caught);
  return hc_plan_move_corner (drag->start, drag->id, hc_point_add (drag->to, snap.by), error);
}

static HcPlan *
move_wall (HcDrag *drag, GError **error)
{
  HcLayout *layout = hc_plan_get_layout (drag->start);
  HcWall *wall = hc_layout_get_wall (layout, drag->id);
  HcPoint from, to, along;
  double by_mm;

  if (!hc_layout_get_wall_line (layout, wall, &from, &to))
    return hc_plan_ref (drag->start);
  along = hc_point_unit (hc_point_subtract (to, from));
  by_mm = hc_point_cross (along, hc_drag_get_way (drag));
  if (!drag->free)
    by_mm = round (by_mm / 10) * 10;
  return hc_plan_move_wall (drag->start, drag->id, by_mm, error);
}

static HcPlan *
draw_pen (HcFloor *self, HcDrag *drag, GError **error)
{
  HcPenKind kind = self->tool == HC_TOOL_RUN ? HC_PEN_RUN : HC_PEN_INDOOR;
  HcPoint to = drag->to, from = drag->from;

  if (!drag->free)
    {
      from = hc_snap_point (drag->start, from, hc_drag_get_reach_mm (drag));
      to = hc_snap_point (drag->start, to, hc_drag_get_reach_mm (drag));
    }
  return hc_plan_add_pen (drag->start, kind, from, to, (const char *const *) drag->new_ids, error);
}

/**
 * hc_floor_get_drag_plan: (skip)
 * @canvas: the floor
 * @drag: a drag
 * @error: return location for why it leads nowhere
 *
 * Returns: (transfer full) (nullable): the plan it leads to from the one it
 *   began with
 */
HcPlan *
hc_floor_get_drag_plan (HcCanvas *canvas, HcDrag *drag, GError **error)
{
  drag->n_caught = 0;
  switch ((HcFloorDragKind) drag->kind)
    {
    case HC_DRAG_FITTINGS:
      return move_fittings (drag, error);
    case HC_DRAG_OPENING:
      return slide_opening (drag, error);
    case HC_DRAG_EDGE:
      return move_edge (drag, error);
    case HC_DRAG_TURN:
      return turn_fitting (drag, error);
    case HC_DRAG_CORNER:
      return move_corner (drag, error);
    case HC_DRAG_WALL:
      return move_wall (drag, error);
    case HC_DRAG_NEW_PEN:
      return draw_pen (HC_FLOOR (canvas), drag, error);
    default:
      return hc_plan_ref (drag->start);
    }
}

/**
 * hc_floor_get_drag_label: (skip)
 * @canvas: the floor
 * @drag: a drag
 *
 * Returns: what the step is called in the undo menu
 */
const char *
hc_floor_get_drag_label (HcCanvas *canvas, const HcDrag *drag)
{
  switch (drag->kind)
    {
    case HC_DRAG_OPENING:
      return _("Slide Along the Wall");
    case HC_DRAG_EDGE:
      return _("Resize");
    case HC_DRAG_TURN:
      return _("Turn");
    case HC_DRAG_CORNER:
      return _("Move Corner");
    case HC_DRAG_WALL:
      return _("Move Wall");
    case HC_DRAG_NEW_PEN:
      return _("Draw Pen");
    default:
      return _("Move");
    }
}

/* A pen that was drawn is chosen, and the birds find new places. */
void
hc_floor_drag_ended (HcCanvas *canvas, const HcDrag *drag)
{
  HcFloor *self = HC_FLOOR (canvas);

  gtk_widget_queue_draw (self->birds);
  if (!drag->claimed || drag->kind != HC_DRAG_NEW_PEN)
    return;
  hc_floor_set_tool (self, HC_TOOL_CHOOSE);
  hc_canvas_show_part (canvas, drag->new_ids[0]);
}
