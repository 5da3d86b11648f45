/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Which wall the side view looks at, and from where. */
#include "config.h"

#include "app/side/side-private.h"

#include "app/side/side-walls.h"

#include "plan/wall-places.h"

/* A cut is no nearer to the wall than this, and this far before a thing shown. */
#define NEAREST_MM 50.0
#define BEFORE_MM 150.0

/**
 * hc_side_get_house: (skip)
 * @self: the side view
 *
 * Returns: (transfer none) (nullable): the house judged last
 */
HcHouse *
hc_side_get_house (HcSide *self)
{
  HcCheck *check = hc_panel_get_check (HC_PANEL (self));

  return check != NULL ? hc_check_get_house (check) : NULL;
}

/**
 * hc_side_find_cut: (skip)
 * @self: the side view
 * @house: a house
 * @cut: (out): where it is cut
 *
 * A wall that is gone gives way to the one that shows most.
 *
 * Returns: whether there is anything to see
 */
gboolean
hc_side_find_cut (HcSide *self, const HcHouse *house, HcSideCut *cut)
{
  if (self->wall != NULL && !hc_side_cut_find (house, self->wall, cut))
    g_clear_pointer (&self->wall, g_free);
  if (self->wall == NULL)
    {
      HcRoom *room;
      const HcRoomWall *wall = hc_side_cut_find_wall (house, NULL, &room);

      self->shift_mm = 0;
      self->wall = wall != NULL ? g_strdup (hc_wall_get_id (wall->wall)) : NULL;
    }
  if (!hc_side_cut_find (house, self->wall, cut))
    return FALSE;
  hc_side_cut_move (cut, self->shift_mm);
  return TRUE;
}

const char *
hc_side_get_wall (HcSide *self)
{
  return self->wall;
}

static void
look (HcSide *self)
{
  hc_side_look_again (self);
  if (self->canvas.fitted)
    hc_canvas_fit (&self->canvas);
  g_signal_emit_by_name (self, "looked");
}

/**
 * hc_side_look_at: (skip)
 * @self: the side view
 * @wall: id of the wall it is to look at
 */
void
hc_side_look_at (HcSide *self, const char *wall)
{
  if (g_strcmp0 (wall, self->wall) == 0)
    return;
  g_free (self->wall);
  self->wall = g_strdup (wall);
  self->shift_mm = 0;
  look (self);
}

/**
 * hc_side_look_on: (skip)
 * @self: the side view
 * @by: how many walls further; negative to go back
 */
void
hc_side_look_on (HcSide *self, int by)
{
  HcHouse *house = hc_side_get_house (self);

  if (house != NULL && self->wall != NULL)
    hc_side_look_at (self, hc_side_walls_find_next (house, self->wall, by));
}

/**
 * hc_side_get_distance: (skip)
 * @self: the side view
 *
 * Returns: how far the cut is from the wall it looks at, mm
 */
double
hc_side_get_distance (HcSide *self)
{
  double distance_mm = 0;

  if (self->scene != NULL)
    hc_side_cut_measure (self->scene->house, self->wall, &self->scene->cut, &distance_mm);
  return distance_mm;
}

void
hc_side_set_distance (HcSide *self, double distance_mm)
{
  self->shift_mm += hc_side_get_distance (self) - MAX (distance_mm, NEAREST_MM);
  hc_side_look_again (self);
  g_signal_emit_by_name (self, "looked");
}

static const char *
find_wall_behind (const HcRoom *room, HcPoint at)
{
  const char *found = NULL;
  double nearest = G_MAXDOUBLE;

  for (guint i = 0; i < hc_room_get_n_walls (room); i++)
    {
      const HcRoomWall *wall = hc_room_get_wall (room, i);
      double away = hc_point_distance_to_line (at, wall->from, wall->to);

      if (away < nearest)
        {
          nearest = away;
          found = hc_wall_get_id (wall->wall);
        }
    }
  return found;
}

/**
 * hc_side_find_wall_for: (skip)
 * @self: the side view
 * @id: id of a pen, a fitting or an opening
 * @at: (out): where it is in the plan
 *
 * Returns: (nullable): id of the wall it is seen before, or in
 */
const char *
hc_side_find_wall_for (HcSide *self, const char *id, HcPoint *at)
{
  HcHouse *house = hc_side_get_house (self);
  HcLayout *layout = hc_house_get_layout (house);
  HcPen *pen = hc_layout_get_pen (layout, id);
  HcFitting *fitting = hc_layout_get_fitting (layout, id, &pen);
  HcOpening *opening = hc_layout_get_opening (layout, id);
  guint room;

  if (opening != NULL)
    {
      *at = hc_layout_get_place_in_wall (layout, hc_opening_get (opening)->wall,
                                         hc_opening_get (opening)->along_mm);
      return hc_opening_get (opening)->wall;
    }
  pen = pen != NULL ? pen : hc_layout_get_pen (layout, id);
  if (pen == NULL || !hc_house_find_room (house, hc_pen_get_id (pen), &room))
    return NULL;
  *at = fitting != NULL
            ? hc_point (hc_fitting_get (fitting)->x_mm, hc_fitting_get (fitting)->y_mm)
            : hc_box_centre (hc_shape_get_bounds (
                hc_room_get_outline (hc_house_get_room (house, room))));
  return find_wall_behind (hc_house_get_room (house, room), *at);
}

/* The cut goes back until a place is beyond it. */
static void
bring_before (HcSide *self, HcPoint at)
{
  double depth_mm = hc_side_cut_project (&self->scene->cut, at).y_mm;

  if (depth_mm < BEFORE_MM)
    hc_side_set_distance (self, hc_side_get_distance (self) + BEFORE_MM - depth_mm);
}

/**
 * hc_side_show_parts: (skip)
 * @self: the side view
 * @ids: (array zero-terminated=1): ids of pens, fittings and openings
 *
 * Selects them, and looks at a wall before which the first is seen.
 *
 * Returns: whether it can be seen from the side
 */
gboolean
hc_side_show_parts (HcSide *self, const char *const *ids)
{
  HcCanvas *canvas = &self->canvas;
  HcPoint at;
  const char *wall;

  if (ids[0] == NULL || self->scene == NULL)
    return FALSE;
  if (hc_canvas_get_item (canvas, ids[0]) == NULL)
    {
      wall = hc_side_find_wall_for (self, ids[0], &at);
      if (wall == NULL)
        return FALSE;
      hc_side_look_at (self, wall);
      bring_before (self, at);
    }
  if (hc_canvas_get_item (canvas, ids[0]) != NULL)
    hc_canvas_show_parts (canvas, ids);
  else
    hc_document_select (hc_panel_get_document (HC_PANEL (self)), ids);
  return TRUE;
}
