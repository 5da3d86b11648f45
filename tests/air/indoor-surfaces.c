/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Walls, roofs and floors against published tables and worked examples. */
#include "config.h"

#include "air/moist-air.h"
#include "air/surface.h"

#include <math.h>

#define BTU_H_W 0.29307107
#define SQUARE_FOOT_M2 0.09290304
#define US_U 5.678263

/* Published: a container wall, its printed sums of stud and cavity. */
static void
test_studs_beside_wool (void)
{
  double u = hc_surface_parallel_u (1 / 7.12, 0.15, 1 / 13.73);

  g_assert_cmpfloat_with_epsilon (1 / u, 12.05, 0.01);
}

/* Published: rows of heat lost, diydata.com. */
static void
test_heat_through_surfaces (void)
{
  static const double rows[][4] = { { 72, 40, 0.18, 518 },  { 40, 40, 0.51, 816 },
                                    { 238, 40, 0.12, 1142 }, { 238, 5, 0.29, 345 },
                                    { 231.5, 30, 0.18, 1250 } };

  for (guint i = 0; i < G_N_ELEMENTS (rows); i++)
    {
      double u = hc_surface_u_of_layers (0, 1 / (rows[i][2] * US_U), 0);
      double watts = u * rows[i][0] * SQUARE_FOOT_M2 * rows[i][1] / 1.8;

      g_assert_cmpfloat_with_epsilon (watts / BTU_H_W, rows[i][3], 1);
    }
}

/* Published: IHVE Guide A3, 1977: solid floors with four exposed edges. */
static void
test_floors_on_the_ground (void)
{
  static const double rows[][4] = { { 30, 30, 0.26, 0.10 },  { 30, 15, 0.36, 0.10 },
                                    { 15, 15, 0.45, 0.10 },  { 15, 7.5, 0.62, 0.10 },
                                    { 7.5, 7.5, 0.76, 0.10 }, { 3, 3, 1.47, 0.22 } };

  for (guint i = 0; i < G_N_ELEMENTS (rows); i++)
    {
      double u = hc_floor_slab_u (rows[i][0] * rows[i][1], 2 * (rows[i][0] + rows[i][1]), 0.3,
                                  1.4, 0);

      g_assert_cmpfloat (u, <, rows[i][2]);
      g_assert_cmpfloat (u, >, rows[i][2] * (1 - rows[i][3]));
    }
}

/* Published: WAC 51-11C-61061: 0.73 and 0.54 Btu/(h·ft·°F). */
static void
test_floor_edge (void)
{
  g_assert_cmpfloat_with_epsilon (hc_floor_edge_w_k (1, 0.73 * 1.730735), 1.263, 0.001);
  g_assert_cmpfloat_with_epsilon (hc_floor_edge_w_k (1, 0.54 * 1.730735), 0.935, 0.001);
}

/* Published: the Engineering ToolBox's window: 18.3 °C, 50 %, sweats from about 6 °C. */
static void
test_window_sweats (void)
{
  double dew_c = hc_moist_air_dew_point_c (
      hc_moist_air_ratio (18.3, 0.5, HC_STANDARD_PRESSURE_PA), HC_STANDARD_PRESSURE_PA);

  g_assert_cmpfloat (hc_surface_inside_c (18.3, 6 - 2, 6, HC_FILM_WALL), <, dew_c);
  g_assert_cmpfloat (hc_surface_inside_c (18.3, 6 + 2, 6, HC_FILM_WALL), >, dew_c);
}

/* Regression: 2 °C inside, -15 °C outside. */
static void
test_driest_limit (void)
{
  static const double rows[][2] = { { 5.88, 0.337 }, { 3.6, 0.524 }, { 0.5, 0.924 } };

  for (guint i = 0; i < G_N_ELEMENTS (rows); i++)
    g_assert_cmpfloat_with_epsilon (hc_surface_driest_limit (2, -15, rows[i][0], HC_FILM_WALL),
                                    rows[i][1], 0.002);
}

/* From memory: light roofs 0.026 and dark ones 0.052 m²·K/W. */
static void
test_roof_under_sun (void)
{
  g_assert_cmpfloat_with_epsilon (hc_roof_sun_k (0.45, 900), 0.026 * 900 - 3.9, 0.1);
  g_assert_cmpfloat_with_epsilon (hc_roof_sun_k (0.9, 900), 0.052 * 900 - 3.9, 0.1);
  g_assert_cmpfloat (hc_roof_sun_k (0.9, 0), ==, 0);
}

static void
test_frost_takes_water_only_below_the_dew_point (void)
{
  double ratio = hc_moist_air_ratio (0, 0.8, HC_STANDARD_PRESSURE_PA);

  g_assert_cmpfloat (hc_surface_deposit_kg_s (10, ratio, 0, HC_STANDARD_PRESSURE_PA), ==, 0);
  g_assert_cmpfloat (hc_surface_deposit_kg_s (10, ratio, -10, HC_STANDARD_PRESSURE_PA), >, 0);
}

static void
test_a_layer_more_loses_less (void)
{
  g_assert_cmpfloat_with_epsilon (hc_surface_u_with_layer (3.76, 1), 1 / (1 / 3.76 + 1), 1e-12);
  g_assert_cmpfloat (hc_surface_u_with_layer (3.76, -5), ==, 3.76);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/surfaces/studs", test_studs_beside_wool);
  g_test_add_func ("/surfaces/heat", test_heat_through_surfaces);
  g_test_add_func ("/surfaces/floors", test_floors_on_the_ground);
  g_test_add_func ("/surfaces/floor-edge", test_floor_edge);
  g_test_add_func ("/surfaces/window", test_window_sweats);
  g_test_add_func ("/surfaces/driest-limit", test_driest_limit);
  g_test_add_func ("/surfaces/sun", test_roof_under_sun);
  g_test_add_func ("/surfaces/frost", test_frost_takes_water_only_below_the_dew_point);
  g_test_add_func ("/surfaces/a-layer-more", test_a_layer_more_loses_less);
  return g_test_run ();
}
