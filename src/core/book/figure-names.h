/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Names of the figures of a standard that the code asks for. */
#pragma once

#define HC_FIGURE_FLOOR_WIDTH "floor.width"
#define HC_FIGURE_FLOOR_HEADROOM "floor.headroom"
#define HC_FIGURE_FLOOR_AREA "floor.area"
#define HC_FIGURE_FLOOR_SHUT_IN_FACTOR "floor.shut-in-factor"
#define HC_FIGURE_FLOOR_SHORT_SPELL "floor.short-spell"

#define HC_FIGURE_RUN_AREA "run.area"

#define HC_FIGURE_ROOST_BAR_TO_BAR "roost.bar-to-bar"
#define HC_FIGURE_ROOST_BAR_TO_WALL "roost.bar-to-wall"
#define HC_FIGURE_ROOST_HEADROOM "roost.headroom"
#define HC_FIGURE_ROOST_BAR_WIDTH "roost.bar-width"
#define HC_FIGURE_ROOST_BAR_WIDTH_COLD "roost.bar-width-cold"
#define HC_FIGURE_ROOST_COLD_NIGHT "roost.cold-night"
#define HC_FIGURE_ROOST_BAR_HEIGHT "roost.bar-height"
#define HC_FIGURE_ROOST_SEAT "roost.seat"
#define HC_FIGURE_ROOST_NEST_BELOW "roost.nest-below"

#define HC_FIGURE_CLIMB_RISE_FROM_FLOOR "climb.rise-from-floor"
#define HC_FIGURE_CLIMB_DROP_TO_FLOOR "climb.drop-to-floor"
#define HC_FIGURE_CLIMB_NEAR_GAP "climb.near-gap"
#define HC_FIGURE_CLIMB_SHORT_HOP "climb.short-hop-rise"
#define HC_FIGURE_CLIMB_FARTHEST_GAP "climb.farthest-gap"
#define HC_FIGURE_CLIMB_LONG_HOP "climb.long-hop-drop"
#define HC_FIGURE_CLIMB_LANDING "climb.landing-strip"
#define HC_FIGURE_CLIMB_SOFT_BEDDING "climb.soft-bedding"
#define HC_FIGURE_CLIMB_STEP "climb.step"
#define HC_FIGURE_CLIMB_RAMP_SLOPE "climb.ramp-slope"
#define HC_FIGURE_CLIMB_RAMP_WIDTH "climb.ramp-width"

#define HC_FIGURE_NEST_WIDTH "nests.box-width"
#define HC_FIGURE_NEST_DEPTH "nests.box-depth"
#define HC_FIGURE_NEST_HEIGHT "nests.box-height"
#define HC_FIGURE_NEST_FLOOR_HEIGHT "nests.height"
#define HC_FIGURE_NESTS_BOXES "nests.boxes"
#define HC_FIGURE_NESTS_GROUP_AREA "nests.group-area"

#define HC_FIGURE_FEED_LONG_EDGE "feed.long-edge"
#define HC_FIGURE_FEED_ROUND_EDGE "feed.round-edge"
#define HC_FIGURE_FEED_FROM_WATER "feed.from-water"
#define HC_FIGURE_FEED_WALK "feed.walk"

#define HC_FIGURE_WATER_DEPTH "water.depth"
#define HC_FIGURE_WATER_LONG_EDGE "water.long-edge"
#define HC_FIGURE_WATER_ROUND_EDGE "water.round-edge"
#define HC_FIGURE_WATER_NIPPLES "water.nipples"
#define HC_FIGURE_WATER_WALK "water.walk"

#define HC_FIGURE_HEAT_WEEKS "warmth.weeks"
#define HC_FIGURE_HEAT_WEEKS_MILD "warmth.mild-from"
#define HC_FIGURE_MILD_NIGHT "warmth.mild-night"
#define HC_FIGURE_LAMP_CIRCLE "warmth.lamp-circle"
#define HC_FIGURE_WARMTH_COVER "warmth.cover"
#define HC_FIGURE_WARMTH_PAD "warmth.pad"
#define HC_FIGURE_WARMTH_HEATED_SHARE "warmth.heated-share"
#define HC_FIGURE_WARMTH_LAMP_CLEARANCE "warmth.lamp-clearance"

#define HC_FIGURE_POP_HOLE_WIDTH "way-out.pop-hole-width"
#define HC_FIGURE_POP_HOLE_HEIGHT "way-out.pop-hole-height"
#define HC_FIGURE_WAY_OUT_TOTAL_WIDTH "way-out.total-width"

#define HC_FIGURE_LITTER_AREA "litter.area"
#define HC_FIGURE_LITTER_DEPTH "litter.depth"

#define HC_FIGURE_LIGHT_WINDOW_AREA "light.window-area"

#define HC_FIGURE_WINTER_VENT_HEIGHT "air.vent-above-birds"
#define HC_FIGURE_AIR_WINTER_VENTS "air.winter-vents"
#define HC_FIGURE_AIR_SUMMER_VENTS "air.summer-vents"
#define HC_FIGURE_AIR_HUMIDITY "air.humidity"
#define HC_FIGURE_AIR_AMMONIA "air.ammonia"
#define HC_FIGURE_AIR_CARBON_DIOXIDE "air.carbon-dioxide"

#define HC_FIGURE_REACH_KEEPER_WAY "reach.keeper-way"
#define HC_FIGURE_REACH_BARROW_WAY "reach.barrow-way"
#define HC_FIGURE_REACH_HEADROOM "reach.headroom"
#define HC_FIGURE_REACH_STEP_OVER "reach.step-over"
#define HC_FIGURE_REACH_ARM "reach.eggs"

#define HC_FIGURE_PREDATORS_APRON "predators.apron"
#define HC_FIGURE_PREDATORS_DUG "predators.dug"
#define HC_FIGURE_PREDATORS_FENCE_HEIGHT "predators.fence-height"

#define HC_FIGURE_COMPANY_FEMALES_PER_MALE "company.females-per-male"
#define HC_FIGURE_COMPANY_FEWEST_FEMALES "company.fewest-females-per-male"
#define HC_FIGURE_COMPANY_TOGETHER_FROM "company.together-from"
#define HC_FIGURE_COMPANY_QUARANTINE "company.quarantine"
#define HC_FIGURE_COMPANY_FEWEST "company.fewest"
