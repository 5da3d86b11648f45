/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Heat of every space at temperatures that are tried. */
#include "config.h"

#include "air/trial.h"

#include "air/moist-air.h"
#include "air/surface.h"

#include <math.h>
#include <string.h>

/**
 * hc_air_trial_init: (skip)
 * @trial: (out caller-allocates): a trial
 * @house: the house, which it goes on reading
 *
 * Begins a trial with every space like the air outside.
 */
void
hc_air_trial_init (HcAirTrial *trial, const HcAirHouse *house)
{
  const HcAirOutside *outside = &house->outside;

  memset (trial, 0, sizeof *trial);
  trial->house = house;
  trial->outside_ratio = hc_moist_air_ratio (outside->t_c, outside->humidity,
                                             outside->pressure_pa);
  trial->outside_rho = hc_air_density_kg_m3 (outside->t_c, outside->pressure_pa);
  for (guint i = 0; i < house->n_spaces; i++)
    {
      trial->t_c[i] = outside->t_c;
      trial->ratio[i] = trial->outside_ratio;
    }
}

/**
 * hc_air_trial_get_network: (skip)
 * @trial: its temperatures
 * @network: (out caller-allocates): its ways, and how heavy the air is
 */
void
hc_air_trial_get_network (const HcAirTrial *trial, HcAirNetwork *network)
{
  const HcAirHouse *house = trial->house;

  network->n_spaces = house->n_spaces;
  network->rho_out = trial->outside_rho;
  network->wind_m_s = house->outside.wind_m_s;
  network->n_paths = house->n_paths;
  network->paths = house->paths;
  for (guint i = 0; i < house->n_spaces; i++)
    network->rho[i] = hc_air_density_kg_m3 (trial->t_c[i], house->outside.pressure_pa);
}

/* The network moves moist air; heat and water are counted by dry air. */
static void
move_air (HcAirTrial *trial)
{
  HcAirNetwork network;
  double dry = 1 / (1 + trial->outside_ratio);
  guint n = trial->house->n_spaces;

  hc_air_trial_get_network (trial, &network);
  trial->imbalance_kg_s = hc_air_network_settle (&network, trial->pressure_pa);
  hc_air_network_get_exchange (&network, trial->pressure_pa, &trial->exchange);
  for (guint i = 0; i < n; i++)
    {
      trial->exchange.fresh_kg_s[i] *= dry;
      trial->exchange.into_kg_s[i] *= dry;
      for (guint from = 0; from < n; from++)
        trial->exchange.between_kg_s[from][i] *= dry;
    }
}

static double
find_beyond_c (const HcAirTrial *trial, const HcAirSurface *surface)
{
  double air_c = surface->beyond == HC_AIR_OUTSIDE ? trial->house->outside.t_c
                                                   : trial->t_c[surface->beyond];

  return air_c + surface->warmer_k;
}

/**
 * hc_air_trial_get_surface_c: (skip)
 * @trial: its temperatures
 * @surface: a surface of its house
 *
 * Returns: temperature of its inside face, °C
 */
double
hc_air_trial_get_surface_c (const HcAirTrial *trial, const HcAirSurface *surface)
{
  return hc_surface_inside_c (trial->t_c[surface->space], find_beyond_c (trial, surface),
                              surface->u_w_m2k, surface->film_m2k_w);
}

/**
 * hc_air_trial_get_deposit_kg_s: (skip)
 * @trial: its temperatures and ratios
 * @space: a space
 *
 * Returns: dew and frost its surfaces take up, kg/s
 */
double
hc_air_trial_get_deposit_kg_s (const HcAirTrial *trial, guint space)
{
  double sum = 0;

  for (guint i = 0; i < trial->house->n_surfaces; i++)
    {
      const HcAirSurface *surface = &trial->house->surfaces[i];

      if ((guint) surface->space == space && surface->deposition_kg_m2_s > 0)
        sum += hc_surface_deposit_kg_s (surface->area_m2, trial->ratio[space],
                                        hc_air_trial_get_surface_c (trial, surface),
                                        trial->house->outside.pressure_pa)
               * surface->deposition_kg_m2_s / HC_DEPOSITION_KG_M2_S;
    }
  return sum;
}

/**
 * hc_air_trial_get_loss_w: (skip)
 * @trial: its temperatures
 * @space: a space
 *
 * Returns: heat it loses through surfaces and floor, W
 */
