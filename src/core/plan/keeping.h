/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * How the keeper keeps birds through the year. */
#pragma once

#include "base/part.h"

G_BEGIN_DECLS

/**
 * HcKeepingValues:
 * @latitude_deg: how far north, for the length of the day; south is negative
 * @light_hours: hours of light hens are given in the dark months, 0 for daylight alone
 * @carry_percent: how sure the house must be to carry a hatch: of so many hatches in a hundred, none is larger
 * @incubator_places: eggs the incubators hold at once, 0 when not entered
 * @egg_storage_days: days eggs to hatch are kept before they are set
 * @freezer_litres: room in the freezer for meat, 0 when not entered
 * @birds_a_day: birds that can be slaughtered in a day, 0 when not entered
 * @feed_bag_kg: feed in a bag
 * @currency: the keeper's money, for prices
 */
typedef struct
{
  double latitude_deg;
  double light_hours;
  double carry_percent;
  int incubator_places;
  int egg_storage_days;
  double freezer_litres;
  int birds_a_day;
  double feed_bag_kg;
  char *currency;
} HcKeepingValues;

HC_DECLARE_PART (HcKeeping, hc_keeping)

G_END_DECLS
