/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Gallop, then bisect. */
#include "config.h"

#include "needs/capacity/search.h"

#include <math.h>

/* Lower neighbours looked at again, should more birds ever ask less. */
#define NEIGHBOURS 2

static gint64
step_back (HcSearchTest test, gpointer data, gint64 known, gint64 most)
{
  for (gint64 at = most - 1; at > known && at >= most - NEIGHBOURS; at--)
    if (!test (at, data))
      return step_back (test, data, known, at - 1);
  return most;
}

/* The largest number that passes, from @known which does; %G_MAXINT64 when
 * @limit passes too. */
gint64
hc_search_most (HcSearchTest test, gpointer data, gint64 known, gint64 limit)
{
  gint64 enough = known;
  gint64 step = 1;
  gint64 beyond;

  while (enough + step <= limit && test (enough + step, data))
    {
      enough += step;
      step *= 2;
    }
  if (enough + step > limit)
    return G_MAXINT64;
  beyond = enough + step;
  while (beyond - enough > 1)
    {
      gint64 middle = enough + (beyond - enough) / 2;

      if (test (middle, data))
        enough = middle;
      else
        beyond = middle;
    }
  return step_back (test, data, known, enough);
}

/* The smallest multiple of @step that passes; negative when none up to @limit
 * does. */
double
hc_search_least_amount (gboolean (*test) (double amount, gpointer data), gpointer data,
                        double step, double limit)
{
  double short_of = 0;
  double enough = 1;

  while (enough * step <= limit && !test (enough * step, data))
    {
      short_of = enough;
      enough *= 2;
    }
  if (enough * step > limit)
    return -1;
  while (enough - short_of > 1)
    {
      double middle = floor ((short_of + enough) / 2);

      if (test (middle * step, data))
        enough = middle;
      else
        short_of = middle;
    }
  return enough * step;
}
