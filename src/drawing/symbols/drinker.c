/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Drinkers: a font in its ring of water, a trough, a line of nipples or
 * cups. */
#include "config.h"

#include "symbol.h"

#include <math.h>

#define RIPPLE_MM 90.0
#define MOST_DRAWN 200

static void
draw_ripples (const HcInk *ink, double width, double depth, guint seed)
{
  guint ripples = (guint) CLAMP (width / 160, 1, 40);

  if (!hc_ink_shows (ink, depth / 6))
    return;
  cairo_new_path (ink->cr);
  for (guint i = 0; i < ripples; i++)
    {
      double length = MIN (RIPPLE_MM, width / 3) * (0.5 + 0.5 * hc_chance (seed, 3 * i));
      double x = (width - length) * ((i + hc_chance (seed, 3 * i + 1)) / ripples - 0.5)
                 - length / 2;
      double y = depth * 0.6 * (hc_chance (seed, 3 * i + 2) - 0.5);

      cairo_move_to (ink->cr, x, y);
      cairo_curve_to (ink->cr, x + length / 3, y - depth / 12, x + 2 * length / 3,
                      y + depth / 12, x + length, y);
    }
  hc_ink_stroke (ink, HC_LINE_FINE, HC_PAINT_WATER_DEEP);
}

static void
draw_trough (const HcInk *ink, const HcFittingValues *values)
{
  HcSymbolFrame f = hc_symbol_frame (ink, values);
  double lip = MIN (f.depth * 0.14, 20);
  double inner_w = f.width - 2 * lip, inner_d = f.depth - 2 * lip;

  hc_ink_rounded (ink, f.left, f.top, f.width, f.depth, 2 * lip);
  hc_ink_fill (ink, HC_PAINT_METAL);
  hc_symbol_outline (ink, values);
  hc_ink_rounded (ink, f.left + lip, f.top + lip, inner_w, inner_d, 2 * lip);
  hc_ink_fill (ink, HC_PAINT_WATER);
  hc_ink_stroke (ink, HC_LINE_FINE, HC_PAINT_METAL_DARK);
  draw_ripples (ink, inner_w * 0.9, inner_d, hc_symbol_seed (values));
}

static void
draw_font (const HcInk *ink, const HcFittingValues *values)
{
  HcSymbolFrame f = hc_symbol_frame (ink, values);
  double rx = f.width / 2, ry = f.depth / 2;

  hc_ink_ellipse (ink, 0, 0, rx, ry);
  hc_ink_fill (ink, HC_PAINT_METAL_PALE);
  hc_symbol_outline (ink, values);
  hc_ink_ellipse (ink, 0, 0, rx * 0.9, ry * 0.9);
  hc_ink_fill (ink, HC_PAINT_WATER);
  hc_ink_stroke (ink, HC_LINE_FINE, HC_PAINT_WATER_DEEP);
  hc_ink_ellipse (ink, 0, 0, rx * 0.62, ry * 0.62);
  hc_ink_fill (ink, HC_PAINT_METAL_PALE);
  hc_ink_stroke (ink, HC_LINE_FINE, HC_PAINT_INK);
  hc_ink_ellipse (ink, 0, 0, rx * 0.4, ry * 0.4);
  hc_ink_stroke (ink, HC_LINE_HAIR, HC_PAINT_METAL_DARK);
  hc_ink_rounded (ink, -rx * 0.22, -ry * 0.06, rx * 0.44, ry * 0.12, ry * 0.06);
  hc_ink_fill (ink, HC_PAINT_METAL_DARK);
  cairo_new_path (ink->cr);
}

static void
draw_pipe (const HcInk *ink, const HcFittingValues *values)
{
  HcSymbolFrame f = hc_symbol_frame (ink, values);
  double pipe = f.depth * 0.34;

  hc_ink_rounded (ink, f.left, -pipe / 2, f.width, pipe, pipe / 2);
  hc_ink_fill (ink, HC_PAINT_METAL_PALE);
  hc_symbol_outline (ink, values);
}

