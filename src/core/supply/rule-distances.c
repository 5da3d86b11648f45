/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Takes the distances that may catch a thing from the rules in force. */
#include "config.h"

#include "supply/rule-distances.h"

#include "book/figure-names.h"

static double
bound_of (const HcStandard *standard, const char *figure, HcLevel level)
{
  const HcLimit *limit
      = hc_standard_find_limit (standard, figure, NULL, HC_WEEK_GROWN, HC_CONDITION_DAY);
  double bound;

  return limit != NULL && hc_limit_get (limit, level, &bound) ? bound : 0;
}

/**
 * hc_standard_get_distances: (skip)
 * @standard: whose figures count
 * @level: how well they shall be met
 *
 * Returns: the distances it asks for, 0 where it asks none
 */
HcSnapRules
hc_standard_get_distances (const HcStandard *standard, HcLevel level)
{
  return (HcSnapRules){
    .bar_to_wall_mm = bound_of (standard, HC_FIGURE_ROOST_BAR_TO_WALL, level),
    .bar_to_bar_mm = bound_of (standard, HC_FIGURE_ROOST_BAR_TO_BAR, level),
    .feed_to_water_mm = bound_of (standard, HC_FIGURE_FEED_FROM_WATER, level),
  };
}

/**
 * hc_standard_get_nest_below_mm: (skip)
 * @standard: whose figures count
 * @level: how well they shall be met
 *
 * Returns: how far below the lowest bar it wants nests, 0 when it does not ask
 */
double
hc_standard_get_nest_below_mm (const HcStandard *standard, HcLevel level)
{
  return bound_of (standard, HC_FIGURE_ROOST_NEST_BELOW, level);
}
