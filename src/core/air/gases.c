/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Carbon dioxide and ammonia of every space. */
#include "config.h"

#include "air/trial.h"

#include "air/moist-air.h"

/* J/(mol·K), and kg/mol of ammonia. */
#define MOLAR_GAS_CONSTANT 8.314
#define AMMONIA_KG_MOL 0.017031

/* As much as there can be: all of the air. */
#define ALL_PPM 1e6

/* What each space gets of a gas, against what the air carries on. */
static void
carry (const HcAirTrial *trial, const double *gained_m3_s, double outside_ppm, double *ppm)
{
  guint n = trial->house->n_spaces;
  double volume = hc_moist_air_volume_m3_kg (trial->house->outside.t_c, trial->outside_ratio,
                                             trial->house->outside.pressure_pa);
  HcDense matrix = { { 0 } };

  for (guint i = 0; i < n; i++)
    {
      matrix[i][i] = trial->exchange.into_kg_s[i] * volume + 1e-15;
      ppm[i] = ALL_PPM * gained_m3_s[i] + trial->exchange.fresh_kg_s[i] * volume * outside_ppm
               + 1e-15 * outside_ppm;
      for (guint from = 0; from < n; from++)
        matrix[i][from] -= trial->exchange.between_kg_s[from][i] * volume;
    }
  hc_dense_solve (n, matrix, ppm);
  for (guint i = 0; i < n; i++)
    ppm[i] = CLAMP (ppm[i], 0, ALL_PPM);
}

/**
 * hc_air_trial_get_gases: (skip)
 * @trial: all worked out
 * @state: what it comes to; its gases are filled in
 *
 * Each gas is carried by the air like heat; the ideal gas turns ammonia into volume.
 */
void
hc_air_trial_get_gases (const HcAirTrial *trial, HcAirState *state)
{
  guint n = trial->house->n_spaces;
  double co2_m3_s[HC_AIR_MOST_SPACES] = { 0 };
  double ammonia_m3_s[HC_AIR_MOST_SPACES] = { 0 };
  double co2_ppm[HC_AIR_MOST_SPACES] = { 0 };
  double ammonia_ppm[HC_AIR_MOST_SPACES] = { 0 };

  for (guint i = 0; i < n; i++)
    {
      co2_m3_s[i] = trial->source[i].co2_m3_s;
      ammonia_m3_s[i] = trial->source[i].ammonia_kg_s / AMMONIA_KG_MOL * MOLAR_GAS_CONSTANT
                        * (trial->t_c[i] + HC_KELVIN) / trial->house->outside.pressure_pa;
    }
  carry (trial, co2_m3_s, trial->house->outside.co2_ppm, co2_ppm);
  carry (trial, ammonia_m3_s, 0, ammonia_ppm);
  for (guint i = 0; i < n; i++)
    {
      state->spaces[i].co2_ppm = co2_ppm[i];
      state->spaces[i].ammonia_ppm = ammonia_ppm[i];
    }
}
