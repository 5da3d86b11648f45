/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Wind on walls, and water that dries up, against published values. */
#include "config.h"

#include "air/moist-air.h"
#include "air/open-water.h"
#include "air/wind.h"

#include <math.h>

/* Published: a library of pressure coefficients after Swami and Chandra 1987. */
static void
test_wall_coefficients (void)
{
  static const double rows[][2] = { { 0, 0.603 },    { 30, 0.469 },   { 60, 0.119 },
                                    { 90, -0.443 },  { 120, -0.681 }, { 150, -0.390 },
                                    { 180, -0.364 } };

  for (guint i = 0; i < G_N_ELEMENTS (rows); i++)
    {
      g_assert_cmpfloat_with_epsilon (hc_wind_wall_coefficient (rows[i][0], 1), rows[i][1], 6e-4);
      g_assert_cmpfloat_with_epsilon (hc_wind_wall_coefficient (-rows[i][0], 1), rows[i][1], 6e-4);
    }
}

/* Published: ASHRAE Handbook of Fundamentals 2005; the figures are a regression. */
static void
test_wind_is_weaker_low_down (void)
{
  g_assert_cmpfloat_with_epsilon (hc_wind_at_height_m_s (5, 1.5, HC_TERRAIN_OPEN), 3.83, 0.01);
  g_assert_cmpfloat_with_epsilon (hc_wind_at_height_m_s (5, 1.5, HC_TERRAIN_SHELTERED), 2.36,
                                  0.01);
  g_assert_cmpfloat_with_epsilon (hc_wind_at_height_m_s (5, 1.5, HC_TERRAIN_TOWN), 1.20, 0.01);
}

/* Published: the library's roofs. */
static void
test_roof_coefficients (void)
{
  g_assert_cmpfloat (hc_wind_roof_coefficient (5, 30), ==, -0.6);
  g_assert_cmpfloat_with_epsilon (hc_wind_roof_coefficient (20, 0), -0.4, 1e-12);
  g_assert_cmpfloat_with_epsilon (hc_wind_roof_coefficient (20, 45), -0.5, 1e-12);
  g_assert_cmpfloat_with_epsilon (hc_wind_roof_coefficient (20, 90), -0.6, 1e-12);
}

/* Published: the Engineering ToolBox's pool of 25 by 20 m. */
static void
test_pool (void)
{
  double kg_s = hc_open_water_draughty_kg_s (25 * 20, 0.5, 0.02, 0.0098);

  g_assert_cmpfloat_with_epsilon (kg_s, 0.049, 0.0002);
  g_assert_cmpfloat_with_epsilon (kg_s * 2257, 110.6, 110.6 * 0.004);
}

/* Regression: both published formulas for a drinker of 5 dm², water 5 °C, air 0 °C. */
static void
test_drinker (void)
{
  double ratio = hc_moist_air_ratio (0, 0.7, HC_STANDARD_PRESSURE_PA);
  double saturated = hc_moist_air_ratio (5, 1, HC_STANDARD_PRESSURE_PA);
  double vapour_pa = 0.7 * hc_saturation_pa (0);

  g_assert_cmpfloat_with_epsilon (
      hc_open_water_still_kg_s (0.05, HC_STILL_WATER, 5, vapour_pa) * 3.6e6, 1.601, 0.008);
  g_assert_cmpfloat_with_epsilon (
      hc_open_water_draughty_kg_s (0.05, 0.1, saturated, ratio) * 3.6e6, 3.719, 0.019);
  g_assert_cmpfloat (hc_open_water_still_kg_s (0.05, HC_STILL_WATER, 0, 5000), ==, 0);
}

static void
test_absurd_wind (void)
{
  static const double askers[] = { -1e300, -1, 0, 1, 1e300, NAN, INFINITY };

  for (guint i = 0; i < G_N_ELEMENTS (askers); i++)
    for (guint j = 0; j < G_N_ELEMENTS (askers); j++)
      {
        g_assert_true (isfinite (hc_wind_wall_coefficient (askers[i], askers[j])));
        g_assert_true (isfinite (hc_wind_roof_coefficient (askers[i], askers[j])));
        g_assert_true (
            isfinite (hc_wind_at_height_m_s (askers[i], askers[j], HC_TERRAIN_OPEN)));
      }
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/wind/walls", test_wall_coefficients);
  g_test_add_func ("/wind/low-down", test_wind_is_weaker_low_down);
  g_test_add_func ("/wind/roofs", test_roof_coefficients);
  g_test_add_func ("/wind/absurd", test_absurd_wind);
  g_test_add_func ("/water/pool", test_pool);
  g_test_add_func ("/water/drinker", test_drinker);
  return g_test_run ();
}
