/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Units, climate and local rules of the place the house stands in. */
#pragma once

#include "base/part.h"
#include "base/terrain.h"
#include "base/units.h"

G_BEGIN_DECLS

/**
 * HcSiteValues:
 * @place: what the keeper calls the place
 * @units: metric, or feet and inches
 * @coldest_night_c: the coldest night to plan for, °C
 * @hottest_day_c: the hottest day to plan for, °C
 * @humidity_percent: usual winter humidity as weather services state it, over water
 * @wind_m_s: usual winter wind, m/s
 * @wind_from_deg: where the winter wind comes from, clockwise from north, which is up
 * @terrain: a #HcTerrain: what stands about
 * @elevation_m: height above the sea, m
 * @longest_shut_in_days: the longest spell the birds must stay in, days
 * @birds_go_out: whether birds go out on ordinary days
 * @predators: ids of the predators about
 * @birds_allowed: birds allowed by local rules, 0 when not entered
 * @males_allowed: males allowed by local rules, -1 when not entered
 */
typedef struct
{
  char *place;
  int units;
  double coldest_night_c;
  double hottest_day_c;
  double humidity_percent;
  double wind_m_s;
  double wind_from_deg;
  int terrain;
  double elevation_m;
  int longest_shut_in_days;
  gboolean birds_go_out;
  char **predators;
  int birds_allowed;
  int males_allowed;
} HcSiteValues;

HC_DECLARE_PART (HcSite, hc_site)

G_END_DECLS
