/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The scale bar. */
#include "config.h"

#include "scale-bar.h"

#include "drawing/text.h"

#define BAR_UNITS 4.0
#define GAP_UNITS 3.0

static double
units_to_mm (const HcInk *ink, double units)
{
  return units / ink->scale;
}

/* The longest round length that fits, in steps a keeper would choose. */
static double
step_of_bar (double most_mm, HcUnits units)
{
  static const double metric[] = { 100, 200, 500, 1000, 2000, 5000, 10000 };
  static const double feet[] = { 1, 2, 4, 5, 10, 20, 50 };
  double step = units == HC_UNITS_FEET ? HC_MM_PER_FOOT / 2 : metric[0];

  for (guint i = 0; i < G_N_ELEMENTS (metric); i++)
    {
      double next = units == HC_UNITS_FEET ? feet[i] * HC_MM_PER_FOOT : metric[i];

      if (4 * next <= most_mm)
        step = next;
    }
  return step;
}

static void
draw_bar_part (const HcInk *ink, double x, double y, double step, gboolean dark)
{
  hc_ink_rectangle (ink, x, y, step, units_to_mm (ink, BAR_UNITS));
  hc_ink_fill (ink, dark ? HC_PAINT_INK : HC_PAINT_PAPER);
  hc_ink_stroke (ink, HC_LINE_FINE, HC_PAINT_INK);
}

/**
 * hc_draw_scale_bar:
 * @ink: the ink
 * @x_mm: left end
 * @y_mm: upper edge
 * @most_mm: how long it may be at most
 * @units: the keeper's units
 *
 * Draws a bar of four parts with its lengths below.
 */
void
hc_draw_scale_bar (const HcInk *ink, double x_mm, double y_mm, double most_mm, HcUnits units)
{
  double step = step_of_bar (most_mm, units);

  for (guint i = 0; i < 4; i++)
    draw_bar_part (ink, x_mm + i * step, y_mm, step, i % 2 == 0);
  for (guint i = 0; i <= 4; i += 2)
    {
      g_autofree char *words = i > 0 ? hc_length_format (i * step, units) : g_strdup ("0");

      hc_draw_text (ink, HC_HAND_SMALL, words, x_mm + i * step,
                    y_mm + units_to_mm (ink, BAR_UNITS + GAP_UNITS), 0.5, 0, 0,
                    HC_PAINT_SOFT_INK);
    }
}
