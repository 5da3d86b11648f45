/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The floor that counts, as a shape. */
#include "config.h"

#include "supply/floor.h"

#include "base/shape-ops.h"
#include "base/shape-relate.h"
#include "supply/stand.h"

/* Wide enough for any floor. */
#define FAR_MM 1e7

static gboolean
has_headroom_everywhere (const HcRoom *room, double headroom_mm)
{
  return hc_room_get_ceiling_over_mm (room, hc_room_get_outline (room))
         >= headroom_mm - HC_SHAPE_TOUCH_MM;
}

/**
 * hc_room_get_floor_with_headroom: (skip)
 * @room: a room
 * @headroom_mm: how high it must be
 *
 * Returns: (transfer full): the part of the floor over which a sloping roof is
 *   high enough
 */
HcShape *
hc_room_get_floor_with_headroom (const HcRoom *room, double headroom_mm)
{
  const HcRoof *roof = hc_room_get_roof (room);
  HcPoint along = { -roof->across.y_mm, roof->across.x_mm };
  double from_mm, to_mm;
  HcPoint near, far, aside;
  g_autoptr (HcShape) band = NULL;

  if (has_headroom_everywhere (room, headroom_mm))
    return hc_shape_ref (hc_room_get_outline (room));
  if (!hc_roof_find_band (roof, headroom_mm - HC_SHAPE_TOUCH_MM, &from_mm, &to_mm)
      || to_mm <= from_mm)
    return hc_shape_new_empty ();
  near = hc_point_scale (roof->across, from_mm);
  far = hc_point_scale (roof->across, to_mm);
  aside = hc_point_scale (along, FAR_MM);
  band = hc_shape_new_polygon (
      (HcPoint[]){ hc_point_subtract (near, aside), hc_point_subtract (far, aside),
                   hc_point_add (far, aside), hc_point_add (near, aside) },
      4);
  return hc_shape_intersection (hc_room_get_outline (room), band);
}

static GPtrArray *
find_footprints (const HcRoom *room, double headroom_mm)
{
  HcParts *fittings = hc_room_get (room)->fittings;
  GPtrArray *taken = g_ptr_array_new ();

  for (guint i = 0; i < fittings->len; i++)
    if (hc_stand_takes_floor (fittings->pdata[i], headroom_mm))
      g_ptr_array_add (taken, hc_room_get_footprint (room, i));
  return taken;
}

/**
 * hc_room_get_floor_that_counts: (skip)
 * @room: a room
 * @headroom_mm: what a bird needs above it
 * @least_width_mm: how wide floor must be to count
 *
 * Returns: (transfer full): the floor of @room without what stands on it, and
 *   without what is then too narrow, or under too low a ceiling
 */
HcShape *
hc_room_get_floor_that_counts (HcRoom *room, double headroom_mm, double least_width_mm)
{
  g_autoptr (HcShape) outline = hc_room_get_floor_with_headroom (room, headroom_mm);
  g_autoptr (GPtrArray) taken = NULL;

  if (hc_shape_is_empty (outline))
    return hc_shape_new_empty ();
  taken = find_footprints (room, headroom_mm);
  return hc_shape_free_floor (outline, (HcShape *const *) taken->pdata, taken->len,
                              least_width_mm);
}

/* Whether the same things and no ceiling take floor from bodies with two
 * headrooms: the higher one never loses less. */
gboolean
hc_room_loses_same_floor (const HcRoom *room, double one_mm, double other_mm)
{
  g_autoptr (GPtrArray) one = find_footprints (room, one_mm);
  g_autoptr (GPtrArray) other = find_footprints (room, other_mm);

  return one->len == other->len
         && has_headroom_everywhere (room, MAX (one_mm, other_mm));
}

HcPoint
hc_room_get_middle (const HcRoom *room)
{
  return hc_box_centre (hc_shape_get_bounds (hc_room_get_outline (room)));
}
