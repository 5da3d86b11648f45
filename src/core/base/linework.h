/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Loops laid on a fine grid and cut wherever they cross or touch. */
#pragma once

#include "base/loops.h"

G_BEGIN_DECLS

#define HC_N_LAYERS 2

/* Places are counted in steps of the grid. No step count passes 2^29, so that
 * products of their differences can be summed in 64 bits without rounding. */
typedef struct
{
  gint64 x, y;
} HcGridPoint;

/* Runs from the lower x (or y, where upright) to the higher. Going along it
 * once, every loop of a layer that does so counts 1, one the other way -1. */
typedef struct
{
  HcGridPoint a, b;
  int winds[HC_N_LAYERS];
  guint source;
  gboolean is_cut;
} HcGridLine;

typedef struct
{
  HcPoint origin;
  double step_mm;
  GArray *lines;
  GArray *ways;
} HcLinework;

HcLinework *hc_linework_new (HcLoops *const layers[HC_N_LAYERS]) G_GNUC_WARN_UNUSED_RESULT;
void hc_linework_free (HcLinework *self);

HcPoint hc_linework_place (const HcLinework *self,
                           HcGridPoint at);
double hc_grid_step_mm (HcBox bounds);

/* Twice the area of a, b, p: more than 0 when p lies to the left of the way to b. */
static inline gint64
hc_grid_turn (HcGridPoint a,
              HcGridPoint b,
              HcGridPoint p)
{
  return (b.x - a.x) * (p.y - a.y) - (b.y - a.y) * (p.x - a.x);
}

static inline int
hc_grid_compare (HcGridPoint a,
                 HcGridPoint b)
{
  return a.x != b.x ? (a.x > b.x) - (a.x < b.x) : (a.y > b.y) - (a.y < b.y);
}

G_DEFINE_AUTOPTR_CLEANUP_FUNC (HcLinework, hc_linework_free)

G_END_DECLS
