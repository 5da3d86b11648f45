/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What catches a thing while it is dragged: walls, neighbours, middles. */
#pragma once

#include "plan/plan.h"

G_BEGIN_DECLS

/**
 * HcSnapKind:
 * @HC_SNAP_WALL: it stands against the face of a wall
 * @HC_SNAP_EDGE: its edge is in line with or against another thing's edge
 * @HC_SNAP_MIDDLE: its middle is in line with another thing's middle, or with
 *   the pen's
 * @HC_SNAP_CORNER: it is in line with a corner of a wall
 */
typedef enum
{
  HC_SNAP_WALL,
  HC_SNAP_EDGE,
  HC_SNAP_MIDDLE,
  HC_SNAP_CORNER,
} HcSnapKind;

/**
 * HcSnapCatch:
 * @kind: what sort of line caught it
 * @from: where the line that caught it starts, to be drawn
 * @to: where it ends
 */
typedef struct
{
  HcSnapKind kind;
  HcPoint from;
  HcPoint to;
} HcSnapCatch;

/**
 * HcSnap:
 * @by: for fittings how far they move in all, caught; for a corner how far it
 *   moves on from where the hand is
 * @n_caught: how many lines caught it, at most one across and one along
 * @caught: those lines
 */
typedef struct
{
  HcPoint by;
  guint n_caught;
  HcSnapCatch caught[2];
} HcSnap;

HcSnap hc_snap_fittings (HcPlan *plan, const char *const *ids, HcPoint by, double reach_mm);
HcSnap hc_snap_corner (HcPlan *plan, const char *corner, HcPoint to, double reach_mm);
HcPoint hc_snap_point (HcPlan *plan, HcPoint at, double reach_mm);

G_END_DECLS
