/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Open water, and how fast it dries up. */
#pragma once

#include <glib.h>

G_BEGIN_DECLS

/**
 * HC_STILL_WATER:
 *
 * Activity of water nobody stirs: half that of a pool in use.
 */
#define HC_STILL_WATER 0.5

double hc_open_water_kg_s_pa (double area_m2, double activity);
double hc_open_water_still_kg_s (double area_m2, double activity, double water_c,
                                 double vapour_pa);
double hc_open_water_draughty_kg_s (double area_m2, double air_m_s, double saturated_ratio,
                                    double ratio);

G_END_DECLS
