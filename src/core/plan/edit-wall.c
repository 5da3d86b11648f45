/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A wall moves with all that runs on in its line; its neighbours follow. */
#include "config.h"

#include "plan/edit-wall.h"

#include "base/ring.h"
#include "plan/edit-homes.h"
#include "plan/edit-sound.h"
#include "plan/move-corners.h"
#include "plan/wall-corners.h"
#include "plan/wall-places.h"

#include <glib/gi18n-lib.h>
#include <math.h>

/* Neighbours that meet a wall flatter than this would shoot off when it moves. */
#define FLATTEST_SLANT 0.2

static HcWall *
find (const HcLayout *layout, const char *wall, GError **error)
{
  HcWall *found = hc_layout_get_wall (layout, wall);
  HcPoint from, to;

  if (found != NULL && hc_layout_get_wall_line (layout, found, &from, &to))
    return found;
  return hc_edit_refuse (error, _("That wall is no longer in the plan. Choose another."));
}

static gboolean
add_once (GPtrArray *corners, const char *corner)
{
  for (guint i = 0; i < corners->len; i++)
    if (g_str_equal (corners->pdata[i], corner))
      return FALSE;
  g_ptr_array_add (corners, (char *) corner);
  return TRUE;
}

/* The corners of @wall and of every wall that runs on from it in one line. */
static GPtrArray *
corners_in_line (const HcLayout *layout, const HcWall *wall)
{
  GPtrArray *corners = g_ptr_array_new ();

  add_once (corners, hc_wall_get (wall)->from);
  add_once (corners, hc_wall_get (wall)->to);
  for (guint i = 0; i < corners->len; i++)
    {
      g_autoptr (GPtrArray) walls = hc_corner_get_walls (layout, corners->pdata[i]);

      for (guint j = 0; j < walls->len; j++)
        if (hc_walls_run_alike (layout, wall, walls->pdata[j]))
          add_once (corners, hc_wall_get_other_end (walls->pdata[j], corners->pdata[i]));
    }
  return corners;
}

/* How a corner of a wall moves when the wall moves by one along @normal: along
 * the neighbour's own line where there is one such line, else squarely. */
static HcPoint
way_of_corner (const HcLayout *layout, const HcWall *wall, const char *corner, HcPoint normal)
{
  g_autoptr (GPtrArray) walls = hc_corner_get_walls (layout, corner);
  const HcWall *neighbour = NULL;
  double slant;

  for (guint i = 0; i < walls->len; i++)
    {
      if (hc_walls_run_alike (layout, wall, walls->pdata[i]))
        continue;
      if (neighbour != NULL && !hc_walls_run_alike (layout, neighbour, walls->pdata[i]))
        return normal;
      neighbour = walls->pdata[i];
    }
  if (neighbour == NULL)
    return normal;
  slant = hc_point_dot (hc_wall_get_way (layout, neighbour), normal);
  return fabs (slant) < FLATTEST_SLANT
             ? normal
             : hc_point_scale (hc_wall_get_way (layout, neighbour), 1 / slant);
}

static HcPoint
normal_of (const HcLayout *layout, const HcWall *wall)
{
  HcPoint way = hc_wall_get_way (layout, wall);

  return (HcPoint){ -way.y_mm, way.x_mm };
}

/**
 * hc_plan_move_wall:
 * @plan: a plan
 * @wall: id of a wall
 * @by_mm: how far it moves square to itself; positive to the right of its way
 *   from start to end, as seen on screen
 * @error: says why not
 *
 * All walls in its line move with it. Walls that meet it become longer or
 * shorter and keep their direction.
 *
 * Returns: (transfer full): the changed plan, @plan when nothing changed, or
 *   %NULL and a %HC_ERROR_EDIT
 */
HcPlan *
hc_plan_move_wall (HcPlan *plan, const char *wall, double by_mm, GError **error)
{
  HcLayout *layout = hc_plan_get_layout (plan);
  HcWall *moved = find (layout, wall, error);
  g_autoptr (GPtrArray) corners = NULL;
  g_autoptr (GArray) moves = g_array_new (FALSE, FALSE, sizeof (HcCornerMove));

  if (moved == NULL)
    return NULL;
  corners = corners_in_line (layout, moved);
  for (guint i = 0; i < corners->len; i++)
    {
      HcPoint way = way_of_corner (layout, moved, corners->pdata[i], normal_of (layout, moved));
      HcPoint at = hc_corner_get_point (layout, corners->pdata[i]);
      HcCornerMove move
          = { corners->pdata[i], hc_point_add (at, hc_point_scale (way, by_mm)) };

      g_array_append_val (moves, move);
    }
  return hc_edit_move_corners (plan, (const HcCornerMove *) moves->data, moves->len, error);
}

