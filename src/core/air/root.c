/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Where a function of one number is nothing, between two points of unlike sign. */
#include "config.h"

#include "air/root.h"

#include <math.h>

#define MOST_STEPS 200

/* From then on halving alone: a cusp can keep parabolas busy for ever. */
#define N_PARABOLAS 60
#define LEAST_WIDTH 1e-13

/* Chandrupatla 1997: whether the inverse parabola through three points can be trusted. */
static double
choose_share (HcRootPoint a, HcRootPoint b, HcRootPoint c)
{
  double xi = (a.x - b.x) / (c.x - b.x);
  double phi = (a.y - b.y) / (c.y - b.y);

  if (phi * phi >= xi || (1 - phi) * (1 - phi) >= 1 - xi)
    return 0.5;
  return a.y / (b.y - a.y) * c.y / (b.y - c.y)
         + (c.x - a.x) / (b.x - a.x) * a.y / (c.y - a.y) * b.y / (c.y - b.y);
}

/**
 * hc_root_between: (skip)
 * @func: the function, without jumps
 * @data: given to @func
 * @a: a point of it
 * @b: a point of it with the other sign
 * @enough: how near to 0 is near enough
 *
 * Chandrupatla's method: inverse parabolas where they can be trusted, halving else.
 *
 * Returns: the point nearest to 0 that was found
 */
HcRootPoint
hc_root_between (HcRootFunc func, gpointer data, HcRootPoint a, HcRootPoint b, double enough)
{
  HcRootPoint c = a;
  double share = 0.5;

  for (guint i = 0; i < MOST_STEPS; i++)
    {
      HcRootPoint best = fabs (a.y) < fabs (b.y) ? a : b;
      double width = fabs (b.x - a.x);
      HcRootPoint next;

      if (fabs (best.y) <= enough || width <= LEAST_WIDTH * MAX (1, fabs (best.x)))
        return best;
      next.x = a.x + share * (b.x - a.x);
      next.y = func (data, next.x);
      if ((next.y > 0) == (a.y > 0))
        c = a;
      else
        {
          c = b;
          b = a;
        }
      a = next;
      share = i < N_PARABOLAS ? CLAMP (choose_share (a, b, c), 1e-9, 1 - 1e-9) : 0.5;
    }
  return fabs (a.y) < fabs (b.y) ? a : b;
}
