/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Words on the drawing. */
#pragma once

#include "drawing/ink.h"

#include <pango/pangocairo.h>

G_BEGIN_DECLS

/**
 * HcHand:
 * @HC_HAND_TITLE: the title of a sheet
 * @HC_HAND_HEADING: headings, names of pens
 * @HC_HAND_BODY: running text
 * @HC_HAND_STRONG: running text that counts
 * @HC_HAND_SMALL: dimensions and notes
 *
 * How words are written.
 */
typedef enum
{
  HC_HAND_TITLE,
  HC_HAND_HEADING,
  HC_HAND_BODY,
  HC_HAND_STRONG,
  HC_HAND_SMALL,
} HcHand;

/**
 * HcTextBox:
 * @width: in output units
 * @height: in output units
 */
typedef struct
{
  double width;
  double height;
} HcTextBox;

HcTextBox hc_text_measure (const HcInk *ink, HcHand hand, const char *text, double width);
void hc_draw_text (const HcInk *ink, HcHand hand, const char *text, double x_mm, double y_mm,
                   double across, double down, double turn, HcPaint paint);
double hc_draw_text_lines (const HcInk *ink, HcHand hand, const char *text, double x_mm,
                           double y_mm, double width, HcPaint paint);

G_END_DECLS
