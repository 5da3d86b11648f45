/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The floor of a room, less what stands in the way, less half a walker's
 * width all round. */
#include "config.h"

#include "supply/way.h"

#include "base/shape-ops.h"
#include "supply/floor.h"
#include "supply/stand.h"

/* A gap of exactly the walker's width lets it through. */
#define FORGIVEN_MM 1.0

/**
 * hc_walker_fits_in: (skip)
 * @walker: a walker
 * @room: a room
 *
 * Returns: whether @walker can stand up anywhere in it
 */
gboolean
hc_walker_fits_in (const HcWalker *walker, const HcRoom *room)
{
  g_autoptr (HcShape) high = hc_room_get_floor_with_headroom (room, walker->headroom_mm);

  return !hc_shape_is_empty (high);
}

/* Hung on a hook or stood on the floor, with a handle. */
static gboolean
is_lifted_aside (const HcFitting *fitting)
{
  switch (hc_fitting_get (fitting)->kind)
    {
    case HC_FITTING_FEEDER:
    case HC_FITTING_DRINKER:
    case HC_FITTING_HOPPER:
    case HC_FITTING_DUST_BATH:
    case HC_FITTING_FLOOR_HEAT_PAD:
    case HC_FITTING_HEAT_PLATE:
    case HC_FITTING_HEAT_LAMP:
      return TRUE;
    default:
      return FALSE;
    }
}

/**
 * hc_walker_is_stopped_by: (skip)
 * @walker: a walker
 * @fitting: something in the room
 *
 * Returns: whether @fitting stays where it is, is too high to step over and
 *   too low to pass under
 */
gboolean
hc_walker_is_stopped_by (const HcWalker *walker, const HcFitting *fitting)
{
  double bottom_mm, top_mm;

  hc_stand_get_heights (fitting, &bottom_mm, &top_mm);
  return !is_lifted_aside (fitting) && top_mm > walker->step_over_mm
         && bottom_mm < walker->headroom_mm;
}

/**
 * hc_way_new: (skip)
 * @room: a room
 * @walker: who walks in it
 *
 * Under a sloping roof it is the head that must have room, so the middle stays
 * where it is high enough; the shoulders do not.
 *
 * Returns: (transfer full): where the middle of @walker can be, in one part
 *   for each piece of floor that is cut off from the others
 */
HcShape *
hc_way_new (const HcRoom *room, const HcWalker *walker)
{
  HcParts *fittings = hc_room_get (room)->fittings;
  g_autoptr (HcShape) high = hc_room_get_floor_with_headroom (room, walker->headroom_mm);
  g_autoptr (GPtrArray) things = g_ptr_array_new ();
  g_autoptr (HcShape) taken = NULL;
  g_autoptr (HcShape) free_floor = NULL;
  g_autoptr (HcShape) way = NULL;

  if (hc_shape_is_empty (high))
    return hc_shape_new_empty ();
  for (guint i = 0; i < fittings->len; i++)
    if (hc_walker_is_stopped_by (walker, fittings->pdata[i]))
      g_ptr_array_add (things, hc_room_get_footprint (room, i));
  taken = hc_shape_union ((HcShape *const *) things->pdata, things->len);
  free_floor = hc_shape_difference (hc_room_get_outline (room), taken);
  way = hc_shape_stand_off (free_floor, (walker->width_mm - FORGIVEN_MM) / 2);
  return high == hc_room_get_outline (room) ? g_steal_pointer (&way)
                                            : hc_shape_intersection (way, high);
}
