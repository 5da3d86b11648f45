/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Vapour pressure where air holds no more water: over water and over ice. */
#include "config.h"

#include "air/saturation.h"

#include <math.h>

/* Where the fitted formulas end, °C. */
#define COLDEST -100.0
#define HOTTEST 200.0

/* Anything that is not a number counts as 0 °C, so that no answer is one. */
static double
clamp_kelvin (double t_c, double least_c, double most_c)
{
  return HC_KELVIN + (isnan (t_c) ? 0 : CLAMP (t_c, least_c, most_c));
}

/**
 * hc_saturation_over_ice_pa: (skip)
 * @t_c: temperature, °C; drawn into -100 to 0.01
 *
 * Hyland and Wexler 1983, as in the ASHRAE Handbook of Fundamentals, chapter 1,
 * equation 5.
 *
 * Returns: vapour pressure over ice, Pa
 */
double
hc_saturation_over_ice_pa (double t_c)
{
  double t = clamp_kelvin (t_c, COLDEST, HC_TRIPLE_POINT_C);

  return exp (-5.6745359e3 / t + 6.3925247
              + t * (-9.677843e-3 + t * (6.2215701e-7 + t * (2.0747825e-9 + t * -9.484024e-13)))
              + 4.1635019 * log (t));
}

/**
 * hc_saturation_over_water_pa: (skip)
 * @t_c: temperature, °C; drawn into -100 to 200
 *
 * Hyland and Wexler 1983, as in the ASHRAE Handbook of Fundamentals, chapter 1,
 * equation 6, fitted from 0 to 200 °C. Below 0 °C it stands for water that is
 * colder than ice and still liquid: weather services report humidity over it.
 *
 * Returns: vapour pressure over liquid water, Pa
 */
double
hc_saturation_over_water_pa (double t_c)
{
  double t = clamp_kelvin (t_c, COLDEST, HOTTEST);

  return exp (-5.8002206e3 / t + 1.3914993
              + t * (-4.8640239e-2 + t * (4.1764768e-5 + t * -1.4452093e-8))
              + 6.5459673 * log (t));
}

/**
 * hc_saturation_pa: (skip)
 * @t_c: temperature, °C; drawn into -100 to 200
 *
 * Returns: vapour pressure of saturated air, Pa: over ice below 0.01 °C
 */
double
hc_saturation_pa (double t_c)
{
  return t_c <= HC_TRIPLE_POINT_C ? hc_saturation_over_ice_pa (t_c)
                                  : hc_saturation_over_water_pa (t_c);
}

/* d ln(p) / dT, of the same formulas. */
static double
find_slope (double t_c)
{
  double t = HC_KELVIN + t_c;

  if (t_c <= HC_TRIPLE_POINT_C)
    return 5.6745359e3 / (t * t) - 9.677843e-3
           + t * (2 * 6.2215701e-7 + t * (3 * 2.0747825e-9 + t * 4 * -9.484024e-13))
           + 4.1635019 / t;
  return 5.8002206e3 / (t * t) - 4.8640239e-2
         + t * (2 * 4.1764768e-5 + t * 3 * -1.4452093e-8) + 6.5459673 / t;
}

/**
 * hc_saturation_get_c: (skip)
 * @vapour_pa: vapour pressure, Pa
 *
 * The dew point, or the frost point below 0.01 °C: hc_saturation_pa() turned
 * round by Newton's method on the logarithm of the pressure.
 *
 * Returns: where @vapour_pa is saturated, °C, from -100 to 200
 */
double
hc_saturation_get_c (double vapour_pa)
{
  double wanted = log (vapour_pa);
  double t_c = vapour_pa < 611.2 ? -20 : 10;

  if (!(vapour_pa > hc_saturation_pa (COLDEST)))
    return COLDEST;
  if (vapour_pa >= hc_saturation_pa (HOTTEST))
    return HOTTEST;
  for (guint i = 0; i < 60; i++)
    {
      double step = (wanted - log (hc_saturation_pa (t_c))) / find_slope (t_c);

      t_c = CLAMP (t_c + step, COLDEST, HOTTEST);
      if (fabs (step) < 1e-10)
        break;
    }
  return t_c;
}
