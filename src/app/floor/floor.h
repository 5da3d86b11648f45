/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The floor itself: layers and things to choose, at the view's scale. */
#pragma once

#include "app/floor/floor-item.h"
#include "app/floor/sight.h"
#include "app/window/panel.h"

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
G_DECLARE_FINAL_TYPE (HcFloor, hc_floor, HC, FLOOR, HcPanel)

const HcSight *hc_floor_get_sight (HcFloor *self);
void hc_floor_set_sight (HcFloor *self, const HcSight *sight);
void hc_floor_fit (HcFloor *self);
void hc_floor_zoom (HcFloor *self, double factor);
void hc_floor_show_part (HcFloor *self, const char *id);
void hc_floor_show_parts (HcFloor *self, const char *const *ids);
const HcPalette *hc_floor_get_palette (HcFloor *self);
HcFloorItem *hc_floor_get_item (HcFloor *self, const char *id);
HcFloorTool hc_floor_get_tool (HcFloor *self);
void hc_floor_set_tool (HcFloor *self, HcFloorTool tool);
void hc_floor_add_fitting (HcFloor *self, HcFitting *pattern, HcPoint at);
void hc_floor_add_opening (HcFloor *self, HcOpening *pattern, HcPoint at);
HcPoint hc_floor_get_free_place (HcFloor *self, HcFitting *thing);
void hc_floor_item_focused (HcFloor *self, HcFloorItem *item);

G_END_DECLS
