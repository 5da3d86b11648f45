/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A dust bath: a frame of boards round sand and ash. */
#include "config.h"

#include "symbol.h"

#include "drawing/board.h"

#include <math.h>

#define FRAME_MM 24.0
#define PEBBLES_PER_M2 900.0

static void
draw_dust (const HcInk *ink, const HcFittingValues *values, double width, double depth)
{
  guint seed = hc_symbol_seed (values);
  guint pebbles = (guint) MIN (width * depth * 1e-6 * PEBBLES_PER_M2, 500);

  if (!hc_ink_shows (ink, 12))
    return;
  cairo_new_path (ink->cr);
  for (guint i = 0; i < pebbles; i++)
    {
      double r = 1.5 + 3 * hc_chance (seed, 3 * i);

      cairo_new_sub_path (ink->cr);
      cairo_arc (ink->cr, (width - 12) * (hc_chance (seed, 3 * i + 1) - 0.5),
                 (depth - 12) * (hc_chance (seed, 3 * i + 2) - 0.5), r, 0, 2 * G_PI);
    }
  hc_ink_set (ink, HC_PAINT_DUST_DARK, 0.7);
  cairo_fill (ink->cr);
}

/* The hollow a hen has worked into it. */
static void
draw_hollow (const HcInk *ink, double width, double depth)
{
  for (double part = 0.34; part > 0.1; part -= 0.11)
    {
      hc_ink_ellipse (ink, width * 0.08, depth * 0.05, width * part, depth * part);
      hc_ink_wash (ink, HC_PAINT_DUST_DARK, 0.16);
      cairo_new_path (ink->cr);
    }
}

static void
fill_round (const HcInk *ink, const HcFittingValues *values)
{
  HcSymbolFrame f = hc_symbol_frame (ink, values);

  hc_ink_ellipse (ink, 0, 0, f.width / 2, f.depth / 2);
  hc_ink_fill (ink, HC_PAINT_WOOD);
  hc_symbol_outline (ink, values);
  hc_ink_ellipse (ink, 0, 0, f.width * 0.45, f.depth * 0.45);
  hc_ink_fill (ink, HC_PAINT_DUST);
  hc_ink_stroke (ink, HC_LINE_FINE, HC_PAINT_INK);
}

static void
fill_framed (const HcInk *ink, const HcFittingValues *values, double frame)
{
  double w = values->width_mm, d = values->depth_mm;
  guint seed = hc_symbol_seed (values);

  hc_ink_rectangle (ink, -w / 2 + frame, -d / 2 + frame, w - 2 * frame, d - 2 * frame);
  hc_ink_fill (ink, HC_PAINT_DUST);
  cairo_new_path (ink->cr);
  hc_draw_board (ink, -w / 2, -d / 2, frame, d, HC_PAINT_WOOD, seed);
  hc_draw_board (ink, w / 2 - frame, -d / 2, frame, d, HC_PAINT_WOOD, seed + 1);
  hc_draw_board (ink, -w / 2 + frame, -d / 2, w - 2 * frame, frame, HC_PAINT_WOOD, seed + 2);
  hc_draw_board (ink, -w / 2 + frame, d / 2 - frame, w - 2 * frame, frame, HC_PAINT_WOOD,
                 seed + 3);
}

void
hc_symbol_dust_bath (const HcInk *ink, const HcFittingValues *values)
{
  double w = values->width_mm, d = values->depth_mm;
  double frame = MIN (FRAME_MM, MIN (w, d) / 6);
  gboolean is_round = values->form == HC_FORM_ROUND;
  double part = is_round ? M_SQRT1_2 * 0.9 : 1;

  if (is_round)
    fill_round (ink, values);
  else
    fill_framed (ink, values, frame);
  draw_hollow (ink, w - 2 * frame, d - 2 * frame);
  draw_dust (ink, values, (w - 2 * frame) * part, (d - 2 * frame) * part);
}
