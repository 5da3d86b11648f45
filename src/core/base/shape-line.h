/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Lines across shapes: which stretches of them lie inside. */
#pragma once

#include "base/shape.h"

G_BEGIN_DECLS

/**
 * HcStretch:
 * @from_mm: where it starts, in mm from the start of the line
 * @to_mm: where it ends
 *
 * A piece of a line.
 */
typedef struct
{
  double from_mm;
  double to_mm;
} HcStretch;

GArray *hc_shape_clip_line (const HcShape *self,
                            HcPoint a,
                            HcPoint b) G_GNUC_WARN_UNUSED_RESULT;
GArray *hc_stretches_without (const GArray *stretches,
                              const GArray *taken_off) G_GNUC_WARN_UNUSED_RESULT;
double hc_stretches_total_mm (const GArray *stretches);
double hc_stretches_longest_mm (const GArray *stretches);
double hc_shape_edge_inside_mm (const HcShape *self,
                                const HcShape *within);

G_END_DECLS
