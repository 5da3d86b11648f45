/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The pressures inside at which as much air comes in as goes out. */
#pragma once

#include "air/air-house.h"
#include "air/opening-flow.h"

G_BEGIN_DECLS

/**
 * HcAirNetwork:
 * @n_spaces: how many spaces
 * @rho_out: density outside, kg/m³
 * @rho: density in each space, kg/m³
 * @wind_m_s: wind at the house, m/s
 * @n_paths: how many ways
 * @paths: (array length=n_paths): the ways
 *
 * Ways for air, and how heavy it is.
 */
typedef struct
{
  guint n_spaces;
  double rho_out;
  double rho[HC_AIR_MOST_SPACES];
  double wind_m_s;
  guint n_paths;
  const HcAirPath *paths;
} HcAirNetwork;

/**
 * HcAirExchange:
 * @fresh_kg_s: from outside into each space, kg/s
 * @between_kg_s: from a space (first) into another (second), kg/s
 * @into_kg_s: all that comes into each space, kg/s
 *
 * Air that moves.
 */
typedef struct
{
  double fresh_kg_s[HC_AIR_MOST_SPACES];
  double between_kg_s[HC_AIR_MOST_SPACES][HC_AIR_MOST_SPACES];
  double into_kg_s[HC_AIR_MOST_SPACES];
} HcAirExchange;

HcAirFlow hc_air_network_get_flow (const HcAirNetwork *network, const HcAirPath *path,
                                   const double *pressure_pa);
double hc_air_network_settle (const HcAirNetwork *network, double *pressure_pa);
void hc_air_network_get_exchange (const HcAirNetwork *network, const double *pressure_pa,
                                  HcAirExchange *exchange);

G_END_DECLS
