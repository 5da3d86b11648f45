/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Every state a house can come to rest in, and the dampest of them. */
#include "config.h"

#include "air/steady.h"

#include "air/moist-air.h"
#include "air/surface.h"

#include <math.h>
#include <string.h>

/* Two states nearer to each other than this are one, K. */
#define SAME_K 1e-4

/* Beyond this no house is told apart from a fire, K. */
#define HOTTEST_RISE_K 150

/* kg/s of air: less is as good as none. */
#define SEALED 1e-9

/**
 * hc_air_find_hottest_c: (skip)
 * @trial: its temperatures are used up
 *
 * All the heat with no air at all to carry it off: no steady state is hotter.
 *
 * Returns: a temperature above every steady state, °C
 */
double
hc_air_find_hottest_c (HcAirTrial *trial)
{
  const HcAirHouse *house = trial->house;
  double watts = 0;
  double loss_w_k = 0;

  for (guint i = 0; i < house->n_spaces; i++)
    {
      trial->t_c[i] = house->outside.t_c;
      loss_w_k += house->spaces[i].edge_w_k;
    }
  hc_air_trial_weigh (trial);
  for (guint i = 0; i < house->n_spaces; i++)
    watts += MAX (trial->source[i].heat_w + house->spaces[i].power_w
                      - hc_air_trial_get_loss_w (trial, i), 0);
  for (guint i = 0; i < house->n_surfaces; i++)
    if (house->surfaces[i].beyond == HC_AIR_OUTSIDE)
      loss_w_k += house->surfaces[i].u_w_m2k * house->surfaces[i].area_m2;
  return house->outside.t_c
         + CLAMP (watts / MAX (loss_w_k, 1e-3) * 1.01 + 0.01, 0.01, HOTTEST_RISE_K);
}

static gboolean
is_known (const HcAirStates *states, const HcAirTrial *trial)
{
  for (guint i = 0; i < states->n_states; i++)
    {
      double apart = 0;

      for (guint space = 0; space < trial->house->n_spaces; space++)
        apart = MAX (apart, fabs (states->states[i].spaces[space].t_c - trial->t_c[space]));
      if (apart < SAME_K)
        return TRUE;
    }
  return FALSE;
}

/**
 * hc_air_states_add: (skip)
 * @states: the states found so far
 * @trial: one more, unless it is among them
 * @stable: whether the house stays in it
 */
void
hc_air_states_add (HcAirStates *states, const HcAirTrial *trial, gboolean stable)
{
  HcAirState *state = &states->states[states->n_states];

  if (states->n_states == HC_AIR_MOST_STATES || is_known (states, trial))
    return;
  hc_air_trial_get_state (trial, state);
  state->stable = stable;
  states->n_states++;
}

/* How damp the dampest space is; stale air tells apart states that are both full. */
static double
find_dampness (const HcAirState *state, guint n_spaces)
{
  double most = 0;

  for (guint i = 0; i < n_spaces; i++)
    most = MAX (most, state->spaces[i].humidity + state->spaces[i].co2_ppm * 1e-9);
  return most;
}

static void
choose_worst (HcAirStates *states, guint n_spaces)
{
  gboolean any_stable = FALSE;
  double dampest = -1;

  for (guint i = 0; i < states->n_states; i++)
    any_stable |= states->states[i].stable;
  for (guint i = 0; i < states->n_states; i++)
    {
      double dampness = find_dampness (&states->states[i], n_spaces);

      if ((states->states[i].stable || !any_stable) && dampness > dampest)
        {
          dampest = dampness;
          states->worst = i;
        }
    }
}

static void
find_faults (const HcAirHouse *house, HcAirStates *states)
{
  for (guint i = 0; i < house->n_spaces; i++)
    if (states->states[states->worst].spaces[i].through_kg_s < SEALED)
      states->faults |= HC_AIR_FAULT_SEALED;
}

static void
settle (const HcAirHouse *asked, const HcAirState *near, HcAirStates *states)
{
  HcAirHouse house = *asked;
  HcAirTrial trial;

  states->n_states = 0;
  states->worst = 0;
  states->faults = hc_air_outside_draw_in (&house.outside);
  hc_air_trial_init (&trial, &house);
  if (house.n_spaces == 1)
    hc_air_find_in_one_space (&trial, states);
  else
    hc_air_find_in_spaces (&trial, near, states);
  if (states->n_states == 0)
    {
      states->faults |= HC_AIR_FAULT_UNSETTLED;
      hc_air_states_add (states, &trial, FALSE);
    }
  choose_worst (states, house.n_spaces);
  find_faults (&house, states);
}

/**
 * hc_air_settle: (skip)
 * @house: the house
 * @states: (out caller-allocates): the states
 *
 * Heat, moisture and air at rest together. In one space every crossing of the heat
 * balance is looked for; in several, those that a cold and a hot beginning lead to.
 * What cannot be in @house is drawn into what can, and told.
 */
void
hc_air_settle (const HcAirHouse *house, HcAirStates *states)
{
  g_return_if_fail (house->n_spaces >= 1 && house->n_spaces <= HC_AIR_MOST_SPACES);

  settle (house, NULL, states);
}

/**
 * hc_air_settle_near: (skip)
 * @house: the house
 * @near: a state of a house much like it
 * @states: (out caller-allocates): the states
 *
 * hc_air_settle() for charts: in several spaces the state that @near leads to is
 * followed, and no other looked for.
 */
void
hc_air_settle_near (const HcAirHouse *house, const HcAirState *near, HcAirStates *states)
{
  g_return_if_fail (house->n_spaces >= 1 && house->n_spaces <= HC_AIR_MOST_SPACES);

  settle (house, near, states);
}

/**
 * hc_air_state_get_surface_c: (skip)
 * @state: a state of the house
 * @house: the house
 * @surface: a surface of it
 *
 * Returns: temperature of its inside face, °C
 */
double
hc_air_state_get_surface_c (const HcAirState *state, const HcAirHouse *house,
                            const HcAirSurface *surface)
{
  double beyond_c = surface->beyond == HC_AIR_OUTSIDE ? house->outside.t_c
                                                      : state->spaces[surface->beyond].t_c;

  return hc_surface_inside_c (state->spaces[surface->space].t_c, beyond_c + surface->warmer_k,
                              surface->u_w_m2k, surface->film_m2k_w);
}

/**
 * hc_air_state_get_flow: (skip)
 * @state: a state of the house
 * @house: the house
 * @path: a way for air in it
 *
 * Returns: air through it, in being from beyond into its space
 */
HcAirFlow
hc_air_state_get_flow (const HcAirState *state, const HcAirHouse *house, const HcAirPath *path)
{
  HcAirNetwork network = { 0 };
  double pressure_pa[HC_AIR_MOST_SPACES];

  network.rho_out = hc_air_density_kg_m3 (house->outside.t_c, house->outside.pressure_pa);
  network.wind_m_s = house->outside.wind_m_s;
  for (guint i = 0; i < house->n_spaces; i++)
    {
      network.rho[i] = hc_air_density_kg_m3 (state->spaces[i].t_c, house->outside.pressure_pa);
      pressure_pa[i] = state->spaces[i].pressure_pa;
    }
  return hc_air_network_get_flow (&network, path, pressure_pa);
}
