/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The earth a house stands on and the bedding in it. */
#include "config.h"

#include "side-ground.h"

#include "drawing/ground.h"

#include "base/shape-line.h"

#define GROUND_MM 160.0

/* A layer the book does not know, and one too thin to be seen. */
#define USUAL_MM 60.0
#define LEAST_MM 12.0

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

/* The uppermost layer lies where birds stand, the others under it. */
static void
draw_layers (const HcInk *ink, const HcBook *book, char **layers, const HcStretch *stretch)
{
  double top_mm = 0;

  for (guint i = g_strv_length (layers); i-- > 0;)
    {
      const HcFloorLayer *layer
          = book != NULL ? hc_book_get_floor_layer (book, layers[i]) : NULL;
      double thick_mm = layer != NULL ? MAX (layer->thickness_mm, LEAST_MM) : USUAL_MM;
      HcBox box = { stretch->from_mm, top_mm, stretch->to_mm - stretch->from_mm, thick_mm };

      draw_clipped (ink, box, layers[i], hc_draw_floor_layer);
      hc_ink_rectangle (ink, box.x_mm, box.y_mm, box.width_mm, box.depth_mm);
      hc_ink_stroke (ink, HC_LINE_FINE, HC_PAINT_SOFT_INK);
      top_mm += thick_mm;
    }
}

static void
draw_bedding (const HcInk *ink, const HcPenValues *pen, const HcStretch *stretch)
{
  HcBox box = { stretch->from_mm, -pen->bedding_mm, stretch->to_mm - stretch->from_mm,
                pen->bedding_mm };

  if (pen->bedding != NULL && *pen->bedding != '\0' && pen->bedding_mm > 0)
    draw_clipped (ink, box, pen->bedding, hc_draw_bedding);
}

static void
draw_floor_of (const HcInk *ink, const HcSideScene *scene, const HcRoom *room)
{
  const HcPenValues *pen = hc_room_get (room);
  g_autoptr (GArray) inside
      = hc_shape_clip_line (hc_room_get_outline (room), scene->cut.from, scene->cut.to);

  for (guint i = 0; i < inside->len; i++)
    {
      const HcStretch *stretch = &g_array_index (inside, HcStretch, i);

      if (pen->floor_layers != NULL)
        draw_layers (ink, scene->book, pen->floor_layers, stretch);
      draw_bedding (ink, pen, stretch);
    }
}

/**
 * hc_draw_side_ground: (skip)
 * @ink: the ink, x along the cut, y down from the floor
 * @scene: what is seen
 *
 * Draws the ground the house stands on, the layers of its floors, and the
 * bedding as deep as it is.
 */
void
hc_draw_side_ground (const HcInk *ink, const HcSideScene *scene)
{
  double length_mm = hc_point_distance (scene->cut.from, scene->cut.to);

  draw_clipped (ink, (HcBox){ 0, 0, length_mm, GROUND_MM }, "earth", hc_draw_floor_layer);
  for (guint i = 0; i < hc_house_get_n_rooms (scene->house); i++)
    draw_floor_of (ink, scene, hc_house_get_room (scene->house, i));
  cairo_new_path (ink->cr);
  hc_ink_line (ink, 0, 0, length_mm, 0);
  hc_ink_stroke (ink, HC_LINE_HEAVY, HC_PAINT_INK);
}
