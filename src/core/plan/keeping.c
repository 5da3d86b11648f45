/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * How birds are kept through the year, as a table of members. */
#include "config.h"

#include "plan/keeping.h"

static const HcMember members[] = {
  HC_NUMBER (HcKeepingValues, latitude_deg, "latitude_deg", -66, 66, 54),
  HC_NUMBER (HcKeepingValues, light_hours, "light_hours", 0, 18, 0),
  HC_NUMBER (HcKeepingValues, carry_percent, "carry_percent", 50, 99.5, 90),
  HC_COUNT (HcKeepingValues, incubator_places, "incubator_places", 0, 100000, 0),
  HC_COUNT (HcKeepingValues, egg_storage_days, "egg_storage_days", 1, 21, 7),
  HC_NUMBER (HcKeepingValues, freezer_litres, "freezer_litres", 0, 100000, 0),
  HC_COUNT (HcKeepingValues, birds_a_day, "birds_a_day", 0, 10000, 0),
  HC_NUMBER (HcKeepingValues, feed_bag_kg, "feed_bag_kg", 0.5, 2000, 20),
  HC_TEXT (HcKeepingValues, currency, "currency"),
};

HC_DEFINE_PART (HcKeeping, hc_keeping, FALSE, members)
