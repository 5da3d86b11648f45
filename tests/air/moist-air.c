/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Moist air against ASHRAE's tables and worked examples, and against absurd askers. */
#include "config.h"

#include "air/moist-air.h"

#include <math.h>

#define SEA HC_STANDARD_PRESSURE_PA

/* Published: ASHRAE Handbook of Fundamentals 2017, chapter 1, table 3, as the tests
 * of psychrolib transcribe it. */
static void
test_saturation_pressure (void)
{
  static const struct
  {
    double t_c, pa, within;
  } rows[] = {
    { -60, 1.08, 0.01 },
    { -20, 103.24, 103.24 * 3e-4 },
    { -5, 401.74, 401.74 * 3e-4 },
    { 5, 872.6, 872.6 * 3e-4 },
    { 25, 3169.7, 3169.7 * 3e-4 },
    { 50, 12351.3, 12351.3 * 3e-4 },
  };

  for (guint i = 0; i < G_N_ELEMENTS (rows); i++)
    g_assert_cmpfloat_with_epsilon (hc_saturation_pa (rows[i].t_c), rows[i].pa, rows[i].within);
}

/* Published: the same handbook, table 2, which allows for air that is no ideal gas. */
static void
test_saturated_ratio (void)
{
  static const double rows[][2] = {
    { -50, 2.43e-5 }, { -20, 6.373e-4 }, { -5, 2.4863e-3 },
    { 5, 5.425e-3 },  { 25, 0.020173 },  { 50, 0.086863 },
  };

  for (guint i = 0; i < G_N_ELEMENTS (rows); i++)
    g_assert_cmpfloat_with_epsilon (hc_moist_air_ratio (rows[i][0], 1, SEA), rows[i][1],
                                    rows[i][1] * 0.01);
}

/* Published: the same handbook, example 1: 40 °C, wet bulb 20 °C. */
static void
test_ashrae_example_1 (void)
{
  double ratio = hc_moist_air_ratio_from_wet_bulb (40, 20, SEA);

  g_assert_cmpfloat_with_epsilon (ratio, 0.0065, 1e-4);
  g_assert_cmpfloat_with_epsilon (hc_moist_air_humidity (40, ratio, SEA), 0.14, 0.01);
  g_assert_cmpfloat_with_epsilon (hc_moist_air_enthalpy_j_kg (40, ratio), 56.7e3, 100);
  g_assert_cmpfloat_with_epsilon (hc_moist_air_volume_m3_kg (40, ratio, SEA), 0.896, 0.00896);
}

/* Published: psychrolib's tests. */
static void
test_air_at_500_m (void)
{
  g_assert_cmpfloat_with_epsilon (hc_moist_air_enthalpy_j_kg (30, 0.02), 81316, 81316 * 3e-4);
  g_assert_cmpfloat_with_epsilon (hc_moist_air_volume_m3_kg (30, 0.02, 95461), 0.9408554, 3e-4);
  g_assert_cmpfloat_with_epsilon (hc_moist_air_density_kg_m3 (30, 0.02, 95461), 1.084120, 3e-4);
}

/* Published: the standard atmosphere, as in psychrolib's tests. */
static void
test_pressure_falls_with_elevation (void)
{
  g_assert_cmpfloat_with_epsilon (hc_air_pressure_pa (500), 95461, 1);
  g_assert_cmpfloat_with_epsilon (hc_air_pressure_pa (1000), 89875, 1);
  g_assert_cmpfloat_with_epsilon (hc_air_pressure_pa (4000), 61640, 1);
}

static double
dew_point (double t_c, double humidity)
{
  return hc_moist_air_dew_point_c (hc_moist_air_ratio (t_c, humidity, SEA), SEA);
}

/* Published: 1nergie.lu, and a chart of Viega's. */
static void
test_dew_point (void)
{
  g_assert_cmpfloat_with_epsilon (dew_point (21, 0.55), 11.6, 0.05);
  g_assert_cmpfloat_with_epsilon (dew_point (20, 0.40) * 9 / 5 + 32, 42.8, 0.05);
}

