/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What the floor draws of its own: outlines, handles, catching lines, the band. */
#include "config.h"

#include "app/floor/floor-private.h"

#include "app/floor/floor-drag.h"
#include "app/floor/floor-handle.h"

#include "drawing/fitting-drawing.h"
#include "plan/distances.h"

#include <math.h>

#define OUTLINE_PX 2.0
#define OUTLINE_OFF_PX 4.0
#define DASH_PX 6.0
#define FIGURE_PX 36.0f

static void
set_accent (const HcInk *ink, gpointer floor, double opacity)
{
  GdkRGBA accent;

  if (!gtk_style_context_lookup_color (gtk_widget_get_style_context (floor), "accent_color",
                                       &accent))
    gdk_rgba_parse (&accent, "#3584e4");
  cairo_set_source_rgba (ink->cr, accent.red, accent.green, accent.blue, opacity);
}

/* Selected: a firm outline; focused but not selected: a dashed one. */
static void
stroke_outline (const HcInk *ink, HcFloorItem *item, gpointer floor)
{
  double dash_mm = DASH_PX / ink->scale;

  if (hc_floor_item_is_selected (item) || gtk_widget_has_visible_focus (GTK_WIDGET (item)))
    {
      cairo_save (ink->cr);
      set_accent (ink, floor, 1);
      cairo_set_line_width (ink->cr, OUTLINE_PX / ink->scale);
      if (!hc_floor_item_is_selected (item))
        cairo_set_dash (ink->cr, &dash_mm, 1, 0);
      cairo_stroke_preserve (ink->cr);
      cairo_restore (ink->cr);
    }
  cairo_new_path (ink->cr);
}

void
hc_floor_draw_outline (const HcInk *ink, HcFloorItem *item, gpointer floor)
{
  const HcItemFrame *frame = hc_floor_item_get_frame (item);
  double off_mm = OUTLINE_OFF_PX / ink->scale;

  cairo_rectangle (ink->cr, -frame->width_mm / 2 - off_mm, -frame->depth_mm / 2 - off_mm,
                   frame->width_mm + 2 * off_mm, frame->depth_mm + 2 * off_mm);
  stroke_outline (ink, item, floor);
}

/* The symbol's own frame has its middle where the item has its. */
void
hc_floor_draw_fitting (const HcInk *ink, HcFloorItem *item, gpointer floor)
{
  const HcFittingValues *values = hc_fitting_get (hc_floor_item_get_part (item));

  hc_draw_fitting (ink, values);
  if (hc_floor_item_get_level (item) < HC_LEVEL_GOOD)
    hc_draw_fitting_mark (ink, values, hc_floor_item_get_level (item));
  hc_floor_draw_outline (ink, item, floor);
}

/* A pen is drawn on the ground; only that it is chosen is drawn here, along
 * its walls. */
void
hc_floor_draw_pen (const HcInk *ink, HcFloorItem *item, gpointer floor)
{
  HcPoint centre = hc_floor_item_get_frame (item)->centre;
  g_autoptr (GArray) ring
      = hc_layout_get_pen_ring (((HcFloor *) floor)->layout, hc_floor_item_get_part (item));

  cairo_save (ink->cr);
  cairo_translate (ink->cr, -centre.x_mm, -centre.y_mm);
  hc_ink_ring (ink, (const HcPoint *) ring->data, ring->len);
  cairo_restore (ink->cr);
  stroke_outline (ink, item, floor);
}

void
hc_floor_draw_handle (const HcInk *ink, HcFloorItem *item, gpointer floor)
{
  const HcItemFrame *frame = hc_floor_item_get_frame (item);
  double width = frame->width_mm * 0.8, depth = frame->depth_mm * 0.8;
  HcHandleRole role = hc_floor_item_get_number (item);

  if (role == HC_HANDLE_TURN || role == HC_HANDLE_CORNER)
    hc_ink_circle (ink, 0, 0, width / 2);
  else
    hc_ink_rounded (ink, -width / 2, -depth / 2, width, depth, depth / 4);
  hc_ink_set (ink, HC_PAINT_PAPER, 1);
  cairo_fill_preserve (ink->cr);
  set_accent (ink, floor, 1);
  cairo_set_line_width (ink->cr, OUTLINE_PX / ink->scale);
  cairo_stroke (ink->cr);
  if (gtk_widget_has_visible_focus (GTK_WIDGET (item)))
    {
      hc_ink_circle (ink, 0, 0, MAX (width, depth) / 2 + 3 / ink->scale);
      cairo_stroke (ink->cr);
    }
}

static void
draw_band (const HcInk *ink, HcFloor *self)
{
  HcPoint from = self->drag->from, to = self->drag->to;

  cairo_rectangle (ink->cr, from.x_mm, from.y_mm, to.x_mm - from.x_mm, to.y_mm - from.y_mm);
  set_accent (ink, self, 0.12);
  cairo_fill_preserve (ink->cr);
  set_accent (ink, self, 0.9);
  cairo_set_line_width (ink->cr, 1 / ink->scale);
  cairo_stroke (ink->cr);
}

static void
draw_caught (const HcInk *ink, HcFloor *self)
{
  double dash_mm = DASH_PX / ink->scale;

  cairo_save (ink->cr);
  set_accent (ink, self, 0.9);
  cairo_set_line_width (ink->cr, 1.5 / ink->scale);
  cairo_set_dash (ink->cr, &dash_mm, 1, 0);
  for (guint i = 0; i < self->drag->n_caught; i++)
    {
      const HcSnapCatch *caught = &self->drag->caught[i];

      hc_ink_line (ink, caught->from.x_mm, caught->from.y_mm, caught->to.x_mm, caught->to.y_mm);
      cairo_stroke (ink->cr);
    }
  cairo_restore (ink->cr);
}

/* Lines to walls and neighbours, as far as they go, with room for their
 * figures; a band, or a line that caught something, may be anywhere. */
gboolean
hc_floor_get_marks_extents (gpointer floor, graphene_rect_t *extents)
{
  HcFloor *self = floor;
  const char *const *ids
      = self->layout != NULL
            ? hc_document_get_selection (hc_panel_get_document (HC_PANEL (self)))
            : NULL;
  HcDistance distances[4];
  guint n;

  if (self->drag != NULL && (self->drag->n_caught > 0 || self->drag->kind == HC_DRAG_BAND))
    return TRUE;
  if (ids == NULL || ids[0] == NULL || ids[1] != NULL)
    return FALSE;
  n = hc_layout_measure_around (self->layout, ids[0], distances);
  for (guint i = 0; i < n; i++)
    {
      double x1, y1, x2, y2;
      graphene_rect_t line;

      hc_sight_to_px (&self->sight, distances[i].from, &x1, &y1);
      hc_sight_to_px (&self->sight, distances[i].to, &x2, &y2);
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

  if (self->layout == NULL)
    return;
  hc_floor_draw_distances (ink, self);
  if (self->drag == NULL || !self->drag->claimed)
    return;
  if (self->drag->kind == HC_DRAG_BAND)
    draw_band (ink, self);
  else
    draw_caught (ink, self);
}
