/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Warm air rises: pressures and flows that height and warmth make. */
#include "config.h"

#include "air/stack.h"

#include "air/saturation.h"

#include <math.h>

#define GRAVITY 9.80665

/**
 * hc_stack_pa: (skip)
 * @rho_out: density outside, kg/m³
 * @rho_in: density inside, kg/m³
 * @height_m: height above the level where both press alike, m
 *
 * Hydrostatics.
 *
 * Returns: how much more the inside presses at that height, Pa
 */
double
hc_stack_pa (double rho_out, double rho_in, double height_m)
{
  return (rho_out - rho_in) * GRAVITY * height_m;
}

/**
 * hc_stack_neutral_level_m: (skip)
 * @low_m2: effective area of the lower opening, m²
 * @high_m2: effective area of the upper opening, m²
 * @height_m: between their middles, m
 * @inside_c: temperature inside, °C, warmer than outside
 * @outside_c: temperature outside, °C
 *
 * API RP 500 and older ASHRAE handbooks, chapter 22: two openings, no wind.
 *
 * Returns: the level where inside and outside press alike, above the lower
 *   opening, m; all of @height_m where both are shut
 */
double
hc_stack_neutral_level_m (double low_m2, double high_m2, double height_m, double inside_c,
                          double outside_c)
{
  double share = low_m2 / high_m2;
  double level = height_m
                 / (1 + share * share * (inside_c + HC_KELVIN) / (outside_c + HC_KELVIN));

  return isfinite (level) ? level : height_m;
}

/**
 * hc_stack_flow_kg_s: (skip)
 * @low_m2: area of the lower opening, m²
 * @high_m2: area of the upper opening, m²
 * @discharge: discharge coefficient of both
 * @height_m: between their middles, m
 * @rho_out: density outside, kg/m³
 * @rho_in: density inside, kg/m³
 *
 * The closed form of two openings, no wind: Bernoulli in both, one after the other.
 *
 * Returns: air through both, kg/s, from whichever side is heavier
 */
double
hc_stack_flow_kg_s (double low_m2, double high_m2, double discharge, double height_m,
                    double rho_out, double rho_in)
{
  double first = rho_out > rho_in ? low_m2 : high_m2;
  double last = rho_out > rho_in ? high_m2 : low_m2;
  double push_pa = fabs (hc_stack_pa (rho_out, rho_in, height_m));

  if (first <= 0 || last <= 0)
    return 0;
  return discharge
         * sqrt (2 * push_pa / (1 / (rho_out * first * first) + 1 / (rho_in * last * last)));
}
