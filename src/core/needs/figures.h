/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Names of the figures that needs are judged by. */
#pragma once

#define HC_FIGURE_FLOOR_AREA "floor.area"
#define HC_FIGURE_FLOOR_SHUT_IN_FACTOR "floor.shut-in-factor"
#define HC_FIGURE_FLOOR_SHORT_SPELL "floor.short-spell"
#define HC_FIGURE_RUN_AREA "run.area"
#define HC_FIGURE_ROOST_SEAT "roost.seat"
#define HC_FIGURE_ROOST_NEST_BELOW "roost.nest-below"
#define HC_FIGURE_NESTS_BOXES "nests.boxes"
#define HC_FIGURE_NESTS_GROUP_AREA "nests.group-area"
#define HC_FIGURE_FEED_LONG_EDGE "feed.long-edge"
#define HC_FIGURE_FEED_ROUND_EDGE "feed.round-edge"
#define HC_FIGURE_FEED_FROM_WATER "feed.from-water"
#define HC_FIGURE_FEED_WALK "feed.walk"
#define HC_FIGURE_WATER_LONG_EDGE "water.long-edge"
#define HC_FIGURE_WATER_ROUND_EDGE "water.round-edge"
#define HC_FIGURE_WATER_NIPPLES "water.nipples"
#define HC_FIGURE_WATER_WALK "water.walk"
#define HC_FIGURE_WARMTH_COVER "warmth.cover"
#define HC_FIGURE_WARMTH_PAD "warmth.pad"
#define HC_FIGURE_WARMTH_HEATED_SHARE "warmth.heated-share"
#define HC_FIGURE_WARMTH_LAMP_CLEARANCE "warmth.lamp-clearance"
#define HC_FIGURE_WAY_OUT_TOTAL_WIDTH "way-out.total-width"
#define HC_FIGURE_LIGHT_WINDOW_AREA "light.window-area"
#define HC_FIGURE_AIR_WINTER_VENTS "air.winter-vents"
#define HC_FIGURE_AIR_SUMMER_VENTS "air.summer-vents"
#define HC_FIGURE_COMPANY_FEMALES_PER_MALE "company.females-per-male"
#define HC_FIGURE_COMPANY_FEWEST_FEMALES "company.fewest-females-per-male"
#define HC_FIGURE_COMPANY_TOGETHER_FROM "company.together-from"
#define HC_FIGURE_COMPANY_FEWEST "company.fewest"
