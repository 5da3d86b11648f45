/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Wind at a small house, and how it presses on walls and roof. */
#include "config.h"

#include "air/wind.h"

#include <math.h>

/* Wind profile by terrain: exponent and height of the undisturbed wind. */
static const struct
{
  double exponent;
  double depth_m;
} profiles[] = {
  [HC_TERRAIN_WATER] = { 0.10, 210 },
  [HC_TERRAIN_OPEN] = { 0.14, 270 },
  [HC_TERRAIN_SHELTERED] = { 0.22, 370 },
  [HC_TERRAIN_TOWN] = { 0.33, 460 },
};

/**
 * hc_wind_at_height_m_s: (skip)
 * @mast_m_s: wind on a mast of 10 m in open country, m/s
 * @height_m: height, m; drawn into 0.1 to 200
 * @terrain: what stands about
 *
 * ASHRAE Handbook of Fundamentals 2005, chapter 16.
 *
 * Returns: wind at that height, m/s
 */
double
hc_wind_at_height_m_s (double mast_m_s, double height_m, HcTerrain terrain)
{
  double z = isnan (height_m) ? 10 : CLAMP (height_m, 0.1, 200);

  if (!(mast_m_s > 0))
    return 0;
  return MIN (mast_m_s, 100) * pow (270 / 10.0, 0.14)
         * pow (z / profiles[terrain].depth_m, profiles[terrain].exponent);
}

/**
 * hc_wind_wall_coefficient: (skip)
 * @angle_deg: between the wind and the wall's outward normal, degrees
 * @length_ratio: length of this wall against the one next to it; drawn into 0.25 to 4
 *
 * Swami and Chandra 1987, low buildings; the formula from memory, verified on seven
 * values of a published library of coefficients, to three decimals.
 *
 * Returns: pressure on the wall, as so many times that of the wind
 */
double
hc_wind_wall_coefficient (double angle_deg, double length_ratio)
{
  double folded = isfinite (angle_deg) ? fabs (remainder (angle_deg, 360)) : 90;
  double angle = folded * G_PI / 180;
  double ratio = length_ratio > 0 ? CLAMP (length_ratio, 0.25, 4) : 1;
  double g = log (ratio);
  double half = sin (angle / 2);
  double half_cos = cos (angle / 2);
  double across = sin (2 * angle * g);
  double inner = 1.248 - 0.703 * half - 1.175 * sin (angle) * sin (angle)
                 + 0.131 * across * across * across + 0.769 * half_cos
                 + 0.07 * g * g * half * half + 0.717 * half_cos * half_cos;

  return 0.6 * log (MAX (inner, 0.1));
}

/**
 * hc_wind_roof_coefficient: (skip)
 * @pitch_deg: slope of the roof, degrees
 * @angle_deg: between the wind and the ridge's normal, degrees
 *
 * A published library of coefficients for exposed low buildings: -0.6 on flat
 * roofs; -0.4, -0.5, -0.6 at 0°, 45°, 90° from 11° to 30° of slope, steeper roofs
 * being taken as those.
 *
 * Returns: pressure on the roof, as so many times that of the wind
 */
double
hc_wind_roof_coefficient (double pitch_deg, double angle_deg)
{
  double folded = isfinite (angle_deg) ? fabs (remainder (angle_deg, 180)) : 90;

  return pitch_deg <= 10 ? -0.6 : -0.4 - 0.2 * folded / 90;
}

/**
 * hc_wind_pa: (skip)
 * @coefficient: pressure coefficient
 * @rho: density outside, kg/m³
 * @wind_m_s: wind at the house, m/s
 *
 * Returns: pressure of the wind there, Pa
 */
double
hc_wind_pa (double coefficient, double rho, double wind_m_s)
{
  return coefficient * rho * wind_m_s * wind_m_s / 2;
}