/**
 * hc_layout_get_inside_length:
 * @layout: a layout
 * @wall: id of a wall
 * @pen: (nullable): id of a pen beside it
 *
 * Returns: how long the wall is inside the pen, mm; without a pen, or when the
 *   wall is not in its ring, the length of the wall's line
 */
double
hc_layout_get_inside_length (const HcLayout *layout, const char *wall, const char *pen)
{
  HcPen *beside = pen != NULL ? hc_layout_get_pen (layout, pen) : NULL;
  g_autoptr (GArray) ring = beside != NULL ? hc_layout_get_pen_ring (layout, beside) : NULL;

  for (guint i = 0; ring != NULL && i < ring->len; i++)
    if (g_str_equal (hc_pen_get (beside)->walls[i], wall))
      return hc_ring_edge_length_mm ((const HcPoint *) ring->data, ring->len, i);
  return hc_layout_get_wall_length (layout, wall);
}

static HcWall *
neighbour_at (const HcLayout *layout, const HcWall *wall, const char *corner)
{
  g_autoptr (GPtrArray) walls = hc_corner_get_walls (layout, corner);

  for (guint i = 0; i < walls->len; i++)
    if (!hc_walls_run_alike (layout, wall, walls->pdata[i]))
      return walls->pdata[i];
  return NULL;
}

/**
 * hc_plan_set_wall_length:
 * @plan: a plan
 * @wall: id of a wall
 * @pen: (nullable): id of the pen inside which it is measured
 * @length_mm: how long it shall be
 * @error: says why it cannot be
 *
 * Its start stays; the wall that meets its end moves, and the rest adapts.
 *
 * Returns: (transfer full): the changed plan, @plan when nothing changed, or
 *   %NULL and a %HC_ERROR_EDIT
 */
HcPlan *
hc_plan_set_wall_length (HcPlan *plan, const char *wall, const char *pen, double length_mm,
                         GError **error)
{
  HcLayout *layout = hc_plan_get_layout (plan);
  HcWall *found = find (layout, wall, error);
  double more_mm = length_mm - hc_layout_get_inside_length (layout, wall, pen);
  HcWall *neighbour;
  HcPoint way;
  const char *end;

  if (found == NULL)
    return NULL;
  if (!(length_mm >= HC_WALL_JOIN_MM))
    return hc_edit_refuse (error, _("A wall needs a length. Type one, for instance 2 m."));
  way = hc_wall_get_way (layout, found);
  end = hc_wall_get (found)->to;
  neighbour = neighbour_at (layout, found, end);
  if (neighbour == NULL)
    return hc_edit_move_corners (
        plan,
        &(HcCornerMove){ end, hc_point_add (hc_corner_get_point (layout, end),
                                            hc_point_scale (way, more_mm)) },
        1, error);
  return hc_plan_move_wall (plan, hc_wall_get_id (neighbour),
                            more_mm * hc_point_dot (way, normal_of (layout, neighbour)), error);
}

/**
 * hc_plan_set_wall:
 * @plan: a plan
 * @wall: id of a wall
 * @values: what it shall be; its ends stay as they are
 * @error: says why it cannot be
 *
 * Returns: (transfer full): the changed plan, @plan when nothing changed, or
 *   %NULL and a %HC_ERROR_EDIT
 */
HcPlan *
hc_plan_set_wall (HcPlan *plan, const char *wall, const HcWallValues *values, GError **error)
{
  HcLayout *layout = hc_plan_get_layout (plan);
  HcWall *before = find (layout, wall, error);
  g_auto (HcLayoutValues) changed = hc_edit_hold_layout (layout);
  HcWallValues built = *values;
  g_autoptr (HcWall) after = NULL;
  g_autoptr (HcPlan) rebuilt = NULL;

  if (before == NULL || !hc_edit_accepts (plan, &hc_wall_class, values, error))
    return NULL;
  built.from = hc_wall_get (before)->from;
  built.to = hc_wall_get (before)->to;
  after = hc_wall_with (before, &built);
  hc_edit_put (&changed.walls, after);
  rebuilt = hc_edit_with_layout (plan, &changed);
  return hc_edit_if_sound (plan, hc_edit_rehouse_all (rebuilt), error);
}
