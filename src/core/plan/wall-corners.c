/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Questions about the corners and walls of a layout that edits ask. */
#include "config.h"

#include "plan/wall-corners.h"

#include <math.h>

/* A millimetre aside in ten metres is still straight. */
#define STRAIGHT 1e-4

HcPoint
hc_corner_get_point (const HcLayout *layout, const char *corner)
{
  const HcCornerValues *values = hc_corner_get (hc_layout_get_corner (layout, corner));

  return (HcPoint){ values->x_mm, values->y_mm };
}

gboolean
hc_wall_touches (const HcWall *wall, const char *corner)
{
  const HcWallValues *values = hc_wall_get (wall);

  return g_str_equal (values->from, corner) || g_str_equal (values->to, corner);
}

const char *
hc_wall_get_other_end (const HcWall *wall, const char *corner)
{
  const HcWallValues *values = hc_wall_get (wall);

  return g_str_equal (values->from, corner) ? values->to : values->from;
}

/**
 * hc_wall_get_way: (skip)
 * @layout: a layout
 * @wall: a wall of it
 *
 * Returns: the direction of length 1 from its start to its end
 */
HcPoint
hc_wall_get_way (const HcLayout *layout, const HcWall *wall)
{
  HcPoint from = { 0, 0 };
  HcPoint to = { 0, 0 };

  hc_layout_get_wall_line (layout, wall, &from, &to);
  return hc_point_unit (hc_point_subtract (to, from));
}

gboolean
hc_walls_run_alike (const HcLayout *layout, const HcWall *a, const HcWall *b)
{
  return fabs (hc_point_cross (hc_wall_get_way (layout, a), hc_wall_get_way (layout, b)))
         < STRAIGHT;
}

/**
 * hc_corner_get_walls: (skip)
 * @layout: a layout
 * @corner: id of a corner
 *
 * Returns: (transfer container) (element-type HcWall): the walls that meet there
 */
GPtrArray *
hc_corner_get_walls (const HcLayout *layout, const char *corner)
{
  HcParts *walls = hc_layout_get (layout)->walls;
  GPtrArray *meeting = g_ptr_array_new ();

  for (guint i = 0; i < walls->len; i++)
    if (hc_wall_touches (walls->pdata[i], corner))
      g_ptr_array_add (meeting, walls->pdata[i]);
  return meeting;
}

HcWall *
hc_corners_get_wall (const HcLayout *layout, const char *a, const char *b)
{
  HcParts *walls = hc_layout_get (layout)->walls;

  for (guint i = 0; i < walls->len; i++)
    if (hc_wall_touches (walls->pdata[i], a) && hc_wall_touches (walls->pdata[i], b))
      return walls->pdata[i];
  return NULL;
}

HcCorner *
hc_layout_find_corner_at (const HcLayout *layout, HcPoint at)
{
  HcParts *corners = hc_layout_get (layout)->corners;

  for (guint i = 0; i < corners->len; i++)
    {
      const HcCornerValues *values = hc_corner_get (corners->pdata[i]);

      if (hc_point_distance (at, (HcPoint){ values->x_mm, values->y_mm }) <= HC_WALL_JOIN_MM)
        return corners->pdata[i];
    }
  return NULL;
}

/**
 * hc_layout_find_wall_at: (skip)
 * @layout: a layout
 * @at: a place
 *
 * Returns: (nullable) (transfer none): the wall whose line runs through it
 */
HcWall *
hc_layout_find_wall_at (const HcLayout *layout, HcPoint at)
{
  HcParts *walls = hc_layout_get (layout)->walls;

  for (guint i = 0; i < walls->len; i++)
    {
      HcPoint from, to;

      if (hc_layout_get_wall_line (layout, walls->pdata[i], &from, &to)
          && hc_point_distance_to_line (at, from, to) <= HC_WALL_JOIN_MM)
        return walls->pdata[i];
    }
  return NULL;
}
