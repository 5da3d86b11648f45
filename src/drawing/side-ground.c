/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The earth a house stands on and the bedding in it. */
#include "config.h"

#include "side-ground.h"

#include "drawing/ground.h"

#include "base/shape-line.h"

#define GROUND_MM 160.0

static void
draw_clipped (const HcInk *ink, HcBox box, const char *material,
              void (*draw) (const HcInk *, const char *, HcBox))
{
  cairo_save (ink->cr);
  hc_ink_rectangle (ink, box.x_mm, box.y_mm, box.width_mm, box.depth_mm);
  cairo_clip (ink->cr);
  draw (ink, material, box);
  cairo_restore (ink->cr);
}

static void
draw_bedding_of (const HcInk *ink, const HcRoom *room, const HcSideCut *cut)
{
  const HcPenValues *pen = hc_room_get (room);
  g_autoptr (GArray) inside
      = hc_shape_clip_line (hc_room_get_outline (room), cut->from, cut->to);

  if (pen->bedding == NULL || *pen->bedding == '\0' || pen->bedding_mm <= 0)
    return;
  for (guint i = 0; i < inside->len; i++)
    {
      const HcStretch *stretch = &g_array_index (inside, HcStretch, i);

      draw_clipped (ink,
                    (HcBox){ stretch->from_mm, -pen->bedding_mm,
                             stretch->to_mm - stretch->from_mm, pen->bedding_mm },
                    pen->bedding, hc_draw_bedding);
    }
}

/**
 * hc_draw_side_ground: (skip)
 * @ink: the ink, x along the cut, y down from the floor
 * @house: the house
 * @cut: the cut
 *
 * Draws the ground the house stands on, and the bedding as deep as it is.
 */
void
hc_draw_side_ground (const HcInk *ink, const HcHouse *house, const HcSideCut *cut)
{
  double length_mm = hc_point_distance (cut->from, cut->to);

  draw_clipped (ink, (HcBox){ 0, 0, length_mm, GROUND_MM }, "earth", hc_draw_floor_layer);
  for (guint i = 0; i < hc_house_get_n_rooms (house); i++)
    draw_bedding_of (ink, hc_house_get_room (house, i), cut);
  cairo_new_path (ink->cr);
  hc_ink_line (ink, 0, 0, length_mm, 0);
  hc_ink_stroke (ink, HC_LINE_HEAVY, HC_PAINT_INK);
}
