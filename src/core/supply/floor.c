/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The floor that counts, as a shape. */
#include "config.h"

#include "supply/floor.h"

#include "base/shape-ops.h"
#include "base/shape-relate.h"
#include "supply/stand.h"

static gboolean
ceiling_is_lower (const HcRoom *room, double headroom_mm)
{
  return hc_room_get_ceiling_mm (room) < headroom_mm - HC_SHAPE_TOUCH_MM;
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
 *   without what is then too narrow; empty under too low a ceiling
 */
HcShape *
hc_room_get_floor_that_counts (HcRoom *room, double headroom_mm, double least_width_mm)
{
  HcShape *outline = hc_room_get_outline (room);
  g_autoptr (GPtrArray) taken = NULL;

  if (hc_shape_is_empty (outline) || ceiling_is_lower (room, headroom_mm))
    return hc_shape_new_empty ();
  taken = find_footprints (room, headroom_mm);
  return hc_shape_free_floor (outline, (HcShape *const *) taken->pdata, taken->len,
                              least_width_mm);
}

/* Whether the same things take floor from bodies with two headrooms: the higher
 * one never loses less. */
gboolean
hc_room_loses_same_floor (const HcRoom *room, double one_mm, double other_mm)
{
  g_autoptr (GPtrArray) one = find_footprints (room, one_mm);
  g_autoptr (GPtrArray) other = find_footprints (room, other_mm);

  return one->len == other->len
         && ceiling_is_lower (room, one_mm) == ceiling_is_lower (room, other_mm);
}

HcPoint
hc_room_get_middle (const HcRoom *room)
{
  return hc_box_centre (hc_shape_get_bounds (hc_room_get_outline (room)));
}