static void
draw_nipple (const HcInk *ink, double x, double size)
{
  hc_ink_circle (ink, x, 0, size * 0.3);
  hc_ink_fill (ink, HC_PAINT_CAUTION);
  hc_ink_stroke (ink, HC_LINE_FINE, HC_PAINT_INK);
  hc_ink_circle (ink, x, 0, size * 0.1);
  hc_ink_fill (ink, HC_PAINT_METAL_PALE);
  cairo_new_path (ink->cr);
}

static void
draw_cup (const HcInk *ink, double x, double size)
{
  hc_ink_circle (ink, x, 0, size * 0.46);
  hc_ink_fill (ink, HC_PAINT_METAL);
  hc_ink_stroke (ink, HC_LINE_FINE, HC_PAINT_INK);
  hc_ink_circle (ink, x, 0, size * 0.34);
  hc_ink_fill (ink, HC_PAINT_WATER);
  hc_ink_stroke (ink, HC_LINE_HAIR, HC_PAINT_WATER_DEEP);
}

static void
draw_place (const HcInk *ink, const HcFittingValues *values, double x, double size)
{
  if (values->form == HC_FORM_CUPS)
    draw_cup (ink, x, size);
  else
    draw_nipple (ink, x, size);
}

/* A line of places is long and narrow; anything else is a bucket. */
static gboolean
is_bucket (const HcFittingValues *values)
{
  return values->depth_mm > values->width_mm / 2;
}

/* A bucket has its nipples or cups round its foot. */
static void
draw_bucket (const HcInk *ink, const HcFittingValues *values)
{
  double across = MIN (values->width_mm, values->depth_mm);
  double size = across / 5;
  double out = across / 2 - size / 2 - MIN (hc_ink_line_mm (ink, HC_LINE_FINE), size / 2);
  int places = CLAMP (values->places, 1, 12);

  hc_ink_circle (ink, 0, 0, out);
  hc_ink_fill (ink, HC_PAINT_METAL_PALE);
  hc_symbol_outline (ink, values);
  hc_ink_circle (ink, 0, 0, out * 0.78);
  hc_ink_fill (ink, HC_PAINT_WATER);
  hc_ink_stroke (ink, HC_LINE_FINE, HC_PAINT_WATER_DEEP);
  for (int i = 0; i < places; i++)
    {
      cairo_save (ink->cr);
      cairo_rotate (ink->cr, 2 * G_PI * i / places);
      draw_place (ink, values, out, size);
      cairo_restore (ink->cr);
    }
}

static void
draw_line_of_places (const HcInk *ink, const HcFittingValues *values)
{
  int places = CLAMP (values->places, 1, MOST_DRAWN);
  double each = values->width_mm / places;
  double size = MIN (values->depth_mm, each) - hc_ink_line_mm (ink, HC_LINE_FINE);

  draw_pipe (ink, values);
  if (size <= 0)
    return;
  for (int i = 0; i < places; i++)
    draw_place (ink, values, each * (i + 0.5) - values->width_mm / 2, size);
}

/* A heated drinker shows the warm ring it stands on. */
static void
draw_warm_ring (const HcInk *ink, const HcFittingValues *values)
{
  HcSymbolFrame f = hc_symbol_frame (ink, values);
  double line = hc_ink_line_mm (ink, HC_LINE_HEAVY);

  cairo_new_path (ink->cr);
  if (values->form == HC_FORM_ROUND)
    hc_ink_ellipse (ink, 0, 0, f.width * 0.475, f.depth * 0.475);
  else
    hc_ink_rounded (ink, f.left + line, f.top + line, f.width - 2 * line,
                    f.depth - 2 * line, f.depth / 5);
  hc_ink_stroke (ink, HC_LINE_HEAVY, HC_PAINT_WARMTH);
}

void
hc_symbol_drinker (const HcInk *ink, const HcFittingValues *values)
{
  if (values->form == HC_FORM_ROUND)
    draw_font (ink, values);
  else if (values->form == HC_FORM_LONG)
    draw_trough (ink, values);
  else if (is_bucket (values))
    draw_bucket (ink, values);
  else
    draw_line_of_places (ink, values);
  if (values->heated && MIN (values->width_mm, values->depth_mm)
                            > 8 * hc_ink_line_mm (ink, HC_LINE_HEAVY))
    draw_warm_ring (ink, values);
}
