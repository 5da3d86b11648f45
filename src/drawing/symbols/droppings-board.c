/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A droppings board: boards with a lip in front and a little of what they are
 * for. */
#include "config.h"

#include "symbol.h"

#include "drawing/board.h"

#define BOARD_MM 140.0
#define LIP_MM 22.0
#define SPOT_MM 26.0
#define SPOTS_PER_M2 22.0

static void
draw_droppings (const HcInk *ink, const HcFittingValues *values)
{
  guint spots
      = (guint) (values->width_mm * values->depth_mm * 1e-6 * SPOTS_PER_M2);
  guint seed = hc_symbol_seed (values);

  if (!hc_ink_shows (ink, SPOT_MM / 2))
    return;
  cairo_new_path (ink->cr);
  for (guint i = 0; i < MIN (spots, 200); i++)
    {
      double r = SPOT_MM * (0.25 + 0.25 * hc_chance (seed, 3 * i));
      double x = MAX (values->width_mm - 6 * r, 0) * (hc_chance (seed, 3 * i + 1) - 0.5);
      double y = MAX (values->depth_mm - 2 * LIP_MM - 6 * r, 0)
                 * (hc_chance (seed, 3 * i + 2) - 0.5);

      cairo_new_sub_path (ink->cr);
      cairo_arc (ink->cr, x, y, r, 0, 2 * G_PI);
    }
  hc_ink_set (ink, HC_PAINT_SHELL, 0.8);
  cairo_fill (ink->cr);
}

void
hc_symbol_droppings_board (const HcInk *ink, const HcFittingValues *values)
{
  double w = values->width_mm, d = values->depth_mm;
  double lip = MIN (LIP_MM, d / 5);

  hc_draw_boards (ink, -w / 2, -d / 2, w, d - lip, BOARD_MM, HC_PAINT_WOOD_PALE,
                  hc_symbol_seed (values));
  draw_droppings (ink, values);
  hc_draw_board (ink, -w / 2, d / 2 - lip, w, lip, HC_PAINT_WOOD_DARK,
                 hc_symbol_seed (values) + 90);
}
