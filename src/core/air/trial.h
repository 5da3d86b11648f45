/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Heat and moisture of every space at temperatures that are tried. */
#pragma once

#include "air/network.h"

G_BEGIN_DECLS

/**
 * HcAirSpaceState:
 * @t_c: temperature, °C
 * @ratio: humidity ratio, kg/kg
 * @humidity: relative humidity, over ice below 0.01 °C
 * @dew_point_c: dew or frost point, °C
 * @pressure_pa: pressure at the reference level above that of still air outside, Pa
 * @fresh_kg_s: dry air that comes in from outside, kg/s
 * @through_kg_s: dry air that comes in from anywhere, kg/s
 * @source: what those who live there give
 * @drying_kg_s: water that dries up from wet things, kg/s
 * @deposit_kg_s: dew and frost on surfaces, kg/s
 * @frost_kg_s: fog and frost beyond that, the air being full, kg/s
 * @latent_w: heat the air gives to dry up wet things, W
 * @loss_w: heat lost through surfaces and floor, W
 * @vent_w: heat lost with the air, W
 * @residual_w: heat that is not accounted for, W
 * @moisture_residual_kg_s: water that is not accounted for, kg/s
 * @co2_ppm: carbon dioxide, ppm
 * @ammonia_ppm: ammonia, ppm
 *
 * One space of a house at rest.
 */
typedef struct
{
  double t_c;
  double ratio;
  double humidity;
  double dew_point_c;
  double pressure_pa;
  double fresh_kg_s;
  double through_kg_s;
  HcAirSource source;
  double drying_kg_s;
  double deposit_kg_s;
  double frost_kg_s;
  double latent_w;
  double loss_w;
  double vent_w;
  double residual_w;
  double moisture_residual_kg_s;
  double co2_ppm;
  double ammonia_ppm;
} HcAirSpaceState;

/**
 * HcAirState:
 * @spaces: each space
 * @imbalance_kg_s: the largest imbalance of air, kg/s
 * @stable: whether the house comes back to it when disturbed
 *
 * A house whose heat, moisture and air are at rest.
 */
typedef struct
{
  HcAirSpaceState spaces[HC_AIR_MOST_SPACES];
  double imbalance_kg_s;
  gboolean stable;
} HcAirState;

/* What is worked out at temperatures that are tried; pressures and ratios are
 * kept from one try to the next as first guesses. */
typedef struct
{
  const HcAirHouse *house;
  double outside_ratio;
  double outside_rho;
  double t_c[HC_AIR_MOST_SPACES];
  double pressure_pa[HC_AIR_MOST_SPACES];
  double ratio[HC_AIR_MOST_SPACES];
  double full_ratio[HC_AIR_MOST_SPACES];
  gboolean full[HC_AIR_MOST_SPACES];
  double drying_kg_s[HC_AIR_MOST_SPACES];
  double residual_w[HC_AIR_MOST_SPACES];
  double moisture_kg_s[HC_AIR_MOST_SPACES];
  double imbalance_kg_s;
  HcAirSource source[HC_AIR_MOST_SPACES];
  HcAirExchange exchange;
} HcAirTrial;

void hc_air_trial_init (HcAirTrial *trial, const HcAirHouse *house);
void hc_air_trial_weigh (HcAirTrial *trial);
void hc_air_trial_settle_moisture (HcAirTrial *trial);
double hc_air_trial_get_surface_c (const HcAirTrial *trial, const HcAirSurface *surface);
double hc_air_trial_get_deposit_kg_s (const HcAirTrial *trial, guint space);
double hc_air_trial_get_loss_w (const HcAirTrial *trial, guint space);
double hc_air_trial_get_vent_w (const HcAirTrial *trial, guint space);
void hc_air_trial_get_state (const HcAirTrial *trial, HcAirState *state);
void hc_air_trial_get_network (const HcAirTrial *trial, HcAirNetwork *network);
void hc_air_trial_get_gases (const HcAirTrial *trial, HcAirState *state);

G_END_DECLS
