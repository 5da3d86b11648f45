/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Handles of what is selected: edges and turning of a fitting, corners and walls of a pen. */
#include "config.h"

#include "app/floor/floor-handle.h"
#include "app/floor/floor-private.h"

#include <glib/gi18n.h>
#include <math.h>

#define HANDLE_PX 14.0
#define TURN_OUT_PX 26.0

static void
add_handle (HcFloor *self, const char *id, HcHandleRole role, const char *label)
{
  hc_canvas_item_tell (hc_canvas_add_handle (&self->canvas, id, role, hc_floor_draw_handle), label,
                       role == HC_HANDLE_WALL
                           ? _("Move it with the arrow keys; Enter adds a corner in its middle")
                           : _("Move it with the arrow keys"));
}

static void
add_fitting_handles (HcFloor *self, HcFitting *fitting)
{
  const HcFittingValues *values = hc_fitting_get (fitting);
  const char *id = hc_fitting_get_id (fitting);

  if (values->locked)
    return;
  if (values->device == NULL || *values->device == '\0')
    {
      add_handle (self, id, HC_HANDLE_RIGHT, _("Right edge"));
      if (values->form != HC_FORM_ROUND)
        {
          add_handle (self, id, HC_HANDLE_LEFT, _("Left edge"));
          add_handle (self, id, HC_HANDLE_BACK, _("Back edge"));
          add_handle (self, id, HC_HANDLE_FRONT, _("Front edge"));
        }
    }
  if (values->form != HC_FORM_ROUND)
    add_handle (self, id, HC_HANDLE_TURN, _("Turn"));
}

static void
add_pen_handles (HcFloor *self, HcPen *pen)
{
  char **walls = hc_pen_get (pen)->walls;

  for (guint i = 0; walls[i] != NULL; i++)
    {
      HcWall *wall = hc_layout_get_wall (self->canvas.layout, walls[i]);
      g_autofree char *label = g_strdup_printf (_("Wall %u"), i + 1);

      if (wall != NULL)
        add_handle (self, walls[i], HC_HANDLE_WALL, label);
    }
  for (guint i = 0; walls[i] != NULL; i++)
    {
      HcWall *wall = hc_layout_get_wall (self->canvas.layout, walls[i]);
      HcWall *before = hc_layout_get_wall (
          self->canvas.layout, walls[(i + g_strv_length (walls) - 1) % g_strv_length (walls)]);
      g_autofree char *label = g_strdup_printf (_("Corner %u"), i + 1);

      if (wall != NULL && before != NULL)
        add_handle (self, hc_layout_get_shared_corner (before, wall), HC_HANDLE_CORNER, label);
    }
}

static gboolean
handles_are_still (HcFloor *self, const char *id)
{
  return self->canvas.handles->len > 0 && g_strcmp0 (self->canvas.handled, id) == 0
         && self->handled_sides == hc_floor_count_sides (self, id);
}

/**
 * hc_floor_count_sides: (skip)
 * @self: the floor
 * @id: (nullable): id of what is selected
 *
 * Returns: how many walls it has, when it is a pen
 */
guint
hc_floor_count_sides (HcFloor *self, const char *id)
{
  HcPen *pen = id != NULL ? hc_layout_get_pen (self->canvas.layout, id) : NULL;

  return pen != NULL ? g_strv_length (hc_pen_get (pen)->walls) : 0;
}

/**
 * hc_floor_follow_handles: (skip)
 * @canvas: the floor
 *
 * Gives handles to what is selected alone. Those of a thing being dragged stay,
 * so that the focus does too.
 */
