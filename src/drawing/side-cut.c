/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A cut through the middle of a pen, looking at one of its walls. */
#include "config.h"

#include "side-cut.h"

#include "drawing/wall-outline.h"

#include "base/box.h"

#include <math.h>

/* The cut starts and ends this far outside of the house. */
#define OUTSIDE_MM 1900.0

/* Looked at the longest wall under a gable, the slope of the roof is seen. */
static double
worth_looking_at (const HcRoom *room, const HcRoomWall *wall)
{
  const HcRoof *roof = hc_room_get_roof (room);
  HcPoint line = hc_point_subtract (wall->to, wall->from);

  if (hc_room_get (room)->kind != HC_PEN_INDOOR)
    return 0;
  return hc_roof_is_sloped (roof) ? fabs (hc_point_dot (line, roof->across))
                                  : hc_point_length (line);
}

static const HcRoomWall *
find_wall (const HcHouse *house, const char *id, HcRoom **of)
{
  const HcRoomWall *found = NULL;
  double most = -1;

  for (guint i = 0; i < hc_house_get_n_rooms (house); i++)
    {
      HcRoom *room = hc_house_get_room (house, i);

      for (guint j = 0; j < hc_room_get_n_walls (room); j++)
        {
          const HcRoomWall *wall = hc_room_get_wall (room, j);
          double worth = worth_looking_at (room, wall);

          if (worth <= most || (id != NULL && g_strcmp0 (hc_wall_get_id (wall->wall), id) != 0))
            continue;
          most = worth;
          found = wall;
          *of = room;
        }
    }
  return found;
}

static HcPoint
middle_of (const HcRoom *room)
{
  const HcPoint *ring;
  guint n_points;

  ring = hc_shape_get_ring (hc_room_get_outline (room), 0, 0, &n_points);
  return hc_box_centre (hc_box_around (ring, n_points));
}

/* From one end of all rooms to the other, and a little more. */
static void
stretch_over_house (const HcHouse *house, HcPoint middle, HcSideCut *cut)
{
  double least = 0, most = 0;

  for (guint i = 0; i < hc_house_get_n_rooms (house); i++)
    {
      const HcRoom *room = hc_house_get_room (house, i);

      for (guint j = 0; j < hc_room_get_n_walls (room); j++)
        {
          HcPoint corner = hc_room_get_wall (room, j)->line_from;
          double at = hc_point_dot (hc_point_subtract (corner, middle), cut->along);

          least = MIN (least, at);
          most = MAX (most, at);
        }
    }
  cut->from = hc_point_add (middle, hc_point_scale (cut->along, least - OUTSIDE_MM));
  cut->to = hc_point_add (middle, hc_point_scale (cut->along, most + OUTSIDE_MM));
}

/**
 * hc_side_cut_find: (skip)
 * @house: a house
 * @wall: (nullable): id of the wall to look at; %NULL for the one that shows
 *   most of the roof
 * @cut: (out): the cut through the middle of the pen before that wall
 *
 * Returns: whether the house has such a wall
 */
gboolean
hc_side_cut_find (const HcHouse *house, const char *wall, HcSideCut *cut)
{
  HcRoom *room = NULL;
  const HcRoomWall *looked_at = find_wall (house, wall, &room);
  HcPoint middle;

  if (looked_at == NULL)
    return FALSE;
  middle = middle_of (room);
  cut->along = hc_point_unit (hc_point_subtract (looked_at->to, looked_at->from));
  cut->into = hc_point (-cut->along.y_mm, cut->along.x_mm);
  if (hc_point_dot (hc_point_subtract (looked_at->from, middle), cut->into) < 0)
    {
      cut->along = hc_point_scale (cut->along, -1);
      cut->into = hc_point_scale (cut->into, -1);
    }
  stretch_over_house (house, middle, cut);
  return TRUE;
}

/**
 * hc_side_cut_project: (skip)
 * @cut: a cut
 * @at: a place in the plan
 *
 * Returns: how far along the cut it is, and how far beyond it
 */
HcPoint
hc_side_cut_project (const HcSideCut *cut, HcPoint at)
{
  HcPoint way = hc_point_subtract (at, cut->from);

  return hc_point (hc_point_dot (way, cut->along), hc_point_dot (way, cut->into));
}

static const char *
wall_of (const HcLayout *layout, const HcSectionItem *item)
{
  return item->kind == HC_SECTION_OPENING
             ? hc_opening_get (hc_layout_get_opening (layout, item->id))->wall
             : item->id;
}

/* How far along the cut the middle of a wall is from its line. */
static double
middle_from_line_mm (const HcLayout *layout, const HcSideCut *cut, const char *id)
{
  HcWall *wall = hc_layout_get_wall (layout, id);
  HcWallFaces faces;
  double across;

  if (wall == NULL || !hc_wall_faces (layout, wall, &faces))
    return 0;
  across = hc_point_dot (faces.inward, cut->along);
  return fabs (across) > 0.01 ? (faces.inner_mm - faces.outer_mm) / 2 / across : 0;
}

/**
 * hc_side_cut_look: (skip)
 * @cut: a cut
 * @house: the house
 *
 * As hc_section_look(), with the walls that are cut where they stand: outside
 * of the pen they are the walls of.
 *
 * Returns: (transfer full) (element-type HcSectionItem): what is seen, farthest first
 */
GArray *
hc_side_cut_look (const HcSideCut *cut, const HcHouse *house)
{
  HcLayout *layout = hc_house_get_layout (house);
  GArray *items = hc_section_look (house, cut->from, cut->to);

  for (guint i = 0; i < items->len; i++)
    {
      HcSectionItem *item = &g_array_index (items, HcSectionItem, i);
      double by_mm;

      if (!item->cut || (item->kind != HC_SECTION_WALL && item->kind != HC_SECTION_OPENING))
        continue;
      by_mm = middle_from_line_mm (layout, cut, wall_of (layout, item));
      for (guint j = 0; j < item->outline->len; j++)
        g_array_index (item->outline, HcPoint, j).x_mm += by_mm;
    }
  return items;
}
