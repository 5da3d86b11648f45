/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Flow through openings: closed forms, mesh, and openings that breathe both ways. */
#include "config.h"

#include "air/leakage.h"
#include "air/moist-air.h"
#include "air/opening-flow.h"
#include "air/stack.h"

#include <math.h>

#define FOOT_M 0.3048
#define SQUARE_FOOT_M2 (FOOT_M * FOOT_M)
#define CFM_M3_S 0.000471947

static double
density_f (double t_f)
{
  return hc_air_density_kg_m3 ((t_f - 32) / 1.8, HC_STANDARD_PRESSURE_PA);
}

/* Published: US practice, cfm = 9.4·A·√(h·ΔT): 188 cfm; the closed form is a regression. */
static void
test_us_rule_for_the_stack (void)
{
  double kg_s = hc_stack_flow_kg_s (SQUARE_FOOT_M2, SQUARE_FOOT_M2, 0.65, 10 * FOOT_M,
                                    density_f (30), density_f (70));

  g_assert_cmpfloat_with_epsilon (kg_s / density_f (30) / CFM_M3_S, 188, 1.88);
  g_assert_cmpfloat_with_epsilon (kg_s / density_f (30) / CFM_M3_S, 188.4, 1.88);
  g_assert_cmpfloat_with_epsilon (kg_s / density_f (70) / CFM_M3_S, 203.8, 2.04);
}

/* Published formula: API RP 500. */
static void
test_neutral_level (void)
{
  g_assert_cmpfloat_with_epsilon (hc_stack_neutral_level_m (0.10, 0.05, 1.5, 5, -10), 0.286917,
                                  1e-5);
  g_assert_cmpfloat (hc_stack_neutral_level_m (0, 0, 1.5, 5, -10), ==, 1.5);
}

/* From memory: Idelchik; a regression, as are the areas. */
static void
test_mesh (void)
{
  g_assert_cmpfloat_with_epsilon (hc_mesh_free_area (0.041, 0.5), 0.843, 0.001);
  g_assert_cmpfloat_with_epsilon (hc_mesh_loss (0.843), 0.24, 0.005);
  g_assert_cmpfloat_with_epsilon (hc_mesh_discharge (0.61, 0.843), 0.585, 0.001);
  g_assert_cmpfloat_with_epsilon (hc_mesh_discharge (0.61, 0.68), 0.548, 0.001);
  g_assert_cmpfloat_with_epsilon (hc_mesh_loss (0.5), 1.65, 1e-9);
}

static void
test_two_way_discharge (void)
{
  g_assert_cmpfloat_with_epsilon (hc_opening_two_way_discharge (20, 0), 0.49, 1e-12);
  g_assert_cmpfloat (hc_opening_two_way_discharge (200, 0), ==, 0.65);
}

/* A tall opening is many low ones, one above another. */
static void
test_tall_opening_is_a_sum_of_strips (void)
{
  for (guint i = 0; i < 200; i++)
    {
      double low = g_test_rand_double_range (-3, 3);
      double high = g_test_rand_double_range (-3, 3);
      HcAirFlow whole = hc_opening_flow_tall (low, high, 0.5, 1.3, 1.2);
      double in = 0;
      double out = 0;

      for (guint strip = 0; strip < 4000; strip++)
        {
          HcAirFlow part = hc_opening_flow_orifice (low + (high - low) * (strip + 0.5) / 4000,
                                                    0.5 / 4000, 1.3, 1.2);

          in += part.in_kg_s;
          out += part.out_kg_s;
        }
      g_assert_cmpfloat_with_epsilon (whole.in_kg_s, in, 2e-5);
      g_assert_cmpfloat_with_epsilon (whole.out_kg_s, out, 2e-5);
    }
}

static double
net (HcAirFlow flow)
{
  return flow.in_kg_s - flow.out_kg_s;
}

static void
test_slope_is_the_derivative (void)
{
  for (guint i = 0; i < 500; i++)
    {
      double low = g_test_rand_double_range (0.1, 3) * (g_test_rand_bit () ? 1 : -1);
      double high = g_test_rand_double_range (0.1, 3) * (g_test_rand_bit () ? 1 : -1);
      double step = 1e-6;
      HcAirFlow tall = hc_opening_flow_tall (low, high, 0.5, 1.3, 1.2);
      HcAirFlow crack = hc_opening_flow_crack (low, 0.01, 0.65, 1.3, 1.2);

      g_assert_cmpfloat_with_epsilon (
          tall.slope,
          (net (hc_opening_flow_tall (low + step, high + step, 0.5, 1.3, 1.2))
           - net (hc_opening_flow_tall (low - step, high - step, 0.5, 1.3, 1.2))) / 2 / step, 1e-4);
      g_assert_cmpfloat_with_epsilon (
          crack.slope,
          (net (hc_opening_flow_crack (low + step, 0.01, 0.65, 1.3, 1.2))
           - net (hc_opening_flow_crack (low - step, 0.01, 0.65, 1.3, 1.2))) / 2 / step, 1e-4);
    }
}

static void
test_still_air_stirs (void)
{
  g_assert_cmpfloat_with_epsilon (hc_still_air_exchange_m3_s (1, 0, 1, 0), 0.05, 1e-12);
  g_assert_cmpfloat_with_epsilon (hc_leakage_area_m2 (15, 5), 0.0075, 1e-12);
  g_assert_cmpfloat (hc_leakage_area_m2 (-1, 5), ==, 0);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/openings/us-rule", test_us_rule_for_the_stack);
  g_test_add_func ("/openings/neutral-level", test_neutral_level);
  g_test_add_func ("/openings/mesh", test_mesh);
  g_test_add_func ("/openings/two-way-discharge", test_two_way_discharge);
  g_test_add_func ("/openings/tall-is-strips", test_tall_opening_is_a_sum_of_strips);
  g_test_add_func ("/openings/slope", test_slope_is_the_derivative);
  g_test_add_func ("/openings/still-air", test_still_air_stirs);
  return g_test_run ();
}
