/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Hen, cock, duck, goose and chick as curves. */
#include "config.h"

#include "bird-outline.h"

static const HcBirdOutline outlines[HC_N_BIRD_FORMS] = {
  [HC_BIRD_HEN] = {
    .body = { 4, { { -0.5, 0.07 },
                   { -0.46, 0.15 }, { -0.39, 0.16 }, { -0.33, 0.24 },
                   { -0.26, 0.4 }, { -0.14, 0.5 }, { -0.02, 0.5 },
                   { 0.11, 0.5 }, { 0.19, 0.36 }, { 0.24, 0.24 },
                   { 0.27, 0.18 }, { 0.3, 0.15 }, { 0.34, 0.13 } } },
    .wing = { 2, { { 0.15, 0.3 },
                   { 0.08, 0.5 }, { -0.14, 0.52 }, { -0.37, 0.12 },
                   { -0.24, 0.13 }, { 0.02, 0.06 }, { 0.15, 0.3 } } },
    .head_x = 0.35, .head_length = 0.075, .head_width = 0.15, .bill_width = 0.06,
  },
  [HC_BIRD_COCK] = {
    .body = { 4, { { -0.5, 0.12 },
                   { -0.47, 0.31 }, { -0.4, 0.32 }, { -0.31, 0.22 },
                   { -0.24, 0.36 }, { -0.12, 0.5 }, { 0.02, 0.5 },
                   { 0.14, 0.5 }, { 0.21, 0.38 }, { 0.26, 0.25 },
                   { 0.29, 0.19 }, { 0.31, 0.15 }, { 0.35, 0.13 } } },
    .wing = { 2, { { 0.15, 0.32 },
                   { 0.08, 0.5 }, { -0.1, 0.5 }, { -0.28, 0.18 },
                   { -0.18, 0.16 }, { 0.04, 0.08 }, { 0.15, 0.32 } } },
    .head_x = 0.36, .head_length = 0.07, .head_width = 0.14, .bill_width = 0.06,
  },
  [HC_BIRD_DUCK] = {
    .body = { 4, { { -0.5, 0.05 },
                   { -0.45, 0.16 }, { -0.41, 0.26 }, { -0.33, 0.36 },
                   { -0.26, 0.46 }, { -0.16, 0.5 }, { -0.06, 0.5 },
                   { 0.06, 0.5 }, { 0.13, 0.34 }, { 0.17, 0.22 },
                   { 0.2, 0.15 }, { 0.24, 0.14 }, { 0.28, 0.14 } } },
    .wing = { 2, { { 0.1, 0.28 },
                   { 0.03, 0.5 }, { -0.18, 0.54 }, { -0.42, 0.1 },
                   { -0.28, 0.16 }, { -0.02, 0.06 }, { 0.1, 0.28 } } },
    .head_x = 0.3, .head_length = 0.085, .head_width = 0.17, .bill_width = 0.095,
    .flat_bill = TRUE,
  },
  [HC_BIRD_GOOSE] = {
    .body = { 4, { { -0.5, 0.08 },
                   { -0.46, 0.2 }, { -0.41, 0.3 }, { -0.34, 0.39 },
                   { -0.28, 0.47 }, { -0.2, 0.5 }, { -0.12, 0.5 },
                   { -0.01, 0.5 }, { 0.06, 0.34 }, { 0.11, 0.2 },
                   { 0.16, 0.1 }, { 0.24, 0.1 }, { 0.32, 0.1 } } },
    .wing = { 2, { { 0.03, 0.28 },
                   { -0.03, 0.5 }, { -0.22, 0.55 }, { -0.43, 0.1 },
                   { -0.3, 0.16 }, { -0.08, 0.06 }, { 0.03, 0.28 } } },
    .head_x = 0.35, .head_length = 0.07, .head_width = 0.135, .bill_width = 0.08,
    .flat_bill = TRUE,
  },
  [HC_BIRD_CHICK] = {
    .body = { 3, { { -0.46, 0.04 },
                   { -0.44, 0.36 }, { -0.3, 0.5 }, { -0.12, 0.5 },
                   { 0.05, 0.5 }, { 0.12, 0.4 }, { 0.16, 0.26 },
                   { 0.18, 0.2 }, { 0.2, 0.2 }, { 0.22, 0.2 } } },
    .wing = { 2, { { 0.04, 0.34 },
                   { -0.02, 0.52 }, { -0.16, 0.5 }, { -0.26, 0.3 },
                   { -0.16, 0.3 }, { -0.04, 0.24 }, { 0.04, 0.34 } } },
    .head_x = 0.25, .head_length = 0.15, .head_width = 0.26, .bill_width = 0.07,
  },
};

/**
 * hc_bird_outline_get:
 * @form: a form
 *
 * Returns: (transfer none): its curves
 */
const HcBirdOutline *
hc_bird_outline_get (HcBirdForm form)
{
  g_return_val_if_fail ((guint) form < HC_N_BIRD_FORMS, &outlines[HC_BIRD_HEN]);

  return &outlines[form];
}

static void
trace_onwards (cairo_t *cr, const HcBirdCurve *curve, double side)
{
  for (guint i = 0; i < curve->n; i++)
    {
      const double (*p)[2] = &curve->xy[1 + 3 * i];

      cairo_curve_to (cr, p[0][0], side * p[0][1], p[1][0], side * p[1][1], p[2][0],
                      side * p[2][1]);
    }
}

static void
trace_back (cairo_t *cr, const HcBirdCurve *curve)
{
  for (guint i = curve->n; i-- > 0;)
    {
      const double (*p)[2] = &curve->xy[3 * i];

      cairo_curve_to (cr, p[2][0], -p[2][1], p[1][0], -p[1][1], p[0][0], -p[0][1]);
    }
}

/* Traces a closed path of @curve and its mirror image. */
void
hc_bird_outline_trace_both (cairo_t *cr, const HcBirdCurve *curve)
{
  const double *end = curve->xy[3 * curve->n];

  cairo_new_path (cr);
  cairo_move_to (cr, curve->xy[0][0], curve->xy[0][1]);
  trace_onwards (cr, curve, 1);
  cairo_line_to (cr, end[0], -end[1]);
  trace_back (cr, curve);
  cairo_close_path (cr);
}

/* Adds a closed path of @curve on one side, 1 or -1. */
void
hc_bird_outline_trace_side (cairo_t *cr, const HcBirdCurve *curve, double side)
{
  cairo_new_sub_path (cr);
  cairo_move_to (cr, curve->xy[0][0], side * curve->xy[0][1]);
  trace_onwards (cr, curve, side);
  cairo_close_path (cr);
}
