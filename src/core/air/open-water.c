/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Open water, and how fast it dries up. */
#include "config.h"

#include "air/open-water.h"

#include "air/saturation.h"

/**
 * hc_open_water_kg_s_pa: (skip)
 * @area_m2: open water, m²
 * @activity: 0.5 for still water, 1 for stirred
 *
 * ASHRAE's pool formula, as the EnergyPlus engineering reference has it: 4.0e-5
 * kg/(m²·s) for each kPa.
 *
 * Returns: water that dries up for each pascal the air is short of, kg/(s·Pa)
 */
double
hc_open_water_kg_s_pa (double area_m2, double activity)
{
  return 1.442e-4 / 3600 * MAX (area_m2, 0) * MAX (activity, 0);
}

/**
 * hc_open_water_still_kg_s: (skip)
 * @area_m2: open water, m²
 * @activity: 0.5 for still water, 1 for stirred
 * @water_c: temperature of the water, °C
 * @vapour_pa: vapour pressure of the air, Pa
 *
 * See hc_open_water_kg_s_pa().
 *
 * Returns: water that dries up, kg/s
 */
double
hc_open_water_still_kg_s (double area_m2, double activity, double water_c, double vapour_pa)
{
  double short_pa = hc_saturation_pa (water_c) - vapour_pa;

  return hc_open_water_kg_s_pa (area_m2, activity) * MAX (short_pa, 0);
}

/**
 * hc_open_water_draughty_kg_s: (skip)
 * @area_m2: open water, m²
 * @air_m_s: speed of the air over it, m/s
 * @saturated_ratio: humidity ratio of saturated air at the water's temperature, kg/kg
 * @ratio: humidity ratio of the air, kg/kg
 *
 * (25 + 19v)·A·(Ws - W) kg/h, as the Engineering ToolBox gives it; about twice
 * ASHRAE's pool in still air, so for draughty and splashed water.
 *
 * Returns: water that dries up, kg/s
 */
double
hc_open_water_draughty_kg_s (double area_m2, double air_m_s, double saturated_ratio,
                             double ratio)
{
  return (25 + 19 * MAX (air_m_s, 0)) * MAX (area_m2, 0) * MAX (saturated_ratio - ratio, 0)
         / 3600;
}
