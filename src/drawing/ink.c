/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Lines, washes and outlines. */
#include "config.h"

#include "ink.h"

#include <math.h>

/* Anything smaller than this on the output is a smudge. */
#define SMALLEST_SHOWN 2.0

/**
 * hc_ink_line_mm:
 * @ink: the ink
 * @line: how heavy a line
 *
 * Lines keep their weight on the output, whatever the scale.
 *
 * Returns: its thickness in mm of the house
 */
double
hc_ink_line_mm (const HcInk *ink, HcLine line)
{
  static const double weights[] = { 0.35, 0.6, 1.0, 1.7 };

  return weights[line] / ink->scale;
}

/**
 * hc_ink_shows:
 * @ink: the ink
 * @size_mm: size of a detail in mm of the house
 *
 * Returns: whether a detail of that size is worth drawing
 */
gboolean
hc_ink_shows (const HcInk *ink, double size_mm)
{
  return size_mm * ink->scale >= SMALLEST_SHOWN;
}

void
hc_ink_set_colour (const HcInk *ink, HcColour colour, double opacity)
{
  cairo_set_source_rgba (ink->cr, colour.red, colour.green, colour.blue,
                         opacity * (1 - ink->fade));
}

void
hc_ink_set (const HcInk *ink, HcPaint paint, double opacity)
{
  hc_ink_set_colour (ink, hc_palette_get_colour (ink->palette, paint), opacity);
}

/* Fills the path and keeps it. */
void
hc_ink_fill (const HcInk *ink, HcPaint paint)
{
  hc_ink_wash (ink, paint, 1);
}

/* Fills the path thinly and keeps it. */
void
hc_ink_wash (const HcInk *ink, HcPaint paint, double opacity)
{
  hc_ink_set (ink, paint, opacity);
  cairo_fill_preserve (ink->cr);
}

/* Strokes the path and drops it. */
void
hc_ink_stroke (const HcInk *ink, HcLine line, HcPaint paint)
{
  hc_ink_set (ink, paint, 1);
  cairo_set_line_width (ink->cr, hc_ink_line_mm (ink, line));
  cairo_stroke (ink->cr);
}

void
hc_ink_rectangle (const HcInk *ink, double x, double y, double width, double depth)
{
  cairo_new_path (ink->cr);
  cairo_rectangle (ink->cr, x, y, width, depth);
}

void
hc_ink_rounded (const HcInk *ink, double x, double y, double width, double depth,
                double radius)
{
  double r = MIN (radius, MIN (width, depth) / 2);

  cairo_new_path (ink->cr);
  cairo_arc (ink->cr, x + r, y + r, r, G_PI, 1.5 * G_PI);
  cairo_arc (ink->cr, x + width - r, y + r, r, 1.5 * G_PI, 2 * G_PI);
  cairo_arc (ink->cr, x + width - r, y + depth - r, r, 0, 0.5 * G_PI);
  cairo_arc (ink->cr, x + r, y + depth - r, r, 0.5 * G_PI, G_PI);
  cairo_close_path (ink->cr);
}

void
hc_ink_circle (const HcInk *ink, double x, double y, double radius)
{
  cairo_new_path (ink->cr);
  cairo_arc (ink->cr, x, y, radius, 0, 2 * G_PI);
  cairo_close_path (ink->cr);
}

void
hc_ink_ellipse (const HcInk *ink, double x, double y, double rx, double ry)
{
  cairo_new_path (ink->cr);
  if (rx <= 0 || ry <= 0)
    return;
  cairo_save (ink->cr);
  cairo_translate (ink->cr, x, y);
  cairo_scale (ink->cr, rx, ry);
  cairo_arc (ink->cr, 0, 0, 1, 0, 2 * G_PI);
  cairo_close_path (ink->cr);
  cairo_restore (ink->cr);
}

void
hc_ink_ring (const HcInk *ink, const HcPoint *points, guint n_points)
{
  cairo_new_path (ink->cr);
  for (guint i = 0; i < n_points; i++)
    cairo_line_to (ink->cr, points[i].x_mm, points[i].y_mm);
  cairo_close_path (ink->cr);
}

void
hc_ink_line (const HcInk *ink, double x1, double y1, double x2, double y2)
{
  cairo_move_to (ink->cr, x1, y1);
  cairo_line_to (ink->cr, x2, y2);
}

/**
 * hc_chance:
 * @seed: tells one thing from another
 * @which: which of its chances
 *
 * What looks like chance in a drawing (grain, pebbles, straw) is always the
 * same chance, so that a sheet printed twice is the same sheet.
 *
 * Returns: a number from 0 to below 1
 */
double
hc_chance (guint seed, guint which)
{
  guint32 h = seed * 0x9e3779b1u ^ (which + 0x7f4a7c15u) * 0x85ebca6bu;

  h ^= h >> 16;
  h *= 0x7feb352du;
  h ^= h >> 15;
  h *= 0x846ca68bu;
  h ^= h >> 16;
  return h / 4294967296.0;
}
