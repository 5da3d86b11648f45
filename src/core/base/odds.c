/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Counts and how likely each is. */
#include "config.h"

#include "base/chance.h"

#include <gsl/gsl_sf_gamma.h>
#include <math.h>

struct _HcOdds
{
  gatomicrefcount refs;
  guint most;
  double chances[];
};

G_DEFINE_BOXED_TYPE (HcOdds, hc_odds, hc_odds_ref, hc_odds_unref)

static HcOdds *
odds_new (guint most)
{
  HcOdds *odds = g_malloc0 (sizeof *odds + (most + 1) * sizeof odds->chances[0]);

  g_atomic_ref_count_init (&odds->refs);
  odds->most = most;
  return odds;
}

/**
 * hc_odds_new_sure:
 * @count: a count that is known
 *
 * Returns: (transfer full): nothing but @count
 */
HcOdds *
hc_odds_new_sure (guint count)
{
  HcOdds *odds = odds_new (count);

  odds->chances[count] = 1;
  return odds;
}

/* Adds the beta-binomial chances of @n, times @chance. Each follows from the
 * one before; the first may be too small for a number, so its logarithm runs
 * along until it is not. */
static void
add_beta_binomial (HcOdds *odds, guint n, double a, double b, double chance)
{
  double lnp = gsl_sf_lnbeta (a, n + b) - gsl_sf_lnbeta (a, b);

  for (guint k = 0; k <= n; k++)
    {
      odds->chances[k] += chance * exp (lnp);
      if (k < n)
        lnp += log ((n - k) / (k + 1.0) * (k + a) / (n - k - 1 + b));
    }
}

static void
add_binomial (HcOdds *odds, guint n, double share, double chance)
{
  double lnp = n * log1p (-share);
  double odd = log (share) - log1p (-share);

  for (guint k = 0; k <= n; k++)
    {
      odds->chances[k] += chance * exp (lnp);
      if (k < n)
        lnp += log ((n - k) / (k + 1.0)) + odd;
    }
}

/**
 * hc_odds_thin:
 * @self: a count
 * @share: the share of it that is left, itself not known for sure
 *
 * Each count is thinned by a beta-binomial distribution.
 *
 * Returns: (transfer full): what is left
 */
HcOdds *
hc_odds_thin (HcOdds *self, const HcBeta *share)
{
  HcOdds *odds = odds_new (self->most);

  for (guint n = 0; n <= self->most; n++)
    if (self->chances[n] > 0)
      add_beta_binomial (odds, n, share->a, share->b, self->chances[n]);
  return odds;
}

/**
 * hc_odds_thin_evenly:
 * @self: a count
 * @share: the share of it that is left, such as half of all chicks
 *
 * Each count is thinned by a binomial distribution.
 *
 * Returns: (transfer full): what is left
 */
HcOdds *
hc_odds_thin_evenly (HcOdds *self, double share)
{
  HcOdds *odds;

  if (share >= 1)
    return hc_odds_ref (self);
  if (!(share > 0))
    return hc_odds_new_sure (0);
  odds = odds_new (self->most);
  for (guint n = 0; n <= self->most; n++)
    if (self->chances[n] > 0)
      add_binomial (odds, n, share, self->chances[n]);
  return odds;
}

HcOdds *
hc_odds_ref (HcOdds *self)
{
  g_return_val_if_fail (self != NULL, NULL);
  g_atomic_ref_count_inc (&self->refs);
  return self;
}

void
hc_odds_unref (HcOdds *self)
{
  g_return_if_fail (self != NULL);
  if (g_atomic_ref_count_dec (&self->refs))
    g_free (self);
}

/**
 * hc_odds_get_most:
 * @self: a count
 *
 * Returns: the largest it can be
 */
guint
hc_odds_get_most (const HcOdds *self)
{
  return self->most;
}

/**
 * hc_odds_get:
 * @self: a count
 * @count: a number
 *
 * Returns: the chance that it is exactly @count, from 0 to 1
 */
double
hc_odds_get (const HcOdds *self, guint count)
{
  return count <= self->most ? self->chances[count] : 0;
}

/**
 * hc_odds_get_mean:
 * @self: a count
 *
 * Returns: its mean
 */
double
hc_odds_get_mean (const HcOdds *self)
{
  double mean = 0;

  for (guint k = 1; k <= self->most; k++)
    mean += k * self->chances[k];
  return mean;
}

/**
 * hc_odds_get_at_least:
 * @self: a count
 * @count: a number
 *
 * Returns: the chance that it is @count or more, from 0 to 1
 */
double
hc_odds_get_at_least (const HcOdds *self, guint count)
{
  double chance = 0;

  if (count == 0)
    return 1;
  for (guint k = self->most; k >= count; k--)
    chance += self->chances[k];
  return MIN (chance, 1);
}

/**
 * hc_odds_get_count:
 * @self: a count
 * @chance: from 0 to 1
 *
 * Returns: the smallest number it is no larger than with that chance
 */
guint
hc_odds_get_count (const HcOdds *self, double chance)
{
  double sum = 0;

  for (guint k = 0; k < self->most; k++)
    {
      sum += self->chances[k];
      if (sum >= chance - 1e-12)
        return k;
    }
  return self->most;
}
