/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The room a fitting takes: its footprint, its heights, its bars. */
#pragma once

#include "base/shape.h"
#include "plan/fitting.h"

G_BEGIN_DECLS

/**
 * HcBar:
 * @from: where its axis starts
 * @to: where its axis ends
 * @height_mm: its top above the floor
 * @width_mm: the width of its top
 *
 * One bar of a roost.
 */
typedef struct
{
  HcPoint from;
  HcPoint to;
  double height_mm;
  double width_mm;
} HcBar;

/**
 * HcRamp:
 * @foot: the middle of its lower end
 * @head: the middle of its upper end
 * @turn_deg: how its ends are turned from its own x
 * @across_mm: how wide it is to walk on
 * @slope_deg: how steep it is
 *
 * A ramp runs along the longer side of what it covers, and rises to its back.
 */
typedef struct
{
  HcPoint foot;
  HcPoint head;
  double turn_deg;
  double across_mm;
  double slope_deg;
} HcRamp;

HcPoint hc_stand_to_plan (const HcFitting *fitting, HcPoint own);
HcShape *hc_stand_get_footprint (const HcFitting *fitting) G_GNUC_WARN_UNUSED_RESULT;
void hc_stand_get_heights (const HcFitting *fitting, double *bottom_mm, double *top_mm);
gboolean hc_stand_takes_floor (const HcFitting *fitting, double headroom_mm);
void hc_stand_get_bar (const HcFitting *fitting, guint bar, HcBar *found);
void hc_stand_get_ramp (const HcFitting *fitting, HcRamp *found);
double hc_stand_get_nest_floor_mm (const HcFitting *fitting, guint row);

G_END_DECLS
