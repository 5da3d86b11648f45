/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * States of a house of several spaces, from a cold and a hot beginning. */
#include "config.h"

#include "air/steady.h"

#include <math.h>
#include <string.h>

#define MOST_STEPS 200
#define MOST_HALVINGS 12

/* Steps that follow the house as it warms, before Newton's are trusted. */
#define N_EASED 10
#define EASED_SHARE 0.3

/* W: as good as balanced. */
#define BALANCED 1e-8

/* K: what a slope is measured over. */
#define NUDGE_K 1e-5

static double
find_worst (const HcAirTrial *trial)
{
  double worst = 0;

  for (guint i = 0; i < trial->house->n_spaces; i++)
    worst = MAX (worst, fabs (trial->residual_w[i]));
  return worst;
}

/* How fast a space loses heat with all else held: more than it can really. */
static double
find_loss_w_k (const HcAirTrial *trial, guint space)
{
  double sum = trial->house->spaces[space].edge_w_k
               + 1006 * trial->exchange.into_kg_s[space];

  for (guint i = 0; i < trial->house->n_surfaces; i++)
    {
      const HcAirSurface *surface = &trial->house->surfaces[i];

      if (surface->space == (int) space || surface->beyond == (int) space)
        sum += surface->u_w_m2k * surface->area_m2;
    }
  return MAX (sum, 1e-3);
}

/* As the house itself would go, a step at a time. */
static void
ease (HcAirTrial *trial, guint n_steps, double share)
{
  for (guint i = 0; i < n_steps && find_worst (trial) > BALANCED; i++)
    {
      for (guint space = 0; space < trial->house->n_spaces; space++)
        trial->t_c[space]
            += CLAMP (share * trial->residual_w[space] / find_loss_w_k (trial, space), -20, 20);
      hc_air_trial_weigh (trial);
    }
}

static void
find_slopes (const HcAirTrial *at, HcDense slopes)
{
  guint n = at->house->n_spaces;

  for (guint space = 0; space < n; space++)
    {
      HcAirTrial nudged = *at;

      nudged.t_c[space] += NUDGE_K;
      hc_air_trial_weigh (&nudged);
      for (guint i = 0; i < n; i++)
        slopes[i][space] = (nudged.residual_w[i] - at->residual_w[i]) / NUDGE_K;
    }
}

static gboolean
take_step (HcAirTrial *trial, const double *step)
{
  HcAirTrial from = *trial;
  double before = find_worst (trial);
  double share = 1;

  for (guint halving = 0; halving < MOST_HALVINGS; halving++, share /= 2)
    {
      for (guint i = 0; i < trial->house->n_spaces; i++)
        trial->t_c[i] = from.t_c[i] - share * CLAMP (step[i], -30, 30);
      hc_air_trial_weigh (trial);
      if (find_worst (trial) < before * (1 - 0.1 * share))
        return TRUE;
    }
  *trial = from;
  return FALSE;
}

/* The house stays where a push away from rest is not answered by more of it: every
 * space alone loses heat as it warms, and all of them together do. */
static gboolean
is_stable (guint n, HcDense slopes)
{
  double sum = 0;

  for (guint i = 0; i < n; i++)
    {
      if (slopes[i][i] > 0)
        return FALSE;
      for (guint j = 0; j < n; j++)
        sum += slopes[i][j];
    }
  return sum < 0;
}

static void
settle_from (HcAirTrial *trial, guint n_eased, HcAirStates *states)
{
  HcDense slopes;
  HcDense kept;

  hc_air_trial_weigh (trial);
  ease (trial, n_eased, EASED_SHARE);
  for (guint i = 0; i < MOST_STEPS && find_worst (trial) > BALANCED; i++)
    {
      double step[HC_AIR_MOST_SPACES];

      find_slopes (trial, slopes);
      memcpy (step, trial->residual_w, sizeof step);
      hc_dense_solve (trial->house->n_spaces, slopes, step);
      if (!take_step (trial, step))
        ease (trial, 4 * N_EASED, EASED_SHARE / (1 + i));
    }
  if (find_worst (trial) > 1e-6)
    return;
  find_slopes (trial, kept);
  hc_air_states_add (states, trial, is_stable (trial->house->n_spaces, kept));
}

/**
 * hc_air_find_in_spaces: (skip)
 * @trial: a trial of a house of several spaces
 * @near: (nullable): a state to begin from instead
 * @states: (inout): the states found are added
 *
 * Newton's method on the heat of all spaces at once, begun where the house would go
 * from cold and from hot, or from @near alone. States between which it never goes are
 * not looked for.
 */
void
hc_air_find_in_spaces (HcAirTrial *trial, const HcAirState *near, HcAirStates *states)
{
  static const double shares[] = { 0.5, 0.1, 0.2, 0.02, 0.8, 0.05, 0.35, 1 };
  double hottest_c = hc_air_find_hottest_c (trial);
  double outside_c = trial->house->outside.t_c;
  guint n = trial->house->n_spaces;

  for (guint i = 0; near != NULL && i < n; i++)
    {
      trial->t_c[i] = near->spaces[i].t_c;
      trial->pressure_pa[i] = near->spaces[i].pressure_pa;
    }
  settle_from (trial, near != NULL ? 0 : N_EASED, states);
  if (near != NULL && states->n_states > 0)
    return;
  for (guint share = 0; share < G_N_ELEMENTS (shares); share++)
    {
      for (guint i = 0; i < n; i++)
        trial->t_c[i] = outside_c + (hottest_c - outside_c) * shares[share];
      if (share == 0 || states->n_states == 0)
        settle_from (trial, N_EASED * (1 + 8 * share), states);
    }
}
