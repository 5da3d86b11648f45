/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A heat lamp: shade, guard and bulb, the circle it warms and the ring within
 * which nothing that burns may be. */
#include "config.h"

#include "symbol.h"

#include <math.h>

/* Drawn as a reminder only; the figure that is judged is in the rules. */
#define KEEP_OFF_MM 460.0
#define GUARD_WIRES 8

void
hc_symbol_heat_lamp (const HcInk *ink, const HcFittingValues *values)
{
  HcSymbolFrame f = hc_symbol_frame (ink, values);
  double rx = f.width / 2, ry = f.depth / 2;

  hc_ink_ellipse (ink, 0, 0, rx, ry);
  hc_ink_fill (ink, HC_PAINT_METAL);
  hc_symbol_outline (ink, values);
  hc_ink_ellipse (ink, 0, 0, rx * 0.8, ry * 0.8);
  hc_ink_fill (ink, HC_PAINT_GLOW);
  hc_ink_stroke (ink, HC_LINE_FINE, HC_PAINT_METAL_DARK);
  cairo_new_path (ink->cr);
  for (guint i = 0; i < GUARD_WIRES; i++)
    {
      double turn = 2 * G_PI * i / GUARD_WIRES;

      hc_ink_line (ink, 0, 0, rx * 0.8 * cos (turn), ry * 0.8 * sin (turn));
    }
  hc_ink_stroke (ink, HC_LINE_HAIR, HC_PAINT_METAL_DARK);
  hc_ink_ellipse (ink, 0, 0, rx * 0.36, ry * 0.36);
  hc_ink_fill (ink, HC_PAINT_CAUTION);
  hc_ink_stroke (ink, HC_LINE_FINE, HC_PAINT_INK);
}

/* Warmth spreads about as wide as the lamp hangs high. */
static double
warmed_radius (const HcFittingValues *values)
{
  return values->width_mm / 2 + values->base_mm / 2;
}

static void
draw_warmed_circle (const HcInk *ink, double radius)
{
  HcColour glow = hc_palette_get_colour (ink->palette, HC_PAINT_GLOW);
  cairo_pattern_t *fade = cairo_pattern_create_radial (0, 0, 0, 0, 0, radius);

  cairo_pattern_add_color_stop_rgba (fade, 0, glow.red, glow.green, glow.blue, 0.75);
  cairo_pattern_add_color_stop_rgba (fade, 0.6, glow.red, glow.green, glow.blue, 0.4);
  cairo_pattern_add_color_stop_rgba (fade, 1, glow.red, glow.green, glow.blue, 0);
  hc_ink_circle (ink, 0, 0, radius);
  cairo_set_source (ink->cr, fade);
  cairo_fill (ink->cr);
  cairo_pattern_destroy (fade);
}

void
hc_symbol_heat_lamp_surroundings (const HcInk *ink, const HcFittingValues *values)
{
  double dash = 6 * hc_ink_line_mm (ink, HC_LINE_MEDIUM);
  double dashes[] = { dash, dash * 0.7 };

  draw_warmed_circle (ink, warmed_radius (values));
  cairo_save (ink->cr);
  cairo_set_dash (ink->cr, dashes, 2, 0);
  hc_ink_circle (ink, 0, 0, KEEP_OFF_MM);
  hc_ink_stroke (ink, HC_LINE_FINE, HC_PAINT_CAUTION);
  cairo_restore (ink->cr);
}
