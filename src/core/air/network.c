/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The pressures inside at which as much air comes in as goes out. */
#include "config.h"

#include "air/network.h"

#include "air/stack.h"
#include "air/wind.h"

#include <math.h>
#include <string.h>

#define MOST_STEPS 200
#define MOST_HALVINGS 40

/* kg/s: as good as none. */
#define BALANCED 1e-13

typedef struct
{
  double net[HC_AIR_MOST_SPACES];
  HcDense slope;
} Imbalance;

static double
find_pressure (const HcAirNetwork *network, const HcAirPath *path, int space,
               const double *pressure_pa, double z_m)
{
  if (space == HC_AIR_OUTSIDE)
    return hc_wind_pa (path->pressure_coefficient, network->rho_out, network->wind_m_s);
  return pressure_pa[space] + hc_stack_pa (network->rho_out, network->rho[space], z_m);
}

static double
find_push (const HcAirNetwork *network, const HcAirPath *path, const double *pressure_pa,
           double z_m)
{
  return find_pressure (network, path, path->beyond, pressure_pa, z_m)
         - find_pressure (network, path, path->space, pressure_pa, z_m);
}

static double
find_density (const HcAirNetwork *network, int space)
{
  return space == HC_AIR_OUTSIDE ? network->rho_out : network->rho[space];
}

/**
 * hc_air_network_get_flow: (skip)
 * @network: the ways, and how heavy the air is
 * @path: one of them
 * @pressure_pa: (array): pressure in each space at the reference level, above that
 *   of still air outside, Pa
 *
 * Returns: air driven through it, in being from beyond into its space
 */
HcAirFlow
hc_air_network_get_flow (const HcAirNetwork *network, const HcAirPath *path,
                         const double *pressure_pa)
{
  double beyond = find_density (network, path->beyond);
  double inside = find_density (network, path->space);
  double low_pa = find_push (network, path, pressure_pa, path->bottom_m);

  if (path->crack_m3_s > 0)
    return hc_opening_flow_crack (low_pa, path->crack_m3_s, path->crack_exponent, beyond, inside);
  if (path->height_m <= 0)
    return hc_opening_flow_orifice (low_pa, path->effective_m2, beyond, inside);
  return hc_opening_flow_tall (
      low_pa, find_push (network, path, pressure_pa, path->bottom_m + path->height_m),
      path->effective_m2, beyond, inside);
}

/* How much comes into each space, net, and how that changes with the pressures. */
static double
weigh (const HcAirNetwork *network, const double *pressure_pa, Imbalance *imbalance)
{
  double worst = 0;

  memset (imbalance, 0, sizeof *imbalance);
  for (guint i = 0; i < network->n_paths; i++)
    {
      const HcAirPath *path = &network->paths[i];
      HcAirFlow flow = hc_air_network_get_flow (network, path, pressure_pa);
      double net = flow.in_kg_s - flow.out_kg_s;

      imbalance->net[path->space] += net;
      imbalance->slope[path->space][path->space] -= flow.slope;
      if (path->beyond == HC_AIR_OUTSIDE)
        continue;
      imbalance->net[path->beyond] -= net;
      imbalance->slope[path->beyond][path->beyond] -= flow.slope;
      imbalance->slope[path->space][path->beyond] += flow.slope;
      imbalance->slope[path->beyond][path->space] += flow.slope;
    }
  for (guint i = 0; i < network->n_spaces; i++)
    worst = MAX (worst, fabs (imbalance->net[i]));
  return worst;
}

/* One space: the net flow falls as the pressure rises, so that a bracket holds. */
static double
settle_one (const HcAirNetwork *network, double *pressure_pa)
{
  double low = -G_MAXDOUBLE;
  double high = G_MAXDOUBLE;
  Imbalance imbalance;
  double worst = weigh (network, pressure_pa, &imbalance);
  double before = G_MAXDOUBLE;

  for (guint i = 0; i < MOST_STEPS && worst > BALANCED; i++)
    {
      double slope = imbalance.slope[0][0];
      double next;

      if (slope == 0)
        break;
      *(imbalance.net[0] > 0 ? &low : &high) = *pressure_pa;
      next = *pressure_pa - imbalance.net[0] / slope;
      if (next == *pressure_pa)
        break;
      if (next <= low || next >= high || (worst > before / 2 && high - low < G_MAXDOUBLE))
        next = (low + high) / 2;
      before = worst;
      *pressure_pa = next;
      worst = weigh (network, pressure_pa, &imbalance);
    }
  return worst;
}

