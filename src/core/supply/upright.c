/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Straight up and straight down from a thing: headroom and drop. */
#include "config.h"

#include "supply/upright.h"

#include "base/shape-relate.h"
#include "supply/stand.h"

/* Things that only touch seen from above are not over each other. */
#define TOUCHING_MM2 100.0

static void
meet (const HcRoom *room, guint other, HcUpright *found)
{
  const HcFitting *fitting = hc_room_get (room)->fittings->pdata[other];
  double bottom_mm, top_mm;

  hc_stand_get_heights (fitting, &bottom_mm, &top_mm);
  if (top_mm <= found->bottom_mm && top_mm > found->under_mm)
    {
      found->under_mm = top_mm;
      found->under_id = hc_fitting_get_id (fitting);
    }
  if (bottom_mm >= found->top_mm && bottom_mm < found->over_mm)
    {
      found->over_mm = bottom_mm;
      found->over_id = hc_fitting_get_id (fitting);
    }
}

static void
meet_neighbours (const HcRoom *room, guint index, HcUpright *found)
{
  HcShape *footprint = hc_room_get_footprint (room, index);
  g_autoptr (GArray) near = hc_room_find_fittings (room, hc_shape_get_bounds (footprint));

  for (guint i = 0; i < near->len; i++)
    {
      guint other = g_array_index (near, guint, i);

      if (other != index && hc_shape_overlaps (hc_room_get_footprint (room, other), footprint, TOUCHING_MM2))
        meet (room, other, found);
    }
}

/**
 * hc_house_measure_upright: (skip)
 * @house: a house
 * @fitting: id of a thing
 * @found: (out): the room over it and under it
 *
 * Returns: whether it stands in a pen of the house
 */
gboolean
hc_house_measure_upright (const HcHouse *house, const char *fitting, HcUpright *found)
{
  HcPen *pen = NULL;
  HcFitting *thing = hc_layout_get_fitting (hc_house_get_layout (house), fitting, &pen);
  const HcRoom *room;
  guint at, index;

  if (thing == NULL || pen == NULL || !hc_house_find_room (house, hc_pen_get_id (pen), &at))
    return FALSE;
  room = hc_house_get_room (house, at);
  if (!hc_parts_find_index (hc_room_get (room)->fittings, fitting, &index))
    return FALSE;
  hc_stand_get_heights (thing, &found->bottom_mm, &found->top_mm);
  found->under_id = found->over_id = NULL;
  found->under_mm = MIN (hc_room_get (room)->bedding_mm, found->bottom_mm);
  found->over_mm = hc_room_get_ceiling_over_mm (room, hc_room_get_footprint (room, index));
  meet_neighbours (room, index, found);
  return TRUE;
}
