/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What warms chicks from below and from just above: the floor pad and the
 * raised plate. */
#include "config.h"

#include "symbol.h"

#define WIRE_APART_MM 45.0
#define LEG_MM 26.0

/* The heating wire runs to and fro. */
static void
trace_wire (cairo_t *cr, double left, double top, double width, double depth)
{
  guint turns = (guint) CLAMP (depth / WIRE_APART_MM, 2, 40);
  double apart = depth / turns;

  cairo_new_path (cr);
  cairo_move_to (cr, left, top + apart / 2);
  for (guint i = 0; i < turns; i++)
    {
      double y = top + apart * (i + 0.5);
      double from = i % 2 ? left + width : left;
      double to = i % 2 ? left : left + width;

      cairo_line_to (cr, from, y);
      cairo_line_to (cr, to, y);
    }
}

void
hc_symbol_floor_heat_pad (const HcInk *ink, const HcFittingValues *values)
{
  HcSymbolFrame f = hc_symbol_frame (ink, values);
  double edge = MIN (f.width, f.depth) * 0.1;

  hc_ink_rounded (ink, f.left, f.top, f.width, f.depth, edge);
  hc_ink_fill (ink, HC_PAINT_GLOW);
  hc_symbol_outline (ink, values);
  trace_wire (ink->cr, f.left + edge, f.top + edge, f.width - 2 * edge, f.depth - 2 * edge);
  cairo_set_line_join (ink->cr, CAIRO_LINE_JOIN_ROUND);
  hc_ink_stroke (ink, HC_LINE_MEDIUM, HC_PAINT_WARMTH);
}

static void
draw_leg (const HcInk *ink, double x, double y, double size)
{
  hc_ink_circle (ink, x, y, size / 2);
  hc_ink_fill (ink, HC_PAINT_METAL_PALE);
  hc_ink_stroke (ink, HC_LINE_FINE, HC_PAINT_INK);
}

void
hc_symbol_heat_plate (const HcInk *ink, const HcFittingValues *values)
{
  HcSymbolFrame f = hc_symbol_frame (ink, values);
  double leg = MIN (LEG_MM, MIN (f.width, f.depth) / 7);
  double in = leg;

  hc_ink_rounded (ink, f.left, f.top, f.width, f.depth, leg * 1.4);
  hc_ink_fill (ink, HC_PAINT_WARMTH);
  hc_symbol_outline (ink, values);
  hc_ink_rounded (ink, f.left + 2 * in, f.top + 2 * in, f.width - 4 * in, f.depth - 4 * in, leg);
  hc_ink_wash (ink, HC_PAINT_GLOW, 0.75);
  hc_ink_stroke (ink, HC_LINE_FINE, HC_PAINT_INK);
  for (guint i = 0; i < 4; i++)
    draw_leg (ink, i % 2 ? f.left + in : f.left + f.width - in,
              i / 2 ? f.top + in : f.top + f.depth - in, leg);
}
