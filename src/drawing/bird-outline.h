/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The shapes birds are drawn from: a table of curves for each form. */
#pragma once

#include "drawing/bird-look.h"

#include <cairo.h>

G_BEGIN_DECLS

#define HC_BIRD_CURVES 4

/**
 * HcBirdCurve:
 * @n: cubic curves in it
 * @xy: start, then three points for each curve; x as a part of the length
 *   (the beak at 0.5, the tail at -0.5), y as a part of the width
 *
 * One side of a bird, from tail to head; the other side is its mirror image.
 */
typedef struct
{
  guint n;
  double xy[1 + 3 * HC_BIRD_CURVES][2];
} HcBirdCurve;

/**
 * HcBirdOutline:
 * @body: one side of the body
 * @wing: one folded wing, closed
 * @head_x: middle of the head
 * @head_length: half its length, as a part of the bird's
 * @head_width: half its width, as a part of the bird's
 * @bill_width: half the width of the bill at its root; a wide one is round
 * @flat_bill: whether the bill is flat and round, as of a duck
 */
typedef struct
{
  HcBirdCurve body;
  HcBirdCurve wing;
  double head_x;
  double head_length;
  double head_width;
  double bill_width;
  gboolean flat_bill;
} HcBirdOutline;

const HcBirdOutline *hc_bird_outline_get (HcBirdForm form);
void hc_bird_outline_trace_both (cairo_t *cr, const HcBirdCurve *curve);
void hc_bird_outline_trace_side (cairo_t *cr, const HcBirdCurve *curve, double side);

G_END_DECLS
