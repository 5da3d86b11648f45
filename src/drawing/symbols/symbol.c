/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What the symbols share. */
#include "config.h"

#include "symbol.h"

/* Thickness of a symbol's outline: never more than a quarter of what it is
 * round. */
double
hc_symbol_line (const HcInk *ink, const HcFittingValues *values)
{
  return MIN (hc_ink_line_mm (ink, HC_LINE_MEDIUM),
              MIN (values->width_mm, values->depth_mm) / 4);
}

HcSymbolFrame
hc_symbol_frame (const HcInk *ink, const HcFittingValues *values)
{
  double line = hc_symbol_line (ink, values);

  return (HcSymbolFrame){ (line - values->width_mm) / 2, (line - values->depth_mm) / 2,
                          values->width_mm - line, values->depth_mm - line };
}

/* Strokes the path as an outline and drops it. */
void
hc_symbol_outline (const HcInk *ink, const HcFittingValues *values)
{
  hc_ink_set (ink, HC_PAINT_INK, 1);
  cairo_set_line_width (ink->cr, hc_symbol_line (ink, values));
  cairo_stroke (ink->cr);
}

/* The grain goes with the thing when it is moved. */
guint
hc_symbol_seed (const HcFittingValues *values)
{
  return (guint) values->kind * 977u + (guint) values->width_mm * 31u
         + (guint) values->depth_mm;
}

/* Middle of a bar: bars share the depth evenly, the first at the back. */
double
hc_symbol_bar_y (const HcFittingValues *values, int bar)
{
  return values->depth_mm * ((bar + 0.5) / values->bars - 0.5);
}
