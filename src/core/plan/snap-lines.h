/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Private to core: lines that may catch a thing, and the nearest of them. */
#pragma once

#include "base/box.h"
#include "plan/snap.h"

G_BEGIN_DECLS

/* A line at x = @at (@upright) or y = @at, drawn from @from to @to along it. */
typedef struct
{
  HcSnapKind kind;
  gboolean upright;
  double at;
  double from, to;
} HcSnapLine;

void hc_snap_lines_add (GArray *lines, HcSnapKind kind, gboolean upright, double at, double from,
                        double to);
void hc_snap_lines_add_box (GArray *lines, HcBox box);
void hc_snap_lines_add_ring (GArray *lines, const HcPoint *ring, guint n_points);
HcSnap hc_snap_lines_catch (const GArray *lines, HcBox box, double reach_mm);

G_END_DECLS