/* Regression: computed from the equations. */
static void
test_weather_service_humidity_in_frost (void)
{
  g_assert_cmpfloat_with_epsilon (hc_humidity_from_weather_service (-20, 0.80), 0.9733, 0.0005);
  g_assert_cmpfloat (hc_humidity_from_weather_service (-20, 0.95), ==, 1);
  g_assert_cmpfloat_with_epsilon (hc_humidity_from_weather_service (20, 0.80), 0.80, 1e-12);
}

/* Published: the UGA's two rooms of saturated air hold 184 and 66 lb of water. */
static void
test_warm_air_holds_more (void)
{
  double warm = hc_saturation_pa ((70 - 32) / 1.8) / ((70 - 32) / 1.8 + HC_KELVIN);
  double cool = hc_saturation_pa ((40 - 32) / 1.8) / ((40 - 32) / 1.8 + HC_KELVIN);

  g_assert_cmpfloat_with_epsilon (warm / cool, 184.0 / 66, 184.0 / 66 * 0.02);
}

static void
test_dew_point_undoes_saturation (void)
{
  for (guint i = 0; i < 2000; i++)
    {
      double t_c = g_test_rand_double_range (-95, 150);

      g_assert_cmpfloat_with_epsilon (hc_saturation_get_c (hc_saturation_pa (t_c)), t_c, 2e-7 +
                                      (fabs (t_c - HC_TRIPLE_POINT_C) < 0.02 ? 0.02 : 0));
    }
}

static void
test_absurd_askers_get_numbers (void)
{
  static const double askers[]
      = { -1e300, -90, -1, 0, 0.01, 1, 1.3, 130, 1e300, NAN, INFINITY, -INFINITY };

  for (guint i = 0; i < G_N_ELEMENTS (askers); i++)
    for (guint j = 0; j < G_N_ELEMENTS (askers); j++)
      {
        double a = askers[i];
        double b = askers[j];
        double answers[] = {
          hc_saturation_pa (a),
          hc_saturation_get_c (a),
          hc_air_pressure_pa (a),
          hc_air_density_kg_m3 (a, b),
          hc_vapour_to_ratio (a, b),
          hc_vapour_from_ratio_pa (a, b),
          hc_moist_air_ratio (a, b, SEA),
          hc_moist_air_ratio (20, a, b),
          hc_moist_air_humidity (a, b, SEA),
          hc_moist_air_dew_point_c (a, b),
          hc_moist_air_wet_bulb_c (a, b, SEA),
          hc_moist_air_enthalpy_j_kg (a, b),
          hc_moist_air_from_enthalpy_c (a, b),
          hc_moist_air_density_kg_m3 (a, b, SEA),
          hc_humidity_from_weather_service (a, b),
        };

        for (guint k = 0; k < G_N_ELEMENTS (answers); k++)
          g_assert_true (isfinite (answers[k]));
      }
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/moist-air/saturation-pressure", test_saturation_pressure);
  g_test_add_func ("/moist-air/saturated-ratio", test_saturated_ratio);
  g_test_add_func ("/moist-air/ashrae-example-1", test_ashrae_example_1);
  g_test_add_func ("/moist-air/at-500-m", test_air_at_500_m);
  g_test_add_func ("/moist-air/elevation", test_pressure_falls_with_elevation);
  g_test_add_func ("/moist-air/dew-point", test_dew_point);
  g_test_add_func ("/moist-air/weather-service", test_weather_service_humidity_in_frost);
  g_test_add_func ("/moist-air/warm-air-holds-more", test_warm_air_holds_more);
  g_test_add_func ("/moist-air/dew-point-undoes-saturation", test_dew_point_undoes_saturation);
  g_test_add_func ("/moist-air/absurd-askers", test_absurd_askers_get_numbers);
  return g_test_run ();
}
