/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Handles of what is selected: edges and turning of a fitting, corners and walls of a pen. */
#include "config.h"

#include "app/floor/floor-private.h"

#include "app/floor/floor-handle.h"

#include <glib/gi18n.h>
#include <math.h>

#define HANDLE_PX 14.0
#define TURN_OUT_PX 26.0

static HcFloorItem *
add_handle (HcFloor *self, const char *id, HcHandleRole role, const char *label)
{
  HcFloorItem *handle = hc_floor_item_new (HC_ITEM_HANDLE, id, hc_floor_draw_handle, self);

  hc_floor_item_set_number (handle, role);
  hc_floor_item_tell (handle, label,
                      role == HC_HANDLE_WALL
                          ? _("Move it with the arrow keys; Enter adds a corner in its middle")
                          : _("Move it with the arrow keys"));
  gtk_widget_insert_before (GTK_WIDGET (handle), GTK_WIDGET (self), NULL);
  g_ptr_array_add (self->handles, handle);
  return handle;
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
      HcWall *wall = hc_layout_get_wall (self->layout, walls[i]);
      g_autofree char *label = g_strdup_printf (_("Wall %u"), i + 1);

      if (wall != NULL)
        add_handle (self, walls[i], HC_HANDLE_WALL, label);
    }
  for (guint i = 0; walls[i] != NULL; i++)
    {
      HcWall *wall = hc_layout_get_wall (self->layout, walls[i]);
      HcWall *before = hc_layout_get_wall (
          self->layout, walls[(i + g_strv_length (walls) - 1) % g_strv_length (walls)]);
      g_autofree char *label = g_strdup_printf (_("Corner %u"), i + 1);

      if (wall != NULL && before != NULL)
        add_handle (self, hc_layout_get_shared_corner (before, wall), HC_HANDLE_CORNER, label);
    }
}

static void
remove_handles (HcFloor *self)
{
  for (guint i = 0; i < self->handles->len; i++)
    hc_floor_take_away (self, self->handles->pdata[i]);
  g_ptr_array_set_size (self->handles, 0);
}

static gboolean
handles_are_still (HcFloor *self, const char *id)
{
  return self->handles->len > 0 && g_strcmp0 (self->handled, id) == 0
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
  HcPen *pen = id != NULL ? hc_layout_get_pen (self->layout, id) : NULL;

  return pen != NULL ? g_strv_length (hc_pen_get (pen)->walls) : 0;
}

/**
 * hc_floor_follow_handles: (skip)
 * @self: the floor
 *
 * Gives handles to what is selected alone. Those of a thing being dragged stay,
 * so that the focus does too.
 */
void
hc_floor_follow_handles (HcFloor *self)
{
  const char *const *ids = hc_document_get_selection (hc_panel_get_document (HC_PANEL (self)));
  const char *only = ids[0] != NULL && ids[1] == NULL ? ids[0] : NULL;
  HcFitting *fitting;
  HcPen *pen;

  if (handles_are_still (self, only))
    return;
  remove_handles (self);
  g_free (self->handled);
  self->handled = g_strdup (only);
  self->handled_sides = hc_floor_count_sides (self, only);
  if (only == NULL || hc_document_is_read_only (hc_panel_get_document (HC_PANEL (self))))
    return;
  fitting = hc_layout_get_fitting (self->layout, only, NULL);
  pen = hc_layout_get_pen (self->layout, only);
  if (fitting != NULL)
    add_fitting_handles (self, fitting);
  else if (pen != NULL)
    add_pen_handles (self, pen);
}

/**
 * hc_floor_focus_handle: (skip)
 * @self: the floor
 * @id: id of what the handle moves
 * @role: which handle of it
 */
void
hc_floor_focus_handle (HcFloor *self, const char *id, guint role)
{
  for (guint i = 0; i < self->handles->len; i++)
    if (hc_floor_item_get_number (self->handles->pdata[i]) == role
        && g_str_equal (hc_floor_item_get_id (self->handles->pdata[i]), id))
      gtk_widget_grab_focus (self->handles->pdata[i]);
}

static gboolean
place_on_fitting (HcFloor *self, HcFloorItem *handle, HcItemFrame *frame)
{
  HcFitting *fitting
      = hc_layout_get_fitting (self->layout, hc_floor_item_get_id (handle), NULL);
  const HcFittingValues *values;
  HcPoint out = { 0, 0 };

  if (fitting == NULL)
    return FALSE;
  values = hc_fitting_get (fitting);
  switch ((HcHandleRole) hc_floor_item_get_number (handle))
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
      out.y_mm = -values->depth_mm / 2 - TURN_OUT_PX / self->sight.scale;
      break;
    }
  frame->turn_deg = values->turn_deg;
  frame->centre = hc_point_add ((HcPoint){ values->x_mm, values->y_mm },
                                hc_point_turn (out, values->turn_deg));
  return TRUE;
}

static gboolean
place_on_wall (HcFloor *self, HcFloorItem *handle, HcItemFrame *frame)
{
  HcWall *wall = hc_layout_get_wall (self->layout, hc_floor_item_get_id (handle));
  HcPoint from, to;

  if (wall == NULL || !hc_layout_get_wall_line (self->layout, wall, &from, &to))
    return FALSE;
  frame->centre = hc_point_between (from, to, 0.5);
  frame->turn_deg = atan2 (to.y_mm - from.y_mm, to.x_mm - from.x_mm) * 180 / G_PI;
  frame->width_mm *= 2;
  frame->depth_mm *= 0.6;
  return TRUE;
}

static gboolean
place_on_corner (HcFloor *self, HcFloorItem *handle, HcItemFrame *frame)
{
  HcCorner *corner = hc_layout_get_corner (self->layout, hc_floor_item_get_id (handle));

  if (corner == NULL)
    return FALSE;
  frame->centre = (HcPoint){ hc_corner_get (corner)->x_mm, hc_corner_get (corner)->y_mm };
  return TRUE;
}

/**
 * hc_floor_place_handles: (skip)
 * @self: the floor
 *
 * Puts every handle where what it moves is now.
 */
void
hc_floor_place_handles (HcFloor *self)
{
  for (guint i = 0; i < self->handles->len; i++)
    {
      HcFloorItem *handle = self->handles->pdata[i];
      double size_mm = HANDLE_PX / self->sight.scale;
      HcItemFrame frame = { { 0, 0 }, 0, size_mm, size_mm };
      HcHandleRole role = hc_floor_item_get_number (handle);
      gboolean there = role == HC_HANDLE_WALL     ? place_on_wall (self, handle, &frame)
                       : role == HC_HANDLE_CORNER ? place_on_corner (self, handle, &frame)
                                                  : place_on_fitting (self, handle, &frame);

      gtk_widget_set_child_visible (GTK_WIDGET (handle), there);
      hc_floor_item_move (handle, &frame);
      hc_floor_item_place (handle);
    }
}
