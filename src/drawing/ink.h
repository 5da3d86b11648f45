/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The pen everything is drawn with: where to, in which colours, how large. */
#pragma once

#include "drawing/palette.h"

#include "base/point.h"

#include <cairo.h>

G_BEGIN_DECLS

/**
 * HcInk:
 * @cr: where to draw; its user space is millimetres of the house
 * @palette: the colours
 * @scale: units of output (pixels or points) for one millimetre of the house;
 *   it decides how thick lines are and how much detail is worth drawing
 * @text_as_boxes: whether words are drawn as boxes of their size, for pictures
 *   that must not depend on fonts
 * @fade: how much of all that is drawn fades into what is below: 0 for nothing
 */
typedef struct
{
  cairo_t *cr;
  const HcPalette *palette;
  double scale;
  gboolean text_as_boxes;
  double fade;
} HcInk;

/**
 * HcLine:
 * @HC_LINE_HAIR: texture: grain, pebbles, mesh
 * @HC_LINE_FINE: inner edges, dimensions
 * @HC_LINE_MEDIUM: outlines
 * @HC_LINE_HEAVY: cut walls
 */
typedef enum
{
  HC_LINE_HAIR,
  HC_LINE_FINE,
  HC_LINE_MEDIUM,
  HC_LINE_HEAVY,
} HcLine;

double hc_ink_line_mm (const HcInk *ink, HcLine line);
gboolean hc_ink_shows (const HcInk *ink, double size_mm);
void hc_ink_set (const HcInk *ink, HcPaint paint, double opacity);
void hc_ink_set_colour (const HcInk *ink, HcColour colour, double opacity);
void hc_ink_fill (const HcInk *ink, HcPaint paint);
void hc_ink_wash (const HcInk *ink, HcPaint paint, double opacity);
void hc_ink_stroke (const HcInk *ink, HcLine line, HcPaint paint);
void hc_ink_rectangle (const HcInk *ink, double x, double y, double width, double depth);
void hc_ink_rounded (const HcInk *ink, double x, double y, double width, double depth,
                     double radius);
void hc_ink_circle (const HcInk *ink, double x, double y, double radius);
void hc_ink_ellipse (const HcInk *ink, double x, double y, double rx, double ry);
void hc_ink_ring (const HcInk *ink, const HcPoint *points, guint n_points);
void hc_ink_line (const HcInk *ink, double x1, double y1, double x2, double y2);

double hc_chance (guint seed, guint which);

G_END_DECLS
