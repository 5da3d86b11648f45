/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Nest boxes with the roof off: a dim inside, a nest of straw, a step in
 * front. */
#include "config.h"

#include "symbol.h"

#include "drawing/board.h"

#include <math.h>

#define BOARD_MM 18.0
#define STEP_MM 70.0
#define EGG_MM 42.0

typedef struct
{
  double x, y, width, depth;
} Box;

static double
board_of (const HcFittingValues *values)
{
  return MIN (BOARD_MM, values->width_mm / values->columns / 6);
}

static double
step_of (const HcFittingValues *values)
{
  return MIN (STEP_MM, values->depth_mm / 6);
}

static void
draw_straws (const HcInk *ink, double x, double y, double rx, double ry, guint seed)
{
  if (!hc_ink_shows (ink, rx / 8))
    return;
  cairo_new_path (ink->cr);
  for (guint i = 0; i < 22; i++)
    {
      double turn = 2 * G_PI * hc_chance (seed, 4 * i);
      double out = 0.55 + 0.33 * hc_chance (seed, 4 * i + 1);
      double lean = turn + 0.35 + 0.3 * hc_chance (seed, 4 * i + 2);

      hc_ink_line (ink, x + rx * out * cos (turn), y + ry * out * sin (turn),
                   x + rx * (out + 0.1) * cos (lean), y + ry * (out + 0.1) * sin (lean));
    }
  hc_ink_set (ink, HC_PAINT_STRAW_DARK, 0.9);
  cairo_set_line_width (ink->cr, hc_ink_line_mm (ink, HC_LINE_FINE));
  cairo_stroke (ink->cr);
}

static void
draw_egg (const HcInk *ink, double x, double y, double turn)
{
  cairo_save (ink->cr);
  cairo_translate (ink->cr, x, y);
  cairo_rotate (ink->cr, turn);
  hc_ink_ellipse (ink, 0, 0, EGG_MM * 0.62, EGG_MM * 0.46);
  hc_ink_fill (ink, HC_PAINT_SHELL);
  cairo_restore (ink->cr);
  hc_ink_stroke (ink, HC_LINE_HAIR, HC_PAINT_INK);
}

static void
draw_nest (const HcInk *ink, const Box *box, guint seed)
{
  double rx = box->width * 0.4, ry = box->depth * 0.4;
  double x = box->x + box->width / 2, y = box->y + box->depth / 2;

  hc_ink_ellipse (ink, x, y, rx, ry);
  hc_ink_fill (ink, HC_PAINT_STRAW);
  cairo_new_path (ink->cr);
  hc_ink_ellipse (ink, x, y, rx * 0.55, ry * 0.55);
  hc_ink_wash (ink, HC_PAINT_STRAW_DARK, 0.45);
  cairo_new_path (ink->cr);
  draw_straws (ink, x, y, rx, ry, seed);
  if (MIN (rx, ry) > EGG_MM && hc_ink_shows (ink, EGG_MM / 4) && hc_chance (seed, 99) < 0.6)
    draw_egg (ink, x - EGG_MM * 0.25, y + EGG_MM * 0.1, 0.5 + 2 * hc_chance (seed, 98));
}

static void
draw_inside (const HcInk *ink, const Box *box, gboolean lined, guint seed)
{
  hc_ink_rectangle (ink, box->x, box->y, box->width, box->depth);
  hc_ink_wash (ink, HC_PAINT_DIM_INSIDE, 0.62);
  hc_ink_stroke (ink, HC_LINE_FINE, HC_PAINT_INK);
  if (lined)
    draw_nest (ink, box, seed);
}

/* A second row of boxes hides under the first: its edge shows on the step. */
static void
draw_step (const HcInk *ink, const HcFittingValues *values)
{
  double step = step_of (values);
  double y = values->depth_mm / 2 - step;

  for (int row = 0; row < values->rows; row++)
    {
      double part = step / values->rows;

      hc_draw_board (ink, -values->width_mm / 2, y + row * part, values->width_mm, part,
                     row % 2 ? HC_PAINT_WOOD : HC_PAINT_WOOD_PALE,
                     hc_symbol_seed (values) + 50 + (guint) row);
    }
}

void
hc_symbol_nest_boxes (const HcInk *ink, const HcFittingValues *values)
{
  gboolean group = values->form == HC_FORM_GROUP;
  int columns = group ? 1 : values->columns;
  double board = board_of (values);
  double each = (values->width_mm - board) / columns;
  Box box = { 0, board - values->depth_mm / 2, each - board,
              values->depth_mm - board - step_of (values) };

  hc_draw_board (ink, -values->width_mm / 2, -values->depth_mm / 2, values->width_mm,
                 values->depth_mm, HC_PAINT_WOOD, hc_symbol_seed (values));
  for (int i = 0; i < columns; i++)
    {
      box.x = board - values->width_mm / 2 + i * each;
      draw_inside (ink, &box, values->lined, hc_symbol_seed (values) + (guint) i);
    }
  draw_step (ink, values);
}
