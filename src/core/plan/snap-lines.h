/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Private to core: lines that may catch a thing, and the nearest of them. */
#pragma once

#include "base/box.h"
#include "plan/snap.h"

G_BEGIN_DECLS

/* Which part of what is dragged comes to lie on a line. */
typedef enum
{
  HC_SNAP_EITHER_EDGE,
  HC_SNAP_OWN_MIDDLE,
  HC_SNAP_LOW_EDGE,
  HC_SNAP_HIGH_EDGE,
} HcSnapPart;

/* A line at x = @at (@upright) or y = @at, drawn from @from to @to along it. */
typedef struct
{
  HcSnapKind kind;
  HcSnapPart part;
  gboolean upright;
  double at;
  double from, to;
} HcSnapLine;

/* A box seen across (@upright) or along the plan. */
typedef struct
{
  double low, middle, high;
  double beside_low, beside_high;
} HcSnapSpan;

HcSnapSpan hc_snap_span_of (HcBox box, gboolean upright);

void hc_snap_lines_add (GArray *lines, HcSnapKind kind, gboolean upright, double at, double from,
                        double to);
void hc_snap_lines_add_part (GArray *lines, HcSnapKind kind, HcSnapPart part, gboolean upright,
                             double at, const HcSnapSpan *beside);
void hc_snap_lines_add_gaps (GArray *lines, const GArray *boxes, HcBox dragged);
void hc_snap_lines_add_rules (GArray *lines, const HcSnapRules *rules, const HcFitting *dragged,
                              HcParts *neighbours, const HcPoint *ring, guint n_points);
void hc_snap_lines_add_box (GArray *lines, HcBox box);
void hc_snap_lines_add_ring (GArray *lines, const HcPoint *ring, guint n_points);
HcSnap hc_snap_lines_catch (const GArray *lines, HcBox box, double reach_mm);

G_END_DECLS
