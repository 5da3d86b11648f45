/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Prints random states of the air and what Hencote makes of them, for
 * against-psychrolib.js to compute once more. */
#include "config.h"

#include "air/moist-air.h"

#define N_POINTS 10000
#define COLDEST_C -40
#define HOTTEST_C 45
#define SEED 66

static void
print_point (GRand *random)
{
  double t_c = g_rand_double_range (random, COLDEST_C, HOTTEST_C);
  double humidity = g_rand_double_range (random, 0.02, 1);
  double pressure_pa = g_rand_double_range (random, 70000, 105000);
  double ratio = hc_moist_air_ratio (t_c, humidity, pressure_pa);
  double numbers[] = {
    t_c,
    humidity,
    pressure_pa,
    hc_saturation_pa (t_c),
    ratio,
    hc_moist_air_dew_point_c (ratio, pressure_pa),
    hc_moist_air_wet_bulb_c (t_c, ratio, pressure_pa),
    hc_moist_air_enthalpy_j_kg (t_c, ratio),
    hc_moist_air_volume_m3_kg (t_c, ratio, pressure_pa),
    hc_moist_air_density_kg_m3 (t_c, ratio, pressure_pa),
  };
  char text[G_ASCII_DTOSTR_BUF_SIZE];

  for (guint i = 0; i < G_N_ELEMENTS (numbers); i++)
    g_print ("%s%c", g_ascii_dtostr (text, sizeof text, numbers[i]),
             i + 1 < G_N_ELEMENTS (numbers) ? ' ' : '\n');
}

int
main (void)
{
  g_autoptr (GRand) random = g_rand_new_with_seed (SEED);

  for (guint i = 0; i < N_POINTS; i++)
    print_point (random);
  return 0;
}
