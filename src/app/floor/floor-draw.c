/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What the floor draws of what is chosen and dragged. */
#include "config.h"

#include "app/floor/floor-handle.h"
#include "app/floor/floor-private.h"

#include "drawing/fitting-drawing.h"
#include "plan/distances.h"

#include <math.h>

#define FIGURE_PX 36.0f

/* The symbol's own frame has its middle where the item has its. */
void
hc_floor_draw_fitting (const HcInk *ink, HcCanvasItem *item, gpointer floor)
{
  const HcFittingValues *values = hc_fitting_get (hc_canvas_item_get_part (item));

  hc_draw_fitting (ink, values);
  if (hc_canvas_item_get_level (item) < HC_LEVEL_GOOD)
    hc_draw_fitting_mark (ink, values, hc_canvas_item_get_level (item));
  hc_canvas_draw_outline (ink, item, floor);
}

/* A pen is drawn on the ground; only that it is chosen is drawn here, along
 * its walls. */
void
hc_floor_draw_pen (const HcInk *ink, HcCanvasItem *item, gpointer floor)
{
  HcPoint centre = hc_canvas_item_get_frame (item)->centre;
  g_autoptr (GArray) ring
      = hc_layout_get_pen_ring (((HcCanvas *) floor)->layout, hc_canvas_item_get_part (item));

  cairo_save (ink->cr);
  cairo_translate (ink->cr, -centre.x_mm, -centre.y_mm);
  hc_ink_ring (ink, (const HcPoint *) ring->data, ring->len);
  cairo_restore (ink->cr);
  hc_canvas_stroke_outline (ink, item, floor);
}

void
hc_floor_draw_handle (const HcInk *ink, HcCanvasItem *item, gpointer floor)
{
  HcHandleRole role = hc_canvas_item_get_number (item);

  hc_canvas_draw_handle (ink, item, role == HC_HANDLE_TURN || role == HC_HANDLE_CORNER, floor);
}

/* Lines to walls and neighbours, as far as they go, with room for their
 * figures; a band, or a line that caught something, may be anywhere. */
gboolean
hc_floor_get_marks_extents (gpointer floor, graphene_rect_t *extents)
{
  HcFloor *self = floor;
  const char *const *ids
      = self->canvas.layout != NULL
            ? hc_document_get_selection (hc_panel_get_document (HC_PANEL (self)))
            : NULL;
  HcDistance distances[4];
  guint n;

  if (self->canvas.drag != NULL && (self->canvas.drag->n_caught > 0 || self->canvas.drag->kind == HC_DRAG_BAND))
    return TRUE;
  if (ids == NULL || ids[0] == NULL || ids[1] != NULL)
    return FALSE;
  n = hc_layout_measure_around (self->canvas.layout, ids[0], distances);
  for (guint i = 0; i < n; i++)
    {
      double x1, y1, x2, y2;
      graphene_rect_t line;

      hc_sight_to_px (&self->canvas.sight, distances[i].from, &x1, &y1);
      hc_sight_to_px (&self->canvas.sight, distances[i].to, &x2, &y2);
      graphene_rect_init (&line, (float) MIN (x1, x2), (float) MIN (y1, y2),
                          (float) fabs (x2 - x1), (float) fabs (y2 - y1));
      graphene_rect_inset (&line, -FIGURE_PX, -FIGURE_PX);
      if (i == 0)
        *extents = line;
      else
        graphene_rect_union (extents, &line, extents);
    }
  return n > 0;
}

void
hc_floor_draw_marks (const HcInk *ink, gpointer floor)
{
  HcFloor *self = floor;

  if (self->canvas.layout == NULL)
    return;
  hc_floor_draw_distances (ink, self);
  if (self->canvas.drag == NULL || !self->canvas.drag->claimed)
    return;
  if (self->canvas.drag->kind == HC_DRAG_BAND)
    hc_canvas_draw_band (ink, &self->canvas);
  else
    hc_canvas_draw_caught (ink, &self->canvas);
}
