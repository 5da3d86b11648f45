/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * How hard heat is on birds, and wind on bare skin. */
#pragma once

#include <glib.h>

G_BEGIN_DECLS

double hc_heat_index_layers_c (double t_c, double wet_bulb_c);
double hc_heat_index_turkeys_c (double t_c, double wet_bulb_c);
double hc_heat_index_broilers_c (double t_c, double wet_bulb_c, double air_m_s);
double hc_heat_index_livestock (double t_c, double humidity);
double hc_wind_chill_c (double t_c, double wind_km_h);

G_END_DECLS
