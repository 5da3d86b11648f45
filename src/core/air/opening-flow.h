/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Air through holes: vents, mesh, cracks and openings tall enough for both ways at once. */
#pragma once

#include <glib.h>

G_BEGIN_DECLS

/**
 * HcAirFlow:
 * @in_kg_s: air that comes through, kg/s
 * @out_kg_s: air that goes out, kg/s
 * @slope: how much less comes in, net, for each pascal more inside, kg/(s·Pa)
 *
 * Air through one opening.
 */
typedef struct
{
  double in_kg_s;
  double out_kg_s;
  double slope;
} HcAirFlow;

/**
 * HC_DISCHARGE_SHARP:
 *
 * Share of the ideal flow that passes a sharp-edged vent, 0.60 to 0.65 published.
 */
#define HC_DISCHARGE_SHARP 0.6

HcAirFlow hc_opening_flow_orifice (double push_pa, double effective_m2, double rho_out,
                                   double rho_in);
HcAirFlow hc_opening_flow_tall (double push_low_pa, double push_high_pa, double effective_m2,
                                double rho_out, double rho_in);
HcAirFlow hc_opening_flow_crack (double push_pa, double coefficient, double exponent,
                                 double rho_out, double rho_in);
double hc_opening_two_way_discharge (double inside_c, double outside_c);
double hc_mesh_free_area (double wire_mm, double pitch_mm);
double hc_mesh_loss (double free_area);
double hc_mesh_discharge (double discharge, double free_area);

G_END_DECLS
