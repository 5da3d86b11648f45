/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Vapour pressure where air holds no more water: over water and over ice. */
#pragma once

#include <glib.h>

G_BEGIN_DECLS

/**
 * HC_KELVIN:
 *
 * 0 °C in kelvin.
 */
#define HC_KELVIN 273.15

/**
 * HC_TRIPLE_POINT_C:
 *
 * Below it, saturation is over ice.
 */
#define HC_TRIPLE_POINT_C 0.01

double hc_saturation_over_ice_pa (double t_c);
double hc_saturation_over_water_pa (double t_c);
double hc_saturation_pa (double t_c);
double hc_saturation_get_c (double vapour_pa);

G_END_DECLS
