/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Roost bars on their brackets. */
#include "config.h"

#include "symbol.h"

#include "drawing/board.h"

#define BRACKET_MM 38.0
#define BRACKET_INSET 0.06
#define BOLT_MM 9.0

static double
bar_width (const HcFittingValues *values)
{
  return MIN (values->bar_width_mm, values->depth_mm / values->bars);
}

static double
bracket_width (const HcFittingValues *values)
{
  return MIN (BRACKET_MM, values->width_mm / 6);
}

static double
bracket_x (const HcFittingValues *values, double side)
{
  double inset = MAX (MIN (values->width_mm * BRACKET_INSET, 150), bracket_width (values) / 2);

  return side * (values->width_mm / 2 - inset);
}

static void
draw_bracket (const HcInk *ink, const HcFittingValues *values, double side)
{
  double width = bracket_width (values);

  hc_draw_board (ink, bracket_x (values, side) - width / 2, -values->depth_mm / 2, width,
                 values->depth_mm, HC_PAINT_WOOD_DARK, hc_symbol_seed (values));
}

static void
draw_bolt (const HcInk *ink, double x, double y)
{
  if (!hc_ink_shows (ink, BOLT_MM))
    return;
  hc_ink_circle (ink, x, y, BOLT_MM / 2);
  hc_ink_fill (ink, HC_PAINT_METAL_DARK);
  cairo_new_path (ink->cr);
}

static void
draw_bar (const HcInk *ink, const HcFittingValues *values, int bar)
{
  double y = hc_symbol_bar_y (values, bar);
  double width = bar_width (values);

  hc_draw_board (ink, -values->width_mm / 2, y - width / 2, values->width_mm, width,
                 HC_PAINT_WOOD, hc_symbol_seed (values) + (guint) bar);
  draw_bolt (ink, bracket_x (values, -1), y);
  draw_bolt (ink, bracket_x (values, 1), y);
}

void
hc_symbol_roost (const HcInk *ink, const HcFittingValues *values)
{
  if (values->bars > 1)
    {
      draw_bracket (ink, values, -1);
      draw_bracket (ink, values, 1);
    }
  for (int bar = 0; bar < values->bars; bar++)
    draw_bar (ink, values, bar);
}
