/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Air that finds its own way: cracks of walls and roof, and the stir of still air. */
#include "config.h"

#include "air/leakage.h"

#include <math.h>

/**
 * hc_leakage_area_m2: (skip)
 * @surface_m2: wall or roof, m²
 * @leak_cm2_m2: cracks in each m² of it, cm²
 *
 * Returns: the hole that would leak as much, m²
 */
double
hc_leakage_area_m2 (double surface_m2, double leak_cm2_m2)
{
  return MAX (surface_m2, 0) * CLAMP (leak_cm2_m2, 0, 1000) * 1e-4;
}

/**
 * hc_still_air_exchange_m3_s: (skip)
 * @opening_m2: the opening, m²
 * @wind_m_s: wind at the house, m/s
 * @height_m: height of the opening, m
 * @difference_k: between inside and outside, K
 *
 * De Gids and Phaff, as in EN 15242 (from memory): one side of a room open. Even on
 * a hot calm day, when nothing rises, turbulence changes 0.05 m³/s for each m².
 *
 * Returns: air changed, m³/s
 */
double
hc_still_air_exchange_m3_s (double opening_m2, double wind_m_s, double height_m,
                            double difference_k)
{
  return 0.5 * opening_m2
         * sqrt (0.001 * wind_m_s * wind_m_s + 0.0035 * height_m * fabs (difference_k) + 0.01);
}
