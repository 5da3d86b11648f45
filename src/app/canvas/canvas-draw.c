/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What every canvas draws of its own: outlines, handles, catching lines, the band. */
#include "config.h"

#include "app/canvas/canvas.h"

#include "drawing/text.h"
#include "words/caught.h"

#include <math.h>

#define OUTLINE_PX 2.0
#define OUTLINE_OFF_PX 4.0
#define DASH_PX 6.0
#define WORD_OFF_PX 4.0

void
hc_canvas_set_accent (const HcInk *ink, gpointer canvas, double opacity)
{
  GdkRGBA accent;

  if (!gtk_style_context_lookup_color (gtk_widget_get_style_context (canvas), "accent_color",
                                       &accent))
    gdk_rgba_parse (&accent, "#3584e4");
  cairo_set_source_rgba (ink->cr, accent.red, accent.green, accent.blue, opacity);
}

/**
 * hc_canvas_stroke_outline: (skip)
 * @ink: the ink, with the outline as its path
 * @item: an item
 * @canvas: its canvas
 *
 * Selected: a firm outline; focused but not selected: a dashed one.
 */
void
hc_canvas_stroke_outline (const HcInk *ink, HcCanvasItem *item, gpointer canvas)
{
  double dash_mm = DASH_PX / ink->scale;

  if (hc_canvas_item_is_selected (item) || gtk_widget_has_visible_focus (GTK_WIDGET (item)))
    {
      cairo_save (ink->cr);
      hc_canvas_set_accent (ink, canvas, 1);
      cairo_set_line_width (ink->cr, OUTLINE_PX / ink->scale);
      if (!hc_canvas_item_is_selected (item))
        cairo_set_dash (ink->cr, &dash_mm, 1, 0);
      cairo_stroke_preserve (ink->cr);
      cairo_restore (ink->cr);
    }
  cairo_new_path (ink->cr);
}

void
hc_canvas_draw_outline (const HcInk *ink, HcCanvasItem *item, gpointer canvas)
{
  const HcItemFrame *frame = hc_canvas_item_get_frame (item);
  double off_mm = OUTLINE_OFF_PX / ink->scale;

  cairo_rectangle (ink->cr, -frame->width_mm / 2 - off_mm, -frame->depth_mm / 2 - off_mm,
                   frame->width_mm + 2 * off_mm, frame->depth_mm + 2 * off_mm);
  hc_canvas_stroke_outline (ink, item, canvas);
}

/**
 * hc_canvas_draw_handle: (skip)
 * @ink: the ink
 * @item: a handle
 * @round: whether it moves both ways
 * @canvas: its canvas
 */
void
hc_canvas_draw_handle (const HcInk *ink, HcCanvasItem *item, gboolean round, gpointer canvas)
{
  const HcItemFrame *frame = hc_canvas_item_get_frame (item);
  double width = frame->width_mm * 0.8, depth = frame->depth_mm * 0.8;

  if (round)
    hc_ink_circle (ink, 0, 0, width / 2);
  else
    hc_ink_rounded (ink, -width / 2, -depth / 2, width, depth, depth / 4);
  hc_ink_set (ink, HC_PAINT_PAPER, 1);
  cairo_fill_preserve (ink->cr);
  hc_canvas_set_accent (ink, canvas, 1);
  cairo_set_line_width (ink->cr, OUTLINE_PX / ink->scale);
  cairo_stroke (ink->cr);
  if (gtk_widget_has_visible_focus (GTK_WIDGET (item)))
    {
      hc_ink_circle (ink, 0, 0, MAX (width, depth) / 2 + 3 / ink->scale);
      cairo_stroke (ink->cr);
    }
}

void
hc_canvas_draw_band (const HcInk *ink, HcCanvas *self)
{
  HcPoint from = self->drag->from, to = self->drag->to;

  cairo_rectangle (ink->cr, from.x_mm, from.y_mm, to.x_mm - from.x_mm, to.y_mm - from.y_mm);
  hc_canvas_set_accent (ink, self, 0.12);
  cairo_fill_preserve (ink->cr);
  hc_canvas_set_accent (ink, self, 0.9);
  cairo_set_line_width (ink->cr, 1 / ink->scale);
  cairo_stroke (ink->cr);
}

/* Beside the end of the line, on the side that leads away from it. */
static void
draw_word_of (const HcInk *ink, const HcSnapCatch *caught)
{
  gboolean level = fabs (caught->to.x_mm - caught->from.x_mm)
                   > fabs (caught->to.y_mm - caught->from.y_mm);
  double off_mm = WORD_OFF_PX / ink->scale;

  hc_draw_text (ink, HC_HAND_SMALL, hc_words_caught (caught->kind),
                caught->to.x_mm + (level ? 0 : off_mm), caught->to.y_mm - (level ? off_mm : 0),
                level ? 1 : 0, 1, 0, HC_PAINT_INK);
}

void
hc_canvas_draw_caught (const HcInk *ink, HcCanvas *self)
{
  double dash_mm = DASH_PX / ink->scale;

  cairo_save (ink->cr);
  hc_canvas_set_accent (ink, self, 0.9);
  cairo_set_line_width (ink->cr, 1.5 / ink->scale);
  cairo_set_dash (ink->cr, &dash_mm, 1, 0);
  for (guint i = 0; i < self->drag->n_caught; i++)
    {
      const HcSnapCatch *caught = &self->drag->caught[i];

      hc_ink_line (ink, caught->from.x_mm, caught->from.y_mm, caught->to.x_mm, caught->to.y_mm);
      cairo_stroke (ink->cr);
    }
  cairo_restore (ink->cr);
  for (guint i = 0; i < self->drag->n_caught; i++)
    draw_word_of (ink, &self->drag->caught[i]);
}
