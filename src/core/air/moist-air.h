/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Air and the vapour in it. */
#pragma once

#include "air/saturation.h"

G_BEGIN_DECLS

/**
 * HC_STANDARD_PRESSURE_PA:
 *
 * Pressure of the air at sea level.
 */
#define HC_STANDARD_PRESSURE_PA 101325.0

/**
 * HC_AIR_CP:
 *
 * Heat that warms dry air, J/(kg·K).
 */
#define HC_AIR_CP 1006.0

/**
 * HC_VAPOUR_CP:
 *
 * Heat that warms vapour, J/(kg·K).
 */
#define HC_VAPOUR_CP 1860.0

/**
 * HC_LATENT_J_KG:
 *
 * Heat that dries up water, J/kg: 0.680 Wh/g, CIGR 2002.
 */
#define HC_LATENT_J_KG 2.448e6

double hc_air_pressure_pa (double elevation_m);
double hc_air_density_kg_m3 (double t_c, double pressure_pa);

double hc_vapour_to_ratio (double vapour_pa, double pressure_pa);
double hc_vapour_from_ratio_pa (double ratio, double pressure_pa);

double hc_moist_air_ratio (double t_c, double humidity, double pressure_pa);
double hc_moist_air_humidity (double t_c, double ratio, double pressure_pa);
double hc_moist_air_dew_point_c (double ratio, double pressure_pa);
double hc_moist_air_wet_bulb_c (double t_c, double ratio, double pressure_pa);
double hc_moist_air_ratio_from_wet_bulb (double t_c, double wet_bulb_c, double pressure_pa);
double hc_moist_air_enthalpy_j_kg (double t_c, double ratio);
double hc_moist_air_from_enthalpy_c (double enthalpy_j_kg, double ratio);
double hc_moist_air_volume_m3_kg (double t_c, double ratio, double pressure_pa);
double hc_moist_air_density_kg_m3 (double t_c, double ratio, double pressure_pa);
double hc_humidity_from_weather_service (double t_c, double over_water);

G_END_DECLS
