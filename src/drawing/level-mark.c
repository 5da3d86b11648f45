/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A cross for too little, a roof for just enough, one stroke for good, two for
 * plenty. */
#include "config.h"

#include "level-mark.h"

static void
trace_cross (cairo_t *cr)
{
  cairo_move_to (cr, -0.26, -0.26);
  cairo_line_to (cr, 0.26, 0.26);
  cairo_move_to (cr, 0.26, -0.26);
  cairo_line_to (cr, -0.26, 0.26);
}

static void
trace_roof (cairo_t *cr)
{
  cairo_move_to (cr, -0.3, 0.23);
  cairo_line_to (cr, 0, -0.3);
  cairo_line_to (cr, 0.3, 0.23);
  cairo_close_path (cr);
}

static void
trace_tick (cairo_t *cr, double x, double y)
{
  cairo_move_to (cr, x - 0.28, y + 0.02);
  cairo_line_to (cr, x - 0.09, y + 0.22);
  cairo_line_to (cr, x + 0.28, y - 0.24);
}

static void
trace_mark (cairo_t *cr, HcLevel level)
{
  cairo_new_path (cr);
  if (level == HC_LEVEL_SHORT)
    trace_cross (cr);
  else if (level == HC_LEVEL_TIGHT)
    trace_roof (cr);
  else if (level == HC_LEVEL_GOOD)
    trace_tick (cr, 0, 0);
  else
    {
      trace_tick (cr, 0, -0.14);
      trace_tick (cr, 0, 0.14);
    }
}

/**
 * hc_draw_level_mark:
 * @ink: the ink
 * @x_mm: middle of the mark
 * @y_mm: middle of the mark
 * @size_mm: its diameter
 * @level: the level it stands for
 *
 * Draws a disc with the mark of @level on it.
 */
void
hc_draw_level_mark (const HcInk *ink, double x_mm, double y_mm, double size_mm, HcLevel level)
{
  cairo_t *cr = ink->cr;

  g_return_if_fail (size_mm > 0);

  cairo_save (cr);
  cairo_translate (cr, x_mm, y_mm);
  cairo_scale (cr, size_mm, size_mm);
  cairo_new_path (cr);
  cairo_arc (cr, 0, 0, 0.5, 0, 2 * G_PI);
  hc_ink_set (ink, HC_PAINT_PAPER, 1);
  cairo_fill (cr);
  cairo_arc (cr, 0, 0, 0.45, 0, 2 * G_PI);
  hc_ink_set (ink, hc_paint_for_level (level), 1);
  cairo_fill (cr);
  trace_mark (cr, level);
  hc_ink_set (ink, HC_PAINT_PAPER, 1);
  cairo_set_line_width (cr, 0.12);
  cairo_set_line_cap (cr, CAIRO_LINE_CAP_ROUND);
  cairo_set_line_join (cr, CAIRO_LINE_JOIN_ROUND);
  cairo_stroke (cr);
  cairo_restore (cr);
}
