/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A cut through the middle of a pen, looking at one of its walls. */
#include "config.h"

#include "side-cut.h"

#include "drawing/wall-outline.h"

#include "base/box.h"

#include <math.h>

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

/**
 * hc_side_cut_find_wall: (skip)
 * @house: a house
 * @id: (nullable): id of a wall; %NULL for the one that shows most of the roof
 * @of: (out) (transfer none): the room it is looked at from
 *
 * Returns: (nullable) (transfer none): the wall
 */
const HcRoomWall *
hc_side_cut_find_wall (const HcHouse *house, const char *id, HcRoom **of)
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

/* From inside, runs and other buildings are surroundings. */
static gboolean
is_of_same_house (const HcRoom *room, const HcRoom *other)
{
  const HcPenValues *one = hc_room_get (room), *two = hc_room_get (other);

  return g_strcmp0 (one->building, two->building) == 0
         && (one->kind == HC_PEN_RUN || two->kind == HC_PEN_INDOOR);
}

/* From one end of the building to the other, and a little more. */
static void
stretch_over_house (const HcHouse *house, const HcRoom *looked_from, HcPoint middle,
                    HcSideCut *cut)
{
  double least = 0, most = 0;

  for (guint i = 0; i < hc_house_get_n_rooms (house); i++)
    {
      const HcRoom *room = hc_house_get_room (house, i);

      for (guint j = 0;
           is_of_same_house (looked_from, room) && j < hc_room_get_n_walls (room); j++)
        {
          HcPoint corner = hc_room_get_wall (room, j)->line_from;
          double at = hc_point_dot (hc_point_subtract (corner, middle), cut->along);

          least = MIN (least, at);
          most = MAX (most, at);
        }
    }
  cut->from = hc_point_add (middle, hc_point_scale (cut->along, least - HC_SIDE_OUTSIDE_MM));
  cut->to = hc_point_add (middle, hc_point_scale (cut->along, most + HC_SIDE_OUTSIDE_MM));
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
  const HcRoomWall *looked_at = hc_side_cut_find_wall (house, wall, &room);
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
  stretch_over_house (house, room, middle, cut);
  return TRUE;
}

/**
 * hc_side_cut_measure: (skip)
 * @house: a house
 * @wall: (nullable): id of the wall that is looked at, as for hc_side_cut_find()
 * @cut: a cut that looks at it
 * @distance_mm: (out): how far the cut is from the face of the wall
 *
 * Returns: whether the house has such a wall
 */
gboolean
hc_side_cut_measure (const HcHouse *house, const char *wall, const HcSideCut *cut,
                     double *distance_mm)
{
  HcRoom *room = NULL;
  const HcRoomWall *looked_at = hc_side_cut_find_wall (house, wall, &room);

  if (looked_at == NULL)
    return FALSE;
  *distance_mm = hc_side_cut_project (cut, looked_at->from).y_mm;
  return TRUE;
}

/**
 * hc_side_cut_move: (skip)
 * @cut: a cut
 * @by_mm: how far it goes on the way it is looked
 */
void
hc_side_cut_move (HcSideCut *cut, double by_mm)
{
  HcPoint by = hc_point_scale (cut->into, by_mm);

  cut->from = hc_point_add (cut->from, by);
  cut->to = hc_point_add (cut->to, by);
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

static gboolean
is_outside (const HcSideCut *cut, const HcSectionItem *item)
{
  double length_mm = hc_point_distance (cut->from, cut->to);
  HcBox box = hc_box_around ((const HcPoint *) item->outline->data, item->outline->len);

  return box.x_mm >= length_mm || box.x_mm + box.width_mm <= 0;
}

static void
bring_to_middle_of_wall (const HcSideCut *cut, const HcLayout *layout, HcSectionItem *item)
{
  double by_mm;

  if (!item->cut || (item->kind != HC_SECTION_WALL && item->kind != HC_SECTION_OPENING))
    return;
  by_mm = middle_from_line_mm (layout, cut, wall_of (layout, item));
  for (guint i = 0; i < item->outline->len; i++)
    g_array_index (item->outline, HcPoint, i).x_mm += by_mm;
}

/**
 * hc_side_cut_look: (skip)
 * @cut: a cut
 * @house: the house
 *
 * As hc_section_look(), with the walls that are cut where they stand: outside
 * of the pen they are the walls of; and without what lies beside the cut.
 *
 * Returns: (transfer full) (element-type HcSectionItem): what is seen, farthest first
 */
GArray *
hc_side_cut_look (const HcSideCut *cut, const HcHouse *house)
{
  HcLayout *layout = hc_house_get_layout (house);
  GArray *items = hc_section_look (house, cut->from, cut->to);

  for (guint i = items->len; i-- > 0;)
    {
      bring_to_middle_of_wall (cut, layout, &g_array_index (items, HcSectionItem, i));
      if (is_outside (cut, &g_array_index (items, HcSectionItem, i)))
        g_array_remove_index (items, i);
    }
  return items;
}
