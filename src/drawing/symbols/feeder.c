/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Feeders: a trough with its rail, or a tube over a round pan. */
#include "config.h"

#include "symbol.h"

#include <math.h>

#define GRAIN_MM 14.0
#define RAIL_MM 12.0

static void
draw_grains (const HcInk *ink, const HcFittingValues *values, gboolean round_pan)
{
  guint seed = hc_symbol_seed (values);
  double w = values->width_mm, d = values->depth_mm;
  guint grains = (guint) MIN (w * d / 1800, 260);

  if (!hc_ink_shows (ink, GRAIN_MM / 2))
    return;
  cairo_new_path (ink->cr);
  for (guint i = 0; i < grains; i++)
    {
      double turn = 2 * G_PI * hc_chance (seed, 2 * i);
      double out = 0.38 + 0.06 * hc_chance (seed, 2 * i + 1);
      double x = round_pan ? w * out * cos (turn) : (w - 50) * (hc_chance (seed, 2 * i) - 0.5);
      double y = round_pan ? d * out * sin (turn) : d * 0.5 * (hc_chance (seed, 2 * i + 1) - 0.5);

      cairo_new_sub_path (ink->cr);
      cairo_arc (ink->cr, x, y, GRAIN_MM / 4, 0, 2 * G_PI);
    }
  hc_ink_set (ink, HC_PAINT_FEED_DARK, 0.75);
  cairo_fill (ink->cr);
}

static void
draw_trough (const HcInk *ink, const HcFittingValues *values)
{
  HcSymbolFrame f = hc_symbol_frame (ink, values);
  double lip = MIN (f.depth * 0.16, 22);

  hc_ink_rounded (ink, f.left, f.top, f.width, f.depth, lip);
  hc_ink_fill (ink, HC_PAINT_METAL_PALE);
  hc_symbol_outline (ink, values);
  hc_ink_rounded (ink, f.left + lip, f.top + lip, f.width - 2 * lip, f.depth - 2 * lip, lip);
  hc_ink_fill (ink, HC_PAINT_FEED);
  hc_ink_stroke (ink, HC_LINE_FINE, HC_PAINT_METAL_DARK);
  draw_grains (ink, values, FALSE);
}

/* The rail keeps birds from standing in the feed. */
static void
draw_rail (const HcInk *ink, const HcFittingValues *values)
{
  HcSymbolFrame f = hc_symbol_frame (ink, values);
  double rail = MIN (RAIL_MM, f.depth / 8);

  if (!hc_ink_shows (ink, rail))
    return;
  hc_ink_rounded (ink, f.left + rail, -rail / 2, f.width - 2 * rail, rail, rail / 2);
  hc_ink_fill (ink, HC_PAINT_METAL);
  hc_ink_stroke (ink, HC_LINE_HAIR, HC_PAINT_INK);
}

static void
draw_tube (const HcInk *ink, double rx, double ry)
{
  hc_ink_ellipse (ink, 0, 0, rx, ry);
  hc_ink_fill (ink, HC_PAINT_METAL);
  hc_ink_stroke (ink, HC_LINE_FINE, HC_PAINT_INK);
  hc_ink_ellipse (ink, 0, 0, rx * 0.8, ry * 0.8);
  hc_ink_fill (ink, HC_PAINT_FEED);
  hc_ink_stroke (ink, HC_LINE_HAIR, HC_PAINT_METAL_DARK);
  hc_ink_ellipse (ink, -rx * 0.1, -ry * 0.1, rx * 0.4, ry * 0.4);
  hc_ink_wash (ink, HC_PAINT_PAPER, 0.25);
  cairo_new_path (ink->cr);
  hc_ink_line (ink, -rx, 0, rx, 0);
  hc_ink_stroke (ink, HC_LINE_FINE, HC_PAINT_METAL_DARK);
}

static void
draw_pan (const HcInk *ink, const HcFittingValues *values)
{
  HcSymbolFrame f = hc_symbol_frame (ink, values);
  double rx = f.width / 2, ry = f.depth / 2;

  hc_ink_ellipse (ink, 0, 0, rx, ry);
  hc_ink_fill (ink, HC_PAINT_METAL_PALE);
  hc_symbol_outline (ink, values);
  hc_ink_ellipse (ink, 0, 0, rx * 0.92, ry * 0.92);
  hc_ink_fill (ink, HC_PAINT_FEED);
  hc_ink_stroke (ink, HC_LINE_HAIR, HC_PAINT_METAL_DARK);
  draw_grains (ink, values, TRUE);
  draw_tube (ink, rx * 0.66, ry * 0.66);
}

void
hc_symbol_feeder (const HcInk *ink, const HcFittingValues *values)
{
  if (values->form == HC_FORM_ROUND)
    draw_pan (ink, values);
  else
    {
      draw_trough (ink, values);
      draw_rail (ink, values);
    }
}
