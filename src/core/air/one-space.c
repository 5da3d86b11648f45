/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Every temperature at which the heat of one space balances. */
#include "config.h"

#include "air/root.h"
#include "air/steady.h"

#include <math.h>

/* Points looked at where the wind may work against the warmth. */
#define N_LOOKS 10

/* How far below the outside sun-less roofs and drying can bring a space, K. */
#define COLDEST_FALL_K 40

/* W: as good as balanced. */
#define BALANCED 1e-7

static double
weigh_at (gpointer data, double t_c)
{
  HcAirTrial *trial = data;

  trial->t_c[0] = t_c;
  hc_air_trial_weigh (trial);
  return trial->residual_w[0];
}

static HcRootPoint
look (HcAirTrial *trial, double t_c)
{
  HcRootPoint point = { t_c, weigh_at (trial, t_c) };

  return point;
}

/* Only wind that presses unlike on two ways out can turn against the warmth. */
static gboolean
wind_works (const HcAirHouse *house)
{
  gboolean first = TRUE;
  double coefficient = 0;

  if (house->outside.wind_m_s <= 0)
    return FALSE;
  for (guint i = 0; i < house->n_paths; i++)
    {
      const HcAirPath *path = &house->paths[i];

      if (path->beyond != HC_AIR_OUTSIDE)
        continue;
      if (!first && path->pressure_coefficient != coefficient)
        return TRUE;
      coefficient = path->pressure_coefficient;
      first = FALSE;
    }
  return FALSE;
}

static void
add_crossing (HcAirTrial *trial, HcRootPoint a, HcRootPoint b, HcAirStates *states)
{
  HcRootPoint root = hc_root_between (weigh_at, trial, a, b, BALANCED);

  if (trial->t_c[0] != root.x)
    weigh_at (trial, root.x);
  hc_air_states_add (states, trial, (a.y > b.y) == (a.x < b.x));
}

/* Three points of one sign whose middle is nearest to balance may hide two states. */
static void
look_between (HcAirTrial *trial, HcRootPoint a, HcRootPoint b, HcRootPoint c,
              HcAirStates *states)
{
  for (guint i = 0; i < 12; i++)
    {
      gboolean left = fabs (b.x - a.x) > fabs (c.x - b.x);
      HcRootPoint middle = look (trial, left ? (a.x + b.x) / 2 : (b.x + c.x) / 2);

      if ((middle.y > 0) != (b.y > 0))
        {
          add_crossing (trial, left ? a : b, middle, states);
          add_crossing (trial, middle, left ? b : c, states);
          return;
        }
      if (fabs (middle.y) < fabs (b.y))
        {
          *(left ? &c : &a) = b;
          b = middle;
        }
      else
        *(left ? &a : &c) = middle;
    }
}

static void
look_along (HcAirTrial *trial, HcRootPoint start, double end_c, guint n_looks,
            HcAirStates *states)
{
  HcRootPoint before = start;
  HcRootPoint at = start;

  for (guint i = 1; i <= n_looks; i++)
    {
      double share = (double) i / n_looks;
      HcRootPoint next = look (trial, start.x + (end_c - start.x) * share * sqrt (share));

      if ((next.y > 0) != (at.y > 0))
        add_crossing (trial, at, next, states);
      else if (i > 1 && (before.y > 0) == (at.y > 0) && fabs (at.y) < fabs (before.y)
               && fabs (at.y) < fabs (next.y))
        look_between (trial, before, at, next, states);
      before = at;
      at = next;
    }
}

/**
 * hc_air_find_in_one_space: (skip)
 * @trial: a trial of a house of one space
 * @states: (inout): the states found are added
 *
 * Without wind warmth drives all the air, more of it the warmer it is, and there is
 * one crossing. With wind the whole range is looked along.
 */
void
hc_air_find_in_one_space (HcAirTrial *trial, HcAirStates *states)
{
  double outside_c = trial->house->outside.t_c;
  double hottest_c = hc_air_find_hottest_c (trial);
  HcRootPoint start = { outside_c, trial->residual_w[0] };
  gboolean windy = wind_works (trial->house);

  if (fabs (start.y) <= BALANCED)
    {
      trial->t_c[0] = outside_c;
      hc_air_states_add (states, trial, TRUE);
      return;
    }
  look_along (trial, start, start.y > 0 ? hottest_c : outside_c - COLDEST_FALL_K,
              windy ? N_LOOKS : 1, states);
}
