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
 * @HC_SNAP_SPACING: the gaps between it and its neighbours are even
 * @HC_SNAP_BAR_TO_WALL: its bar is as far from the wall as the rules ask
 * @HC_SNAP_BAR_TO_BAR: its bar is as far from another bar as the rules ask
 * @HC_SNAP_FEED_TO_WATER: feed and water are as far apart as the rules ask
 */
typedef enum
{
  HC_SNAP_WALL,
  HC_SNAP_EDGE,
  HC_SNAP_MIDDLE,
  HC_SNAP_CORNER,
  HC_SNAP_SPACING,
  HC_SNAP_BAR_TO_WALL,
  HC_SNAP_BAR_TO_BAR,
  HC_SNAP_FEED_TO_WATER,
} HcSnapKind;

/**
 * HcSnapRules:
 * @bar_to_wall_mm: from the axis of a bar to a wall, 0 when not asked
 * @bar_to_bar_mm: from axis to axis, 0 when not asked
 * @feed_to_water_mm: from a feeder to a drinker, 0 when not asked
 *
 * Distances the rules ask for, which may catch as well.
 */
typedef struct
{
  double bar_to_wall_mm;
  double bar_to_bar_mm;
  double feed_to_water_mm;
} HcSnapRules;

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

HcSnap hc_snap_fittings (HcPlan *plan, const char *const *ids, HcPoint by, double reach_mm,
                         const HcSnapRules *rules);
HcSnap hc_snap_corner (HcPlan *plan, const char *corner, HcPoint to, double reach_mm);
HcPoint hc_snap_point (HcPlan *plan, HcPoint at, double reach_mm);

G_END_DECLS
