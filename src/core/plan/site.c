/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The place the house stands in, as a table of its members. */
#include "config.h"

#include "plan/site.h"

static const char *const units[] = { "metric", "feet", NULL };
static const char *const terrains[] = { "water", "open", "sheltered", "town", NULL };

static const HcMember members[] = {
  HC_TEXT (HcSiteValues, place, "place"),
  HC_WORD (HcSiteValues, units, "units", units, HC_UNITS_METRIC),
  HC_NUMBER (HcSiteValues, coldest_night_c, "coldest_night_c", -60, 30, -10),
  HC_NUMBER (HcSiteValues, hottest_day_c, "hottest_day_c", -20, 60, 28),
  HC_NUMBER (HcSiteValues, humidity_percent, "humidity_percent", 0, 100, 85),
  HC_NUMBER (HcSiteValues, wind_m_s, "wind_m_s", 0, 60, 4),
  HC_NUMBER (HcSiteValues, wind_from_deg, "wind_from_deg", 0, 360, 0),
  HC_WORD (HcSiteValues, terrain, "terrain", terrains, HC_TERRAIN_OPEN),
  HC_NUMBER (HcSiteValues, elevation_m, "elevation_m", -450, 6000, 0),
  HC_COUNT (HcSiteValues, longest_shut_in_days, "longest_shut_in_days", 0, 366, 3),
  HC_FLAG (HcSiteValues, birds_go_out, "birds_go_out", TRUE),
  HC_IDS (HcSiteValues, predators, "predators"),
  HC_COUNT (HcSiteValues, birds_allowed, "birds_allowed", 0, 1000000, 0),
  HC_COUNT (HcSiteValues, males_allowed, "males_allowed", -1, 1000000, -1),
};

HC_DEFINE_PART (HcSite, hc_site, FALSE, members)
