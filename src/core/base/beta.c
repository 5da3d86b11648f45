/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A share of which a low and a high end are known. */
#include "config.h"

#include "base/chance.h"

#include <gsl/gsl_cdf.h>
#include <gsl/gsl_errno.h>
#include <math.h>

#define LOW_CHANCE 0.1
#define HIGH_CHANCE 0.9

/* Ends nearer to 0, to 1 or to each other are taken for these. */
#define NEAREST 0.001

/* Standard deviations of a normal distribution between its ends. */
#define ENDS_APART 2.5631

#define MOST_STEPS 60
#define LONGEST_STEP 0.7
#define NEAR_ENOUGH 1e-10

/* The library's own handler would end the program. */
static void
keep_running (void)
{
  static gsize done;

  if (!g_once_init_enter (&done))
    return;
  gsl_set_error_handler_off ();
  g_once_init_leave (&done, 1);
}

static double
logit (double p)
{
  const double clear = 1e-300;

  return log (MAX (p, clear)) - log (MAX (1 - p, clear));
}

/* How far the ends of a beta are from where they should be, on a scale on
 * which steps of any size make sense. */
static void
miss (const double at[2], double low, double high, double by[2])
{
  double a = exp (at[0]);
  double b = exp (at[1]);

  by[0] = logit (gsl_cdf_beta_P (low, a, b)) - logit (LOW_CHANCE);
  by[1] = -logit (gsl_cdf_beta_Q (high, a, b)) - logit (HIGH_CHANCE);
}

static gboolean
find_step (const double at[2], double low, double high, const double by[2], double step[2])
{
  const double nudge = 1e-5;
  double slope[2][2];
  double whole;

  for (guint i = 0; i < 2; i++)
    {
      double beside[2] = { at[0] + (i == 0 ? nudge : 0), at[1] + (i == 1 ? nudge : 0) };
      double there[2];

      miss (beside, low, high, there);
      slope[0][i] = (there[0] - by[0]) / nudge;
      slope[1][i] = (there[1] - by[1]) / nudge;
    }
  whole = slope[0][0] * slope[1][1] - slope[0][1] * slope[1][0];
  step[0] = (by[0] * slope[1][1] - by[1] * slope[0][1]) / whole;
  step[1] = (by[1] * slope[0][0] - by[0] * slope[1][0]) / whole;
  return isfinite (step[0]) && isfinite (step[1]);
}

/* A beta with the mean and the spread of a normal with these ends. */
static void
guess (double low, double high, double at[2])
{
  double mean = (low + high) / 2;
  double spread = (high - low) / ENDS_APART;
  double weight = MAX (mean * (1 - mean) / (spread * spread) - 1, 0.5);

  at[0] = log (mean * weight);
  at[1] = log ((1 - mean) * weight);
}

/**
 * hc_beta_fit:
 * @low: one time in ten the share is smaller
 * @high: one time in ten it is larger
 * @beta: (out caller-allocates): the share
 *
 * Finds the beta distribution with these 10 % and 90 % points, by Newton's
 * method in the logarithms of its two weights.
 */
void
hc_beta_fit (double low, double high, HcBeta *beta)
{
  double at[2];

  keep_running ();
  low = CLAMP (low, NEAREST, 1 - 2 * NEAREST);
  high = CLAMP (high, low + NEAREST, 1 - NEAREST);
  guess (low, high, at);
  for (guint i = 0; i < MOST_STEPS; i++)
    {
      double by[2], step[2];

      miss (at, low, high, by);
      if (fabs (by[0]) + fabs (by[1]) < NEAR_ENOUGH || !find_step (at, low, high, by, step))
        break;
      at[0] -= CLAMP (step[0], -LONGEST_STEP, LONGEST_STEP);
      at[1] -= CLAMP (step[1], -LONGEST_STEP, LONGEST_STEP);
    }
  *beta = (HcBeta) { exp (at[0]), exp (at[1]) };
}

/**
 * hc_beta_get_mean:
 * @self: a share
 *
 * Returns: its mean
 */
double
hc_beta_get_mean (const HcBeta *self)
{
  return self->a / (self->a + self->b);
}

/**
 * hc_beta_get_point:
 * @self: a share
 * @chance: from 0 to 1
 *
 * Returns: what the share is below with that chance
 */
double
hc_beta_get_point (const HcBeta *self, double chance)
{
  keep_running ();
  return gsl_cdf_beta_Pinv (chance, self->a, self->b);
}

/**
 * hc_beta_learn:
 * @self: a share
 * @successes: what was counted for it
 * @failures: what was counted against it
 *
 * What was counted is added to what the share weighs already (the rule of
 * Bayes for a beta distribution).
 */
void
hc_beta_learn (HcBeta *self, double successes, double failures)
{
  self->a += MAX (successes, 0);
  self->b += MAX (failures, 0);
}
