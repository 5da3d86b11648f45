/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What just stands there: platform, store bin, grit and shell hopper, post. */
#include "config.h"

#include "symbol.h"

#include "drawing/board.h"

#define PLATFORM_BOARD_MM 120.0
#define HINGE_MM 60.0

void
hc_symbol_platform (const HcInk *ink, const HcFittingValues *values)
{
  HcSymbolFrame f = hc_symbol_frame (ink, values);

  hc_draw_boards (ink, -values->width_mm / 2, -values->depth_mm / 2, values->width_mm,
                  values->depth_mm, PLATFORM_BOARD_MM, HC_PAINT_WOOD_PALE,
                  hc_symbol_seed (values));
  hc_ink_rectangle (ink, f.left, f.top, f.width, f.depth);
  hc_symbol_outline (ink, values);
}

static void
draw_hinge (const HcInk *ink, double x, double y, double size)
{
  if (!hc_ink_shows (ink, size / 3))
    return;
  hc_ink_rounded (ink, x - size / 2, y, size, size / 3, size / 8);
  hc_ink_fill (ink, HC_PAINT_METAL_DARK);
  cairo_new_path (ink->cr);
}

static void
draw_round_bin (const HcInk *ink, const HcFittingValues *values)
{
  HcSymbolFrame f = hc_symbol_frame (ink, values);

  hc_ink_ellipse (ink, 0, 0, f.width / 2, f.depth / 2);
  hc_ink_fill (ink, HC_PAINT_METAL);
  hc_symbol_outline (ink, values);
  for (double part = 0.44; part > 0.1; part -= 0.12)
    {
      hc_ink_ellipse (ink, 0, 0, f.width * part, f.depth * part);
      hc_ink_stroke (ink, HC_LINE_HAIR, HC_PAINT_METAL_DARK);
    }
  hc_ink_rounded (ink, -f.width * 0.12, -f.depth * 0.03, f.width * 0.24, f.depth * 0.06,
                  f.depth * 0.03);
  hc_ink_fill (ink, HC_PAINT_METAL_DARK);
  cairo_new_path (ink->cr);
}

static void
draw_chest (const HcInk *ink, const HcFittingValues *values)
{
  HcSymbolFrame f = hc_symbol_frame (ink, values);
  double hinge = MIN (HINGE_MM, f.width / 8);

  hc_draw_boards (ink, -values->width_mm / 2, -values->depth_mm / 2, values->width_mm,
                  values->depth_mm, PLATFORM_BOARD_MM, HC_PAINT_WOOD, hc_symbol_seed (values));
  hc_ink_rectangle (ink, f.left, f.top, f.width, f.depth);
  hc_symbol_outline (ink, values);
  draw_hinge (ink, -f.width / 4, f.top, hinge);
  draw_hinge (ink, f.width / 4, f.top, hinge);
  hc_ink_rounded (ink, -hinge, f.top + f.depth - hinge / 2, 2 * hinge, hinge / 3, hinge / 6);
  hc_ink_fill (ink, HC_PAINT_WOOD_DARK);
  cairo_new_path (ink->cr);
}

void
hc_symbol_store_bin (const HcInk *ink, const HcFittingValues *values)
{
  if (values->form == HC_FORM_ROUND)
    draw_round_bin (ink, values);
  else
    draw_chest (ink, values);
}

static void
draw_bits (const HcInk *ink, double x, double width, double depth, HcPaint paint, guint seed)
{
  if (!hc_ink_shows (ink, 8))
    return;
  cairo_new_path (ink->cr);
  for (guint i = 0; i < 28; i++)
    {
      double r = MIN (width, depth) * (0.03 + 0.03 * hc_chance (seed, 3 * i));

      cairo_new_sub_path (ink->cr);
      cairo_arc (ink->cr, x + width * 0.8 * (hc_chance (seed, 3 * i + 1) - 0.5),
                 depth * 0.8 * (hc_chance (seed, 3 * i + 2) - 0.5), r, 0, 2 * G_PI);
    }
  hc_ink_set (ink, paint, 0.9);
  cairo_fill (ink->cr);
}

/* Two compartments: grit on the left, shell on the right. */
void
hc_symbol_hopper (const HcInk *ink, const HcFittingValues *values)
{
  HcSymbolFrame f = hc_symbol_frame (ink, values);
  double edge = MIN (f.width, f.depth) * 0.1;
  double inner_w = f.width / 2 - 1.5 * edge, inner_d = f.depth - 2 * edge;

  hc_ink_rounded (ink, f.left, f.top, f.width, f.depth, edge);
  hc_ink_fill (ink, HC_PAINT_WOOD);
  hc_symbol_outline (ink, values);
  for (guint i = 0; i < 2; i++)
    {
      double x = (i ? 1 : -1) * (inner_w / 2 + edge / 2);

      hc_ink_rectangle (ink, x - inner_w / 2, -inner_d / 2, inner_w, inner_d);
      hc_ink_fill (ink, i ? HC_PAINT_SHELL : HC_PAINT_METAL);
      hc_ink_stroke (ink, HC_LINE_FINE, HC_PAINT_INK);
      draw_bits (ink, x, inner_w, inner_d, i ? HC_PAINT_STRAW_DARK : HC_PAINT_METAL_DARK, i);
    }
}

/* A post is cut through: drawn with the cross of cut lumber, or its rings. */
void
hc_symbol_post (const HcInk *ink, const HcFittingValues *values)
{
  HcSymbolFrame f = hc_symbol_frame (ink, values);

  if (values->form == HC_FORM_ROUND)
    hc_ink_ellipse (ink, 0, 0, f.width / 2, f.depth / 2);
  else
    hc_ink_rectangle (ink, f.left, f.top, f.width, f.depth);
  hc_ink_fill (ink, HC_PAINT_WALL);
  hc_symbol_outline (ink, values);
  if (values->form == HC_FORM_ROUND)
    {
      hc_ink_ellipse (ink, 0, 0, f.width * 0.3, f.depth * 0.3);
      hc_ink_ellipse (ink, 0, 0, f.width * 0.15, f.depth * 0.15);
    }
  else
    {
      cairo_new_path (ink->cr);
      hc_ink_line (ink, f.left, f.top, f.left + f.width, f.top + f.depth);
      hc_ink_line (ink, f.left + f.width, f.top, f.left, f.top + f.depth);
    }
  hc_ink_stroke (ink, HC_LINE_FINE, HC_PAINT_INK);
}
