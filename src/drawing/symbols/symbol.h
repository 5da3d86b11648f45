/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Fittings as seen from above, one function each, in a frame of their own:
 * origin in the middle, x along the width, y along the depth, millimetres. */
#pragma once

#include "drawing/ink.h"

#include "plan/fitting.h"

G_BEGIN_DECLS

/**
 * HcSymbolFrame:
 * @left: x of the left edge
 * @top: y of the back edge
 * @width: along x
 * @depth: along y
 *
 * A footprint drawn in by half a line, so that the outline stays within it.
 */
typedef struct
{
  double left;
  double top;
  double width;
  double depth;
} HcSymbolFrame;

HcSymbolFrame hc_symbol_frame (const HcInk *ink, const HcFittingValues *values);
double hc_symbol_line (const HcInk *ink, const HcFittingValues *values);
void hc_symbol_outline (const HcInk *ink, const HcFittingValues *values);
guint hc_symbol_seed (const HcFittingValues *values);
double hc_symbol_bar_y (const HcFittingValues *values, int bar);

void hc_symbol_roost (const HcInk *ink, const HcFittingValues *values);
void hc_symbol_droppings_board (const HcInk *ink, const HcFittingValues *values);
void hc_symbol_nest_boxes (const HcInk *ink, const HcFittingValues *values);
void hc_symbol_feeder (const HcInk *ink, const HcFittingValues *values);
void hc_symbol_drinker (const HcInk *ink, const HcFittingValues *values);
void hc_symbol_floor_heat_pad (const HcInk *ink, const HcFittingValues *values);
void hc_symbol_heat_plate (const HcInk *ink, const HcFittingValues *values);
void hc_symbol_heat_lamp (const HcInk *ink, const HcFittingValues *values);
void hc_symbol_hopper (const HcInk *ink, const HcFittingValues *values);
void hc_symbol_dust_bath (const HcInk *ink, const HcFittingValues *values);
void hc_symbol_ramp (const HcInk *ink, const HcFittingValues *values);
void hc_symbol_platform (const HcInk *ink, const HcFittingValues *values);
void hc_symbol_store_bin (const HcInk *ink, const HcFittingValues *values);
void hc_symbol_post (const HcInk *ink, const HcFittingValues *values);

void hc_symbol_heat_lamp_surroundings (const HcInk *ink, const HcFittingValues *values);

G_END_DECLS
