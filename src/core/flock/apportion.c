/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The divisor method of Sainte-Laguë: the next bird always goes where the
 * quotient weight / (2 × share + 1) is largest, so that the flock of n + 1
 * birds is the flock of n birds and one more. */
#include "config.h"

#include "flock/apportion.h"

/* Whether row @a stands before row @b when the quotients are weight / odd
 * number; of equal ones the first row stands first. */
static gboolean
stands_before (const gint64 *weights, guint a, gint64 odd_a, guint b, gint64 odd_b)
{
  gint64 left = weights[a] * odd_b;
  gint64 right = weights[b] * odd_a;

  return left != right ? left > right : a < b;
}

static guint
find_next (const gint64 *weights, guint n_weights, const gint64 *shares)
{
  guint best = 0;

  for (guint i = 1; i < n_weights; i++)
    if (stands_before (weights, i, 2 * shares[i] + 1, best, 2 * shares[best] + 1))
      best = i;
  return best;
}

/* The shares whose quotient lies above the common divisor: at most half a bird
 * a row away from the total, and a beginning of the order above. */
static gint64
share_by_divisor (const gint64 *weights, guint n_weights, gint64 sum, gint64 total,
                  gint64 *shares)
{
  gint64 given = 0;

  for (guint i = 0; i < n_weights; i++)
    {
      gint64 twice = 2 * weights[i] * total;

      shares[i] = twice > 0 ? ((twice - 1) / sum + 1) / 2 : 0;
      given += shares[i];
    }
  return given;
}

static guint
find_last (const gint64 *weights, guint n_weights, const gint64 *shares)
{
  guint last = n_weights;

  for (guint i = 0; i < n_weights; i++)
    if (shares[i] > 0
        && (last == n_weights
            || stands_before (weights, last, 2 * shares[last] - 1, i, 2 * shares[i] - 1)))
      last = i;
  return last;
}

/**
 * hc_apportion:
 * @weights: (array length=n_weights): the birds of each row of the flock that
 *   sets the proportions
 * @n_weights: how many rows
 * @total: birds to share out, at most %HC_WHOLE_MANY
 * @shares: (out caller-allocates) (array length=n_weights): birds of each row;
 *   all 0 when the weights are
 */
void
hc_apportion (const gint64 *weights, guint n_weights, gint64 total, gint64 *shares)
{
  gint64 sum = 0;
  gint64 given;

  for (guint i = 0; i < n_weights; i++)
    {
      sum += weights[i];
      shares[i] = 0;
    }
  if (sum <= 0 || total <= 0)
    return;
  given = share_by_divisor (weights, n_weights, sum, total, shares);
  for (; given < total; given++)
    shares[find_next (weights, n_weights, shares)]++;
  for (; given > total; given--)
    shares[find_last (weights, n_weights, shares)]--;
}
