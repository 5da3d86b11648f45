/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Looks on ever wider squares round a place. */
#include "config.h"

#include "supply/free-place.h"

#include "base/shape-relate.h"
#include "supply/stand.h"

#define STEP_MM 100.0
#define MOST_SQUARES 100

static gboolean
has_room_at (const HcRoom *room, const HcShape *footprint, HcPoint move)
{
  g_autoptr (HcShape) there = hc_shape_turn_and_move (footprint, 0, move);
  g_autoptr (GArray) near = hc_room_find_fittings (room, hc_shape_get_bounds (there));

  if (!hc_shape_contains (hc_room_get_outline (room), there))
    return FALSE;
  for (guint i = 0; i < near->len; i++)
    if (hc_shape_intersects (hc_room_get_footprint (room, g_array_index (near, guint, i)), there))
      return FALSE;
  return TRUE;
}

/* The places on a square, the sides of which are 2 × @square steps long. */
static gboolean
find_on_square (const HcRoom *room, const HcShape *footprint, HcPoint start, int square,
                HcPoint *found)
{
  for (int x = -square; x <= square; x++)
    for (int y = -square; y <= square; y += ABS (x) == square ? 1 : MAX (1, 2 * square))
      {
        HcPoint move = hc_point_add (start, hc_point (x * STEP_MM, y * STEP_MM));

        if (!has_room_at (room, footprint, move))
          continue;
        *found = move;
        return TRUE;
      }
  return FALSE;
}

/**
 * hc_room_find_free_place: (skip)
 * @room: a room
 * @thing: what is to stand in it
 * @near: where it would best stand, mm
 *
 * Returns: the place for the middle of @thing nearest to @near, to 100 mm, where
 *   it lies over nothing; @near when the room is full
 */
HcPoint
hc_room_find_free_place (const HcRoom *room, const HcFitting *thing, HcPoint near)
{
  const HcFittingValues *values = hc_fitting_get (thing);
  HcPoint middle = { values->x_mm, values->y_mm };
  g_autoptr (HcShape) footprint = hc_stand_get_footprint (thing);
  HcPoint start = hc_point_subtract (near, middle);
  HcPoint move;

  for (int square = 0; square <= MOST_SQUARES; square++)
    if (find_on_square (room, footprint, start, square, &move))
      return hc_point_add (middle, move);
  return near;
}
