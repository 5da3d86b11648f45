/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A ramp, with rungs or of grid; its arrow points up. */
#include "config.h"

#include "symbol.h"

#include "drawing/board.h"

#define RUNG_APART_MM 120.0
#define RUNG_MM 22.0
#define GRID_APART_MM 40.0
#define RAIL_MM 30.0

/* In here a ramp runs along x and rises to the left, @run long, @across wide. */
static void
draw_rungs (const HcInk *ink, double run, double across)
{
  guint rungs = (guint) CLAMP (run / RUNG_APART_MM, 2, 100);
  double rung = MIN (RUNG_MM, run / rungs / 3);

  for (guint i = 0; i < rungs; i++)
    hc_draw_board (ink, run * ((i + 0.5) / rungs - 0.5) - rung / 2, -across / 2, rung, across,
                   HC_PAINT_WOOD_DARK, i);
}

static void
draw_grid (const HcInk *ink, double run, double across)
{
  guint lines = (guint) CLAMP (run / GRID_APART_MM, 2, 200);

  if (!hc_ink_shows (ink, run / lines))
    return;
  cairo_new_path (ink->cr);
  for (guint i = 1; i < lines; i++)
    hc_ink_line (ink, run * ((double) i / lines - 0.5), -across / 2, run * ((double) i / lines - 0.5),
                 across / 2);
  for (double y = -across / 2 + GRID_APART_MM; y < across / 2; y += GRID_APART_MM)
    hc_ink_line (ink, -run / 2, y, run / 2, y);
  hc_ink_stroke (ink, HC_LINE_HAIR, HC_PAINT_METAL_DARK);
}

static void
draw_arrow (const HcInk *ink, double run, double across)
{
  double head = MIN (across / 4, run / 6);

  cairo_new_path (ink->cr);
  hc_ink_line (ink, run * 0.32, 0, -run * 0.36, 0);
  cairo_move_to (ink->cr, -run * 0.36 + head, -head * 0.6);
  cairo_line_to (ink->cr, -run * 0.36, 0);
  cairo_line_to (ink->cr, -run * 0.36 + head, head * 0.6);
  hc_ink_stroke (ink, HC_LINE_MEDIUM, HC_PAINT_INK);
}

void
hc_symbol_ramp (const HcInk *ink, const HcFittingValues *values)
{
  gboolean deep = values->depth_mm > values->width_mm;
  double run = MAX (values->width_mm, values->depth_mm);
  double across = MIN (values->width_mm, values->depth_mm);
  double rail = MIN (RAIL_MM, across / 8);

  cairo_save (ink->cr);
  if (deep)
    cairo_rotate (ink->cr, G_PI / 2);
  hc_draw_board (ink, -run / 2, -across / 2, run, across,
                 values->form == HC_FORM_GRID ? HC_PAINT_METAL_PALE : HC_PAINT_WOOD_PALE,
                 hc_symbol_seed (values));
  if (values->form == HC_FORM_GRID)
    draw_grid (ink, run, across);
  else
    draw_rungs (ink, run, across);
  hc_draw_board (ink, -run / 2, -across / 2, run, rail, HC_PAINT_WOOD, 11);
  hc_draw_board (ink, -run / 2, across / 2 - rail, run, rail, HC_PAINT_WOOD, 12);
  draw_arrow (ink, run, across);
  cairo_restore (ink->cr);
}
