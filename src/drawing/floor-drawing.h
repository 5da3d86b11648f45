/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The whole floor from above. */
#pragma once

#include "drawing/bird-places.h"
#include "drawing/ink.h"

#include "base/box.h"
#include "needs/check.h"
#include "plan/plan.h"

G_BEGIN_DECLS

/**
 * HcFloorParts:
 * @HC_FLOOR_BIRDS: birds on their places
 * @HC_FLOOR_NAMES: names and areas of pens
 * @HC_FLOOR_DIMENSIONS: inside lengths
 * @HC_FLOOR_MARKS: marks on what is not good
 * @HC_FLOOR_ALL: all of these
 */
typedef enum
{
  HC_FLOOR_BIRDS = 1 << 0,
  HC_FLOOR_NAMES = 1 << 1,
  HC_FLOOR_DIMENSIONS = 1 << 2,
  HC_FLOOR_MARKS = 1 << 3,
  HC_FLOOR_ALL = HC_FLOOR_BIRDS | HC_FLOOR_NAMES | HC_FLOOR_DIMENSIONS | HC_FLOOR_MARKS,
} HcFloorParts;

HcBox hc_floor_get_bounds (const HcLayout *layout);
void hc_draw_floor (const HcInk *ink, const HcPlan *plan, const HcCheck *check,
                    HcFloorParts parts);
void hc_draw_bird_places (const HcInk *ink, const GArray *places);

G_END_DECLS