void
hc_floor_follow_handles (HcCanvas *canvas)
{
  HcFloor *self = HC_FLOOR (canvas);
  const char *const *ids = hc_document_get_selection (hc_panel_get_document (HC_PANEL (self)));
  const char *only = ids[0] != NULL && ids[1] == NULL ? ids[0] : NULL;
  HcFitting *fitting;
  HcPen *pen;

  if (handles_are_still (self, only))
    return;
  hc_canvas_remove_handles (canvas);
  g_free (self->canvas.handled);
  self->canvas.handled = g_strdup (only);
  self->handled_sides = hc_floor_count_sides (self, only);
  if (only == NULL || hc_document_is_read_only (hc_panel_get_document (HC_PANEL (self))))
    return;
  fitting = hc_layout_get_fitting (self->canvas.layout, only, NULL);
  pen = hc_layout_get_pen (self->canvas.layout, only);
  if (fitting != NULL)
    add_fitting_handles (self, fitting);
  else if (pen != NULL)
    add_pen_handles (self, pen);
}

static gboolean
place_on_fitting (HcFloor *self, HcCanvasItem *handle, HcItemFrame *frame)
{
  HcFitting *fitting
      = hc_layout_get_fitting (self->canvas.layout, hc_canvas_item_get_id (handle), NULL);
  const HcFittingValues *values;
  HcPoint out = { 0, 0 };

  if (fitting == NULL)
    return FALSE;
  values = hc_fitting_get (fitting);
  switch ((HcHandleRole) hc_canvas_item_get_number (handle))
    {
    case HC_HANDLE_LEFT:
      out.x_mm = -values->width_mm / 2;
      break;
    case HC_HANDLE_RIGHT:
      out.x_mm = values->width_mm / 2;
      break;
    case HC_HANDLE_BACK:
      out.y_mm = -values->depth_mm / 2;
      break;
    case HC_HANDLE_FRONT:
      out.y_mm = values->depth_mm / 2;
      break;
    default:
      out.y_mm = -values->depth_mm / 2 - TURN_OUT_PX / self->canvas.sight.scale;
      break;
    }
  frame->turn_deg = values->turn_deg;
  frame->centre = hc_point_add ((HcPoint){ values->x_mm, values->y_mm },
                                hc_point_turn (out, values->turn_deg));
  return TRUE;
}

static gboolean
place_on_wall (HcFloor *self, HcCanvasItem *handle, HcItemFrame *frame)
{
  HcWall *wall = hc_layout_get_wall (self->canvas.layout, hc_canvas_item_get_id (handle));
  HcPoint from, to;

  if (wall == NULL || !hc_layout_get_wall_line (self->canvas.layout, wall, &from, &to))
    return FALSE;
  frame->centre = hc_point_between (from, to, 0.5);
  frame->turn_deg = atan2 (to.y_mm - from.y_mm, to.x_mm - from.x_mm) * 180 / G_PI;
  frame->width_mm *= 2;
  frame->depth_mm *= 0.6;
  return TRUE;
}

static gboolean
place_on_corner (HcFloor *self, HcCanvasItem *handle, HcItemFrame *frame)
{
  HcCorner *corner = hc_layout_get_corner (self->canvas.layout, hc_canvas_item_get_id (handle));

  if (corner == NULL)
    return FALSE;
  frame->centre = (HcPoint){ hc_corner_get (corner)->x_mm, hc_corner_get (corner)->y_mm };
  return TRUE;
}

/**
 * hc_floor_find_handle: (skip)
 * @canvas: the floor
 * @handle: a handle
 * @frame: (out): where what it moves is now
 *
 * Returns: whether that is there
 */
gboolean
hc_floor_find_handle (HcCanvas *canvas, HcCanvasItem *handle, HcItemFrame *frame)
{
  HcFloor *self = HC_FLOOR (canvas);
  double size_mm = HANDLE_PX / canvas->sight.scale;

  *frame = (HcItemFrame){ { 0, 0 }, 0, size_mm, size_mm };
  switch ((HcHandleRole) hc_canvas_item_get_number (handle))
    {
    case HC_HANDLE_WALL:
      return place_on_wall (self, handle, frame);
    case HC_HANDLE_CORNER:
      return place_on_corner (self, handle, frame);
    default:
      return place_on_fitting (self, handle, frame);
    }
}