double
hc_air_trial_get_loss_w (const HcAirTrial *trial, guint space)
{
  double t_c = trial->t_c[space];
  double sum = trial->house->spaces[space].edge_w_k * (t_c - trial->house->outside.t_c);

  for (guint i = 0; i < trial->house->n_surfaces; i++)
    {
      const HcAirSurface *surface = &trial->house->surfaces[i];
      double passed = surface->u_w_m2k * surface->area_m2
                      * (trial->t_c[surface->space] - find_beyond_c (trial, surface));

      if ((guint) surface->space == space)
        sum += passed;
      else if (surface->beyond == (int) space)
        sum -= passed;
    }
  return sum;
}

/**
 * hc_air_trial_get_vent_w: (skip)
 * @trial: its temperatures and flows
 * @space: a space
 *
 * Returns: heat it takes to warm the air that comes in, W
 */
double
hc_air_trial_get_vent_w (const HcAirTrial *trial, guint space)
{
  const HcAirExchange *exchange = &trial->exchange;
  double sum = exchange->fresh_kg_s[space] * (trial->t_c[space] - trial->house->outside.t_c);

  for (guint from = 0; from < trial->house->n_spaces; from++)
    sum += exchange->between_kg_s[from][space] * (trial->t_c[space] - trial->t_c[from]);
  return sum * (HC_AIR_CP + HC_VAPOUR_CP * trial->outside_ratio);
}

/**
 * hc_air_trial_weigh: (skip)
 * @trial: its temperatures; the rest is worked out
 *
 * Air, then moisture, then what is left of the heat in every space.
 */
void
hc_air_trial_weigh (HcAirTrial *trial)
{
  const HcAirHouse *house = trial->house;

  move_air (trial);
  for (guint i = 0; i < house->n_spaces; i++)
    {
      HcAirSource none = { 0 };

      trial->source[i] = none;
      if (house->spaces[i].emit != NULL)
        house->spaces[i].emit (house->spaces[i].who, trial->t_c[i], &trial->source[i]);
      trial->full_ratio[i] = hc_moist_air_ratio (trial->t_c[i], 1, house->outside.pressure_pa);
    }
  hc_air_trial_settle_moisture (trial);
  for (guint i = 0; i < house->n_spaces; i++)
    trial->residual_w[i] = trial->source[i].heat_w + house->spaces[i].power_w
                           - HC_LATENT_J_KG * trial->drying_kg_s[i]
                           - hc_air_trial_get_loss_w (trial, i)
                           - hc_air_trial_get_vent_w (trial, i);
}

/**
 * hc_air_trial_get_state: (skip)
 * @trial: all worked out
 * @state: (out caller-allocates): what it comes to
 */
void
hc_air_trial_get_state (const HcAirTrial *trial, HcAirState *state)
{
  double pressure_pa = trial->house->outside.pressure_pa;

  memset (state, 0, sizeof *state);
  state->imbalance_kg_s = trial->imbalance_kg_s;
  for (guint i = 0; i < trial->house->n_spaces; i++)
    {
      HcAirSpaceState *space = &state->spaces[i];

      space->t_c = trial->t_c[i];
      space->ratio = trial->ratio[i];
      space->humidity = hc_moist_air_humidity (space->t_c, space->ratio, pressure_pa);
      space->dew_point_c = MIN (hc_moist_air_dew_point_c (space->ratio, pressure_pa), space->t_c);
      space->pressure_pa = trial->pressure_pa[i];
      space->fresh_kg_s = trial->exchange.fresh_kg_s[i];
      space->through_kg_s = trial->exchange.into_kg_s[i];
      space->source = trial->source[i];
      space->drying_kg_s = trial->drying_kg_s[i];
      space->deposit_kg_s = hc_air_trial_get_deposit_kg_s (trial, i);
      space->frost_kg_s = trial->full[i] ? MAX (trial->moisture_kg_s[i], 0) : 0;
      space->moisture_residual_kg_s = trial->full[i] ? 0 : trial->moisture_kg_s[i];
      space->latent_w = HC_LATENT_J_KG * trial->drying_kg_s[i];
      space->loss_w = hc_air_trial_get_loss_w (trial, i);
      space->vent_w = hc_air_trial_get_vent_w (trial, i);
      space->residual_w = trial->residual_w[i];
    }
  hc_air_trial_get_gases (trial, state);
}
