/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Worked examples of mixing, moisture and drying, each from an outside page. */
#include "config.h"

#include "air/moist-air.h"

#include <math.h>

#define SEA HC_STANDARD_PRESSURE_PA
#define POUND_KG 0.45359237
#define GALLON_KG 3.785
#define CFM_M3_S 0.000471947

typedef struct
{
  double t_c;
  double ratio;
  double dry_kg_s;
} Stream;

static Stream
mix (Stream a, Stream b)
{
  Stream both = { 0 };
  double heat = a.dry_kg_s * hc_moist_air_enthalpy_j_kg (a.t_c, a.ratio)
                + b.dry_kg_s * hc_moist_air_enthalpy_j_kg (b.t_c, b.ratio);

  both.dry_kg_s = a.dry_kg_s + b.dry_kg_s;
  both.ratio = (a.dry_kg_s * a.ratio + b.dry_kg_s * b.ratio) / both.dry_kg_s;
  both.t_c = hc_moist_air_from_enthalpy_c (heat / both.dry_kg_s, both.ratio);
  return both;
}

static Stream
stream (double m3_s, double t_c, double ratio, double pressure_pa)
{
  Stream made = { t_c, ratio, m3_s / hc_moist_air_volume_m3_kg (t_c, ratio, pressure_pa) };

  return made;
}

/* Published: ASHRAE's mixing problem as worked at chemicalogic.com, which took
 * volumes of dry air; and a regression for the exact answer. */
static void
test_mixing_ashrae (void)
{
  Stream cold = stream (2, 4, hc_moist_air_ratio_from_wet_bulb (4, 2, SEA), SEA);
  Stream warm = stream (6.25, 25, hc_moist_air_ratio (25, 0.5, SEA), SEA);
  Stream both = mix (cold, warm);
  double wet_bulb_c = hc_moist_air_wet_bulb_c (both.t_c, both.ratio, SEA);
  double humidity = hc_moist_air_humidity (both.t_c, both.ratio, SEA);

  g_assert_cmpfloat_with_epsilon (both.t_c, 19.67, 0.1);
  g_assert_cmpfloat_with_epsilon (wet_bulb_c, 14.58, 0.05);
  g_assert_cmpfloat_with_epsilon (humidity, 0.58, 0.01);
  g_assert_cmpfloat_with_epsilon (both.ratio, 0.0083, 1e-4);
  g_assert_cmpfloat_with_epsilon (cold.dry_kg_s, 2.5329, 2.5e-3);
  g_assert_cmpfloat_with_epsilon (warm.dry_kg_s, 7.2840, 7.2e-3);
  g_assert_cmpfloat_with_epsilon (both.t_c, 19.628, 1e-3);
  g_assert_cmpfloat_with_epsilon (wet_bulb_c, 14.562, 1e-3);
  g_assert_cmpfloat_with_epsilon (both.ratio, 0.0082482, 0.0082482e-3);
  g_assert_cmpfloat_with_epsilon (hc_moist_air_enthalpy_j_kg (both.t_c, both.ratio), 40676, 41);
}

/* Published: a mixing problem at 1 bar, physicsforums 242677. */
static void
test_mixing_one_bar (void)
{
  Stream cold = stream (20.0 / 60, 5, hc_moist_air_ratio (5, 0.9, 1e5), 1e5);
  Stream warm = stream (20.0 / 60, 25, hc_moist_air_ratio (25, 0.5, 1e5), 1e5);
  Stream both = mix (cold, warm);

  g_assert_cmpfloat_with_epsilon (hc_moist_air_density_kg_m3 (5, cold.ratio, 1e5), 1.249, 0.001);
  g_assert_cmpfloat_with_epsilon (hc_moist_air_density_kg_m3 (25, warm.ratio, 1e5), 1.162, 0.001);
  g_assert_cmpfloat_with_epsilon (cold.dry_kg_s * cold.ratio * 1e3, 2.0, 0.05);
  g_assert_cmpfloat_with_epsilon (warm.dry_kg_s * warm.ratio * 1e3, 3.8, 0.05);
  g_assert_cmpfloat_with_epsilon (both.ratio, 7.36e-3, 2e-5);
  g_assert_cmpfloat_with_epsilon (both.t_c, 14.659, 0.01);
}

/* Published: Canada Plan Service leaflet 87:06, cold air picking up moisture; and
 * the air one pig of 54 kg needs, whose answer is a regression. */
static void
test_winter_air_picks_up_moisture (void)
{
  double cold = hc_moist_air_ratio (-25, 1, SEA);
  double warm = hc_moist_air_ratio (15, 0.75, SEA);
  double cold_l_kg = hc_moist_air_volume_m3_kg (-25, cold, SEA) * 1e3;
  double kg_h = 0.070 / (0.008 - 0.0004);

  g_assert_cmpfloat_with_epsilon (cold * 1e3, 0.4, 0.05);
  g_assert_cmpfloat_with_epsilon (warm * 1e3, 8, 0.05);
  g_assert_cmpfloat_with_epsilon ((warm - cold) * 1e3, 7.6, 0.05);
  g_assert_cmpfloat_with_epsilon (cold_l_kg, 700, 10);
  g_assert_cmpfloat_with_epsilon (hc_moist_air_volume_m3_kg (15, warm, SEA) * 1e3, 820, 10);
  g_assert_cmpfloat_with_epsilon (kg_h, 9.21, 9.21 * 0.01);
  g_assert_cmpfloat_with_epsilon (0.070 / (warm - cold) / 3600 * 827, 2.13, 2.13 * 0.01);
}

/* Published inputs: a pig barn, japansake.or.jp; the answer is a regression. */
static void
test_air_that_carries_12_gallons (void)
{
  double inside = hc_moist_air_ratio (10, 0.70, SEA);
  double outside = hc_moist_air_ratio ((30 - 32) / 1.8, 0.20, SEA);
  double kg_s = 12 * GALLON_KG / 3600 / (inside - outside);

  g_assert_cmpfloat_with_epsilon (kg_s * 3600 / POUND_KG, 21599, 216);
  g_assert_cmpfloat_with_epsilon (
      kg_s * hc_moist_air_volume_m3_kg (10, inside, SEA) / CFM_M3_S, 4665, 47);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/published/mixing-ashrae", test_mixing_ashrae);
  g_test_add_func ("/published/mixing-one-bar", test_mixing_one_bar);
  g_test_add_func ("/published/winter-air", test_winter_air_picks_up_moisture);
  g_test_add_func ("/published/12-gallons", test_air_that_carries_12_gallons);
  return g_test_run ();
}
