/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Every point of a table computed by psychrolib 1.1.1. */
#include "config.h"

#include "air/moist-air.h"

#include <math.h>

/* Columns of psychro-points.csv. */
enum
{
  T_C,
  HUMIDITY,
  PRESSURE_PA,
  SATURATION_PA,
  VAPOUR_PA,
  RATIO,
  DEW_POINT_C,
  WET_BULB_C,
  ENTHALPY,
  VOLUME,
  DENSITY,
  N_COLUMNS
};

#define PER_MILLION(value) (fabs (value) * 1e-6 + 1e-12)

static void
check_point (const double *row)
{
  double ratio = hc_moist_air_ratio (row[T_C], row[HUMIDITY], row[PRESSURE_PA]);

  g_assert_cmpfloat_with_epsilon (hc_saturation_pa (row[T_C]), row[SATURATION_PA],
                                  PER_MILLION (row[SATURATION_PA]));
  g_assert_cmpfloat_with_epsilon (hc_vapour_from_ratio_pa (ratio, row[PRESSURE_PA]),
                                  row[VAPOUR_PA], PER_MILLION (row[VAPOUR_PA]));
  g_assert_cmpfloat_with_epsilon (ratio, row[RATIO], PER_MILLION (row[RATIO]));
  g_assert_cmpfloat_with_epsilon (hc_moist_air_dew_point_c (ratio, row[PRESSURE_PA]),
                                  row[DEW_POINT_C], 0.001);
  g_assert_cmpfloat_with_epsilon (hc_moist_air_wet_bulb_c (row[T_C], ratio, row[PRESSURE_PA]),
                                  row[WET_BULB_C], 0.002);
  g_assert_cmpfloat_with_epsilon (hc_moist_air_enthalpy_j_kg (row[T_C], ratio), row[ENTHALPY], 1);
  g_assert_cmpfloat_with_epsilon (hc_moist_air_volume_m3_kg (row[T_C], ratio, row[PRESSURE_PA]),
                                  row[VOLUME], PER_MILLION (row[VOLUME]));
  g_assert_cmpfloat_with_epsilon (hc_moist_air_density_kg_m3 (row[T_C], ratio, row[PRESSURE_PA]),
                                  row[DENSITY], PER_MILLION (row[DENSITY]));
}

static void
test_points (void)
{
  g_autofree char *text = NULL;
  g_auto (GStrv) lines = NULL;
  guint n_points = 0;

  g_assert_true (g_file_get_contents (TEST_DATA "/psychro-points.csv", &text, NULL, NULL));
  lines = g_strsplit (text, "\n", -1);
  for (guint i = 1; lines[i] != NULL && *lines[i] != '\0'; i++)
    {
      g_auto (GStrv) cells = g_strsplit (lines[i], ",", -1);
      double row[N_COLUMNS];

      g_assert_cmpuint (g_strv_length (cells), >=, N_COLUMNS);
      for (guint column = 0; column < N_COLUMNS; column++)
        row[column] = g_ascii_strtod (cells[column], NULL);
      check_point (row);
      n_points++;
    }
  g_assert_cmpuint (n_points, ==, 66);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_summary ("Air from -40 to 45 °C as psychrolib 1.1.1 computes it");
  g_test_add_func ("/points/psychrolib", test_points);
  return g_test_run ();
}
