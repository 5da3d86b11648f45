/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Air that finds its own way: cracks of walls and roof, and the stir of still air. */
#pragma once

#include <glib.h>

G_BEGIN_DECLS

double hc_leakage_area_m2 (double surface_m2, double leak_cm2_m2);
double hc_still_air_exchange_m3_s (double opening_m2, double wind_m_s, double height_m,
                                   double difference_k);

G_END_DECLS
