/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Boards and their grain. */
#include "config.h"

#include "board.h"

#include <math.h>

#define GRAIN_APART_MM 16.0
#define MOST_GRAIN_LINES 9

/* One line of grain: almost straight, with a slow bend somewhere. */
static void
trace_grain (cairo_t *cr, double length, double at, double sway, guint seed, guint line)
{
  double start = length * 0.18 * hc_chance (seed, line * 4);
  double end = length * (1 - 0.18 * hc_chance (seed, line * 4 + 1));
  double bend = sway * (hc_chance (seed, line * 4 + 2) - 0.5);
  double middle = start + (end - start) * (0.3 + 0.4 * hc_chance (seed, line * 4 + 3));

  cairo_move_to (cr, start, at);
  cairo_curve_to (cr, middle, at + bend, middle, at + bend, end, at);
}

/* Grain along x in a box that starts at the origin. */
static void
draw_grain (const HcInk *ink, double length, double breadth, guint seed)
{
  guint lines = MIN ((guint) (breadth / GRAIN_APART_MM), MOST_GRAIN_LINES);
  double apart = breadth / (lines + 1);

  if (lines == 0)
    lines = hc_ink_shows (ink, breadth / 2) ? 1 : 0;
  if (lines == 0 || !hc_ink_shows (ink, apart))
    return;

  cairo_new_path (ink->cr);
  for (guint i = 1; i <= lines; i++)
    trace_grain (ink->cr, length, breadth * i / (lines + 1), apart * 1.1, seed, i);
  hc_ink_set (ink, HC_PAINT_WOOD_DARK, 0.45);
  cairo_set_line_width (ink->cr, hc_ink_line_mm (ink, HC_LINE_HAIR));
  cairo_stroke (ink->cr);
}

/**
 * hc_draw_board:
 * @ink: the ink
 * @x: left edge, mm
 * @y: upper edge, mm
 * @width: along x, mm
 * @depth: along y, mm
 * @wood: the wood
 * @seed: boards of different seeds have different grain
 *
 * Draws one board; the grain runs its long way and the outline lies inside
 * the measures given.
 */
void
hc_draw_board (const HcInk *ink, double x, double y, double width, double depth, HcPaint wood,
               guint seed)
{
  double line = MIN (hc_ink_line_mm (ink, HC_LINE_FINE), MIN (width, depth) / 3);

  hc_ink_rectangle (ink, x + line / 2, y + line / 2, width - line, depth - line);
  hc_ink_fill (ink, wood);
  cairo_new_path (ink->cr);

  cairo_save (ink->cr);
  cairo_translate (ink->cr, x, y);
  if (depth > width)
    {
      cairo_translate (ink->cr, width, 0);
      cairo_rotate (ink->cr, G_PI / 2);
    }
  draw_grain (ink, MAX (width, depth), MIN (width, depth), seed);
  cairo_restore (ink->cr);

  hc_ink_rectangle (ink, x + line / 2, y + line / 2, width - line, depth - line);
  cairo_set_line_width (ink->cr, line);
  hc_ink_set (ink, HC_PAINT_INK, 0.85);
  cairo_stroke (ink->cr);
}

/**
 * hc_draw_boards:
 * @ink: the ink
 * @x: left edge, mm
 * @y: upper edge, mm
 * @width: along x, mm
 * @depth: along y, mm
 * @board_mm: width of one board, about
 * @wood: the wood
 * @seed: as in hc_draw_board()
 *
 * Draws boards side by side, running along x.
 */
void
hc_draw_boards (const HcInk *ink, double x, double y, double width, double depth,
                double board_mm, HcPaint wood, guint seed)
{
  guint boards = (guint) MAX (1, round (depth / board_mm));

  if (!hc_ink_shows (ink, depth / boards))
    boards = 1;
  for (guint i = 0; i < boards; i++)
    hc_draw_board (ink, x, y + depth * i / boards, width, depth / boards, wood, seed + i);
}
