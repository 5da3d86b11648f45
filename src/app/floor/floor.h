/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The floor itself: the plan from above, with things to choose in it. */
#pragma once

#include "app/canvas/canvas.h"

G_BEGIN_DECLS

/**
 * HcFloorTool:
 * @HC_TOOL_CHOOSE: choose, move, stretch
 * @HC_TOOL_PEN: draw a pen from corner to corner
 * @HC_TOOL_RUN: draw a run from corner to corner
 */
typedef enum
{
  HC_TOOL_CHOOSE,
  HC_TOOL_PEN,
  HC_TOOL_RUN,
} HcFloorTool;

#define HC_TYPE_FLOOR (hc_floor_get_type ())
G_DECLARE_FINAL_TYPE (HcFloor, hc_floor, HC, FLOOR, HcCanvas)

HcFloorTool hc_floor_get_tool (HcFloor *self);
void hc_floor_set_tool (HcFloor *self, HcFloorTool tool);
void hc_floor_add_fitting (HcFloor *self, HcFitting *pattern, HcPoint at);
void hc_floor_add_opening (HcFloor *self, HcOpening *pattern, HcPoint at);
HcPoint hc_floor_get_free_place (HcFloor *self, HcFitting *thing);

G_END_DECLS
