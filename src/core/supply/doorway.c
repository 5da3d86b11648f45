/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Where an opening leads into a room. */
#include "config.h"

#include "supply/doorway.h"

#include "base/ring.h"

static HcPoint
find_inward (const HcRoom *room, const HcRoomWall *wall)
{
  guint n = hc_room_get_n_walls (room);
  g_autofree HcPoint *ring = g_new (HcPoint, n);
  guint edge = 0;

  for (guint i = 0; i < n; i++)
    {
      ring[i] = hc_room_get_wall (room, i)->from;
      if (hc_room_get_wall (room, i) == wall)
        edge = i;
    }
  return hc_ring_edge_normal (ring, n, edge);
}

/**
 * hc_doorway_find: (skip)
 * @room: a room
 * @opening: an opening
 * @doorway: (out): the opening seen from @room
 *
 * Returns: whether @opening is in a wall of @room
 */
gboolean
hc_doorway_find (const HcRoom *room, const HcOpening *opening, HcDoorway *doorway)
{
  const HcOpeningValues *values = hc_opening_get (opening);
  const HcRoomWall *wall = hc_room_get_wall_of (room, opening);
  double face_mm;

  if (wall == NULL)
    return FALSE;
  doorway->width_mm = values->width_mm;
  doorway->along = hc_point_unit (hc_point_subtract (wall->line_to, wall->line_from));
  doorway->in = find_inward (room, wall);
  face_mm = hc_point_dot (hc_point_subtract (wall->from, wall->line_from), doorway->in);
  doorway->first = hc_point_add (
      hc_point_add (wall->line_from,
                    hc_point_scale (doorway->along, values->along_mm - values->width_mm / 2)),
      hc_point_scale (doorway->in, face_mm));
  return TRUE;
}

/**
 * hc_doorway_get_point: (skip)
 * @doorway: a doorway
 * @along_mm: from its first edge along the wall
 * @in_mm: from the wall into the room
 *
 * Returns: a place in front of it
 */
HcPoint
hc_doorway_get_point (const HcDoorway *doorway, double along_mm, double in_mm)
{
  return hc_point_add (doorway->first,
                       hc_point_add (hc_point_scale (doorway->along, along_mm),
                                     hc_point_scale (doorway->in, in_mm)));
}

/**
 * hc_doorway_get_strip: (skip)
 * @doorway: a doorway
 * @from_mm: from the wall to where the strip begins
 * @to_mm: from the wall to where it ends
 * @inset_mm: how far it stays off the edges of the doorway, at either side
 *
 * Returns: (transfer full): the ground in front of it
 */
HcShape *
hc_doorway_get_strip (const HcDoorway *doorway, double from_mm, double to_mm, double inset_mm)
{
  HcPoint corners[] = {
    hc_doorway_get_point (doorway, inset_mm, from_mm),
    hc_doorway_get_point (doorway, doorway->width_mm - inset_mm, from_mm),
    hc_doorway_get_point (doorway, doorway->width_mm - inset_mm, to_mm),
    hc_doorway_get_point (doorway, inset_mm, to_mm),
  };

  return hc_shape_new_polygon (corners, G_N_ELEMENTS (corners));
}