static double
find_gain (guint n, const double *net, const double *step)
{
  double sum = 0;

  for (guint i = 0; i < n; i++)
    sum += net[i] * step[i];
  return sum;
}

static double
go (const HcAirNetwork *network, double *pressure_pa, const double *from, const double *step,
    double share, Imbalance *imbalance)
{
  for (guint i = 0; i < network->n_spaces; i++)
    pressure_pa[i] = from[i] + share * step[i];
  return weigh (network, pressure_pa, imbalance);
}

/* The flows are the slopes of a convex bowl: along any step its gain falls steadily,
 * and the step is right where little of the gain is left. */
static double
go_along (const HcAirNetwork *network, double *pressure_pa, const double *step,
          Imbalance *imbalance)
{
  guint n = network->n_spaces;
  double from[HC_AIR_MOST_SPACES];
  double gain = find_gain (n, imbalance->net, step);
  double low = 0;
  double high = G_MAXDOUBLE;
  double share = 1;
  double worst = 0;

  memcpy (from, pressure_pa, sizeof from);
  for (guint i = 0; i < MOST_HALVINGS; i++)
    {
      double left;

      worst = go (network, pressure_pa, from, step, share, imbalance);
      left = find_gain (n, imbalance->net, step);
      if (fabs (left) <= 0.5 * fabs (gain) || worst <= BALANCED)
        break;
      *(left > 0 ? &low : &high) = share;
      share = high < G_MAXDOUBLE ? (low + high) / 2 : 2 * share;
    }
  return worst;
}

/* Several: Newton's steps, each as long as it helps. */
static double
settle_all (const HcAirNetwork *network, double *pressure_pa)
{
  Imbalance imbalance;
  double worst = weigh (network, pressure_pa, &imbalance);
  guint n = network->n_spaces;

  for (guint i = 0; i < MOST_STEPS && worst > BALANCED; i++)
    {
      double step[HC_AIR_MOST_SPACES];

      for (guint space = 0; space < n; space++)
        {
          step[space] = -imbalance.net[space];
          imbalance.slope[space][space] -= 1e-12;
        }
      hc_dense_solve (n, imbalance.slope, step);
      worst = go_along (network, pressure_pa, step, &imbalance);
    }
  return worst;
}

/**
 * hc_air_network_settle: (skip)
 * @network: the ways, and how heavy the air is
 * @pressure_pa: (inout) (array): pressure in each space at the reference level,
 *   above that of still air outside, Pa; the first guess goes in
 *
 * Mass balance of every space, as in Li, Delsante and Symons 2000 and the guides of
 * the Air Infiltration and Ventilation Centre.
 *
 * Returns: the largest imbalance left, kg/s
 */
double
hc_air_network_settle (const HcAirNetwork *network, double *pressure_pa)
{
  return network->n_spaces == 1 ? settle_one (network, pressure_pa)
                                : settle_all (network, pressure_pa);
}

/**
 * hc_air_network_get_exchange: (skip)
 * @network: the ways, and how heavy the air is
 * @pressure_pa: (array): pressure in each space, settled
 * @exchange: (out caller-allocates): who gets how much air from whom
 *
 * What stirs both ways through an opening that little is driven through comes on top.
 */
void
hc_air_network_get_exchange (const HcAirNetwork *network, const double *pressure_pa,
                             HcAirExchange *exchange)
{
  memset (exchange, 0, sizeof *exchange);
  for (guint i = 0; i < network->n_paths; i++)
    {
      const HcAirPath *path = &network->paths[i];
      HcAirFlow flow = hc_air_network_get_flow (network, path, pressure_pa);
      double stir = path->stir_m3_s * find_density (network, path->beyond);
      double more = MAX (stir - MAX (flow.in_kg_s, flow.out_kg_s), 0);

      exchange->into_kg_s[path->space] += flow.in_kg_s + more;
      if (path->beyond == HC_AIR_OUTSIDE)
        {
          exchange->fresh_kg_s[path->space] += flow.in_kg_s + more;
          continue;
        }
      exchange->between_kg_s[path->beyond][path->space] += flow.in_kg_s + more;
      exchange->between_kg_s[path->space][path->beyond] += flow.out_kg_s + more;
      exchange->into_kg_s[path->beyond] += flow.out_kg_s + more;
    }
}
