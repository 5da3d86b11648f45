/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Air through holes: vents, mesh, cracks and openings tall enough for both ways at once. */
#include "config.h"

#include "air/opening-flow.h"

#include <math.h>

/* Below this push the root is drawn straight: its slope has no end at 0. */
#define LEAST_PA 1e-4

/* A push that differs less from bottom to top is the same all over. */
#define LEAST_SPAN_PA 1e-12

/**
 * hc_opening_flow_orifice: (skip)
 * @push_pa: pressure outside less pressure inside, Pa
 * @effective_m2: area times discharge coefficient, m²
 * @rho_out: density outside, kg/m³
 * @rho_in: density inside, kg/m³
 *
 * Bernoulli's orifice: m = Cd·A·√(2ρΔp), with the density of the side the air
 * comes from; ASHRAE Handbook of Fundamentals, chapter 16. Straight below 1e-4 Pa.
 *
 * Returns: the flow
 */
HcAirFlow
hc_opening_flow_orifice (double push_pa, double effective_m2, double rho_out, double rho_in)
{
  HcAirFlow flow = { 0, 0, 0 };
  double size = fabs (push_pa);
  double k = effective_m2 * sqrt (2 * (push_pa > 0 ? rho_out : rho_in));
  double *way = push_pa > 0 ? &flow.in_kg_s : &flow.out_kg_s;
  double root = sqrt (MAX (size, LEAST_PA));

  if (size < LEAST_PA)
    {
      *way = k * size / root;
      flow.slope = k / root;
    }
  else
    {
      *way = k * root;
      flow.slope = k / (2 * root);
    }
  return flow;
}

/* The mean of √x for x from a² to b². */
static double
find_mean_root (double a, double b)
{
  return a + b > 0 ? 2.0 / 3 * (a * a + a * b + b * b) / (a + b) : 0;
}

/* How fast that mean grows with both ends: (√high - √low) / (high - low). */
static double
find_mean_slope (double a, double b)
{
  return 1 / MAX (a + b, 2 * sqrt (LEAST_PA));
}

/**
 * hc_opening_flow_tall: (skip)
 * @push_low_pa: pressure outside less pressure inside at its lower edge, Pa
 * @push_high_pa: the same at its upper edge, Pa
 * @effective_m2: area times discharge coefficient, m²
 * @rho_out: density outside, kg/m³
 * @rho_in: density inside, kg/m³
 *
 * The orifice law, integrated over the height: where the push changes sign
 * within the opening, air comes in on one side of the neutral level and goes out
 * on the other.
 *
 * Returns: the flow
 */
HcAirFlow
hc_opening_flow_tall (double push_low_pa, double push_high_pa, double effective_m2,
                      double rho_out, double rho_in)
{
  HcAirFlow flow = { 0, 0, 0 };
  double in_k = effective_m2 * sqrt (2 * rho_out);
  double out_k = effective_m2 * sqrt (2 * rho_in);
  double a = sqrt (fabs (push_low_pa));
  double b = sqrt (fabs (push_high_pa));
  double span = fabs (push_high_pa - push_low_pa);

  if (span < LEAST_SPAN_PA)
    return hc_opening_flow_orifice ((push_low_pa + push_high_pa) / 2, effective_m2, rho_out,
                                    rho_in);
  if (push_low_pa >= 0 && push_high_pa >= 0)
    {
      flow.in_kg_s = in_k * find_mean_root (a, b);
      flow.slope = in_k * find_mean_slope (a, b);
    }
  else if (push_low_pa <= 0 && push_high_pa <= 0)
    {
      flow.out_kg_s = out_k * find_mean_root (a, b);
      flow.slope = out_k * find_mean_slope (a, b);
    }
  else
    {
      double in_root = push_low_pa > 0 ? a : b;
      double out_root = push_low_pa > 0 ? b : a;

      flow.in_kg_s = in_k * 2 / 3 * in_root * in_root * in_root / span;
      flow.out_kg_s = out_k * 2 / 3 * out_root * out_root * out_root / span;
      flow.slope = (in_k * in_root + out_k * out_root) / span;
    }
  return flow;
}

/**
 * hc_opening_flow_crack: (skip)
 * @push_pa: pressure outside less pressure inside, Pa
 * @coefficient: flow at 1 Pa, m³/s
 * @exponent: 0.5 (a hole) to 1 (a hair crack)
 * @rho_out: density outside, kg/m³
 * @rho_in: density inside, kg/m³
 *
 * The power law of leakage, Q = C·Δpⁿ (Liddament 1996). Straight below 1e-4 Pa.
 *
 * Returns: the flow
 */
HcAirFlow
hc_opening_flow_crack (double push_pa, double coefficient, double exponent, double rho_out,
                       double rho_in)
{
  HcAirFlow flow = { 0, 0, 0 };
  double size = fabs (push_pa);
  double n = CLAMP (exponent, 0.5, 1);
  double at = MAX (size, LEAST_PA);
  double *way = push_pa > 0 ? &flow.in_kg_s : &flow.out_kg_s;
  double whole = (push_pa > 0 ? rho_out : rho_in) * coefficient * pow (at, n);

  *way = whole * size / at;
  flow.slope = size < LEAST_PA ? whole / at : n * whole / at;
  return flow;
}

/**
 * hc_opening_two_way_discharge: (skip)
 * @inside_c: temperature inside, °C
 * @outside_c: temperature outside, °C
 *
 * For the only opening of a room, air passing it both ways; ASHRAE Handbook of
 * Fundamentals 2009, chapter 16, equation 39. Drawn in at 0.65.
 *
 * Returns: the discharge coefficient
 */
double
hc_opening_two_way_discharge (double inside_c, double outside_c)
{
  return MIN (0.40 + 0.0045 * fabs (inside_c - outside_c), 0.65);
}

/**
 * hc_mesh_free_area: (skip)
 * @wire_mm: thickness of the wire
 * @pitch_mm: from wire to wire
 *
 * Geometry of a square mesh.
 *
 * Returns: the open part of its face, 0 to 1
 */
double
hc_mesh_free_area (double wire_mm, double pitch_mm)
{
  double open = pitch_mm > 0 ? CLAMP (1 - wire_mm / pitch_mm, 0, 1) : 0;

  return open * open;
}

/**
 * hc_mesh_loss: (skip)
 * @free_area: the open part of its face, 0 to 1
 *
 * Idelchik's loss of a wire screen at high Reynolds number (from memory). Blevins
 * measured 2.1 where this gives 1.65, at a Reynolds number of 100.
 *
 * Returns: pressure lost, as so many times that of the air's speed
 */
double
hc_mesh_loss (double free_area)
{
  double open = CLAMP (free_area, 0.01, 1);
  double squeeze = 1 / open - 1;

  return 1.3 * (1 - open) + squeeze * squeeze;
}

/**
 * hc_mesh_discharge: (skip)
 * @discharge: discharge coefficient of the bare opening
 * @free_area: the open part of the mesh over it, 0 to 1
 *
 * Both losses one after the other.
 *
 * Returns: the discharge coefficient of both
 */
double
hc_mesh_discharge (double discharge, double free_area)
{
  return 1 / sqrt (1 / (discharge * discharge) + hc_mesh_loss (free_area));
}
