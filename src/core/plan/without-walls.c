/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Takes walls away and what only they needed. */
#include "config.h"

#include "plan/without-walls.h"

#include "plan/split-wall.h"
#include "plan/wall-corners.h"

/**
 * hc_edit_drop_wall: (skip)
 * @values: (inout): held values of a layout
 * @wall: id of a wall that goes, with its openings
 */
void
hc_edit_drop_wall (HcLayoutValues *values, const char *wall)
{
  g_autoptr (HcParts) openings = g_ptr_array_ref (values->openings);

  for (guint i = 0; i < openings->len; i++)
    if (g_strcmp0 (hc_opening_get (openings->pdata[i])->wall, wall) == 0)
      hc_edit_drop (&values->openings, hc_opening_get_id (openings->pdata[i]));
  hc_edit_drop (&values->walls, wall);
}

static void
drop_bare_corners (const HcLayout *layout, HcLayoutValues *values)
{
  HcParts *corners = hc_layout_get (layout)->corners;
  g_autoptr (HcLayout) after = hc_layout_with ((HcLayout *) layout, values);

  for (guint i = 0; i < corners->len; i++)
    {
      const char *id = hc_corner_get_id (corners->pdata[i]);
      g_autoptr (GPtrArray) before_walls = hc_corner_get_walls (layout, id);
      g_autoptr (GPtrArray) walls = hc_corner_get_walls (after, id);

      if (walls->len == 0 && before_walls->len > 0)
        hc_edit_drop (&values->corners, id);
    }
}

/* A corner that only a removed pen needed leaves a straight wall behind. */
static HcLayout *
joined_where_straight (HcLayout *layout, const GArray *places)
{
  g_autoptr (HcLayout) joined = hc_layout_ref (layout);

  for (guint i = 0; i < places->len; i++)
    {
      HcCorner *corner = hc_layout_find_corner_at (joined, g_array_index (places, HcPoint, i));
      HcLayout *fewer = NULL;

      if (corner != NULL && hc_layout_is_plain_corner (joined, hc_corner_get_id (corner)))
        fewer = hc_layout_join_walls_at (joined, hc_corner_get_id (corner), NULL);
      if (fewer == NULL)
        continue;
      hc_layout_unref (joined);
      joined = fewer;
    }
  return g_steal_pointer (&joined);
}

/**
 * hc_layout_without_bare_corners: (skip)
 * @layout: a layout
 * @values: (inout): its values, held, without some of its walls
 * @places: (element-type HcPoint): where walls went
 *
 * Returns: (transfer full): the layout with @values, without corners that no
 *   wall needs any more
 */
HcLayout *
hc_layout_without_bare_corners (HcLayout *layout, HcLayoutValues *values, const GArray *places)
{
  g_autoptr (HcLayout) after = NULL;

  drop_bare_corners (layout, values);
  after = hc_layout_with (layout, values);
  return joined_where_straight (after, places);
}
