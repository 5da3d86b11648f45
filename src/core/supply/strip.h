/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The band of floor beside a bar or a trough, and what reaches into it. */
#pragma once

#include "base/shape-line.h"

G_BEGIN_DECLS

/**
 * HcStrip:
 * @from: where its line starts
 * @along: the way its line runs, of length 1
 * @square: square to it, turned from x towards y, of length 1
 * @length_mm: how long its line is
 * @near_mm: where it begins, measured square to the line
 * @far_mm: where it ends, measured square to the line
 *
 * What is measured square to a line says nothing about its ends: a wall that
 * a bar runs up to never cuts it.
 */
typedef struct
{
  HcPoint from;
  HcPoint along;
  HcPoint square;
  double length_mm;
  double near_mm;
  double far_mm;
} HcStrip;

void hc_strip_init (HcStrip *strip, HcPoint from, HcPoint to, double near_mm, double far_mm);
HcPoint hc_strip_get_point (const HcStrip *strip, double along_mm, double square_mm);
HcBox hc_strip_get_bounds (const HcStrip *strip);
gboolean hc_strip_is_cut_by_line (const HcStrip *strip, HcPoint a, HcPoint b, HcStretch *cut);
gboolean hc_strip_is_cut_by (const HcStrip *strip, const HcShape *thing, HcStretch *cut);
gboolean hc_strip_covers_line (const HcStrip *strip, HcPoint a, HcPoint b,
                               HcStretch *covered);
void hc_strip_cut_by_edges (const HcStrip *strip, const HcShape *outline, GArray *cuts);
GArray *hc_strip_get_inside (const HcStrip *strip, const HcShape *outline)
    G_GNUC_WARN_UNUSED_RESULT;

void hc_stretches_sort (GArray *stretches);

G_END_DECLS
