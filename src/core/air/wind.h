/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Wind at a small house, and how it presses on walls and roof. */
#pragma once

#include "base/terrain.h"

G_BEGIN_DECLS

double hc_wind_at_height_m_s (double mast_m_s, double height_m, HcTerrain terrain);
double hc_wind_wall_coefficient (double angle_deg, double length_ratio);
double hc_wind_roof_coefficient (double pitch_deg, double angle_deg);
double hc_wind_pa (double coefficient, double rho, double wind_m_s);

G_END_DECLS
