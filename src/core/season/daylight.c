/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Day length from latitude and date. */
#include "config.h"

#include "season/daylight.h"

#include "base/day.h"

#include <math.h>

/* The sun's upper rim on a horizon with refraction, degrees. */
#define RIM_DEG 0.8333

static double
to_rad (double deg)
{
  return deg * G_PI / 180;
}

static double
find_declination (guint of_year)
{
  double turn = 0.2163108 + 2 * atan (0.9671396 * tan (0.00860 * ((double) of_year - 186)));

  return asin (0.39795 * cos (turn));
}

/**
 * hc_daylight_hours: (skip)
 * @latitude_deg: how far north; south is negative
 * @day: a Julian day
 *
 * Forsythe, Rykiel, Stahl, Wu and Schoolfield: A model comparison for daylength
 * as a function of latitude and day of year, Ecological Modelling 80, 1995,
 * with sunrise and sunset of the upper rim.
 *
 * Returns: hours from sunrise to sunset, 0 to 24
 */
double
hc_daylight_hours (double latitude_deg, guint32 day)
{
  double latitude = to_rad (latitude_deg);
  double declination = find_declination (hc_day_get_day_of_year (day));
  double noon = (sin (to_rad (RIM_DEG)) + sin (latitude) * sin (declination))
                / (cos (latitude) * cos (declination));

  return 24 - 24 / G_PI * acos (CLAMP (noon, -1, 1));
}

/**
 * hc_daylight_is_dark_half: (skip)
 * @latitude_deg: how far north; south is negative
 * @day: a Julian day
 *
 * Returns: whether the sun stands over the other half of the earth
 */
gboolean
hc_daylight_is_dark_half (double latitude_deg, guint32 day)
{
  return find_declination (hc_day_get_day_of_year (day)) * latitude_deg < 0;
}
