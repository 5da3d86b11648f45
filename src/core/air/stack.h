/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Warm air rises: pressures and flows that height and warmth make. */
#pragma once

#include <glib.h>

G_BEGIN_DECLS

double hc_stack_pa (double rho_out, double rho_in, double height_m);
double hc_stack_neutral_level_m (double low_m2, double high_m2, double height_m, double inside_c,
                                 double outside_c);
double hc_stack_flow_kg_s (double low_m2, double high_m2, double discharge, double height_m,
                           double rho_out, double rho_in);

G_END_DECLS
