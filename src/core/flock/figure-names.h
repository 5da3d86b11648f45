/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Names of the figures that bound what a house offers. */
#pragma once

#define HC_FIGURE_HEAT_WEEKS "warmth.weeks"
#define HC_FIGURE_HEAT_WEEKS_MILD "warmth.mild-from"
#define HC_FIGURE_MILD_NIGHT "warmth.mild-night"
#define HC_FIGURE_LAMP_CIRCLE "warmth.lamp-circle"

#define HC_FIGURE_FLOOR_WIDTH "floor.width"
#define HC_FIGURE_FLOOR_HEADROOM "floor.headroom"

#define HC_FIGURE_ROOST_BAR_TO_BAR "roost.bar-to-bar"
#define HC_FIGURE_ROOST_BAR_TO_WALL "roost.bar-to-wall"
#define HC_FIGURE_ROOST_HEADROOM "roost.headroom"
#define HC_FIGURE_ROOST_BAR_WIDTH "roost.bar-width"
#define HC_FIGURE_ROOST_BAR_WIDTH_COLD "roost.bar-width-cold"
#define HC_FIGURE_ROOST_COLD_NIGHT "roost.cold-night"
#define HC_FIGURE_ROOST_BAR_HEIGHT "roost.bar-height"

#define HC_FIGURE_NEST_WIDTH "nests.box-width"
#define HC_FIGURE_NEST_DEPTH "nests.box-depth"
#define HC_FIGURE_NEST_HEIGHT "nests.box-height"
#define HC_FIGURE_NEST_FLOOR_HEIGHT "nests.height"

#define HC_FIGURE_WATER_DEPTH "water.depth"

#define HC_FIGURE_POP_HOLE_WIDTH "way-out.pop-hole-width"
#define HC_FIGURE_POP_HOLE_HEIGHT "way-out.pop-hole-height"

#define HC_FIGURE_WINTER_VENT_HEIGHT "air.vent-above-birds"
