/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The network of openings against closed forms and worked networks. */
#include "config.h"

#include "air/moist-air.h"
#include "air/network.h"
#include "air/stack.h"

#include <math.h>

#define PER_MILLION(value) (fabs (value) * 1.5e-6)
#define PER_10000(value) (fabs (value) * 1e-4)

static HcAirPath
hole (double area_m2, double z_m, double discharge, double coefficient)
{
  HcAirPath path = {
    .beyond = HC_AIR_OUTSIDE,
    .effective_m2 = area_m2 * discharge,
    .bottom_m = z_m,
    .pressure_coefficient = coefficient,
  };

  return path;
}

static HcAirPath
crack (double coefficient, double exponent, double z_m, double pressure_coefficient)
{
  HcAirPath path = hole (0, z_m, 0, pressure_coefficient);

  path.crack_m3_s = coefficient;
  path.crack_exponent = exponent;
  return path;
}

static HcAirNetwork
network_of (const HcAirPath *paths, guint n_paths, double rho_out, double rho, double wind_m_s)
{
  HcAirNetwork network = {
    .n_spaces = 1,
    .rho_out = rho_out,
    .rho = { rho },
    .wind_m_s = wind_m_s,
    .n_paths = n_paths,
    .paths = paths,
  };

  return network;
}

static HcAirNetwork
cold_night (const HcAirPath *paths, guint n_paths)
{
  return network_of (paths, n_paths, hc_air_density_kg_m3 (-10, HC_STANDARD_PRESSURE_PA),
                     hc_air_density_kg_m3 (5, HC_STANDARD_PRESSURE_PA), 0);
}

static double
settle (const HcAirNetwork *network, double *pressure_pa)
{
  HcAirExchange exchange;

  *pressure_pa = 0;
  g_assert_cmpfloat (hc_air_network_settle (network, pressure_pa), <, 1e-9);
  hc_air_network_get_exchange (network, pressure_pa, &exchange);
  return exchange.into_kg_s[0];
}

/* Computed from the formulas of API RP 500 and ASHRAE 2009, which it equals. */
static void
test_two_openings (void)
{
  static const struct
  {
    double low_m2, low_m, high_m2, high_m, p0, kg_s, m3_s, level_m;
  } rows[] = {
    { 0.10, 0.3, 0.10, 1.8, -0.730142, 0.0706852, 0.0526940, 0.729217 },
    { 0.10, 0.3, 0.05, 1.8, -0.416367, 0.0443382, 0.0330530, 0.286917 },
    { 0.05, 0.3, 0.15, 1.5, -0.974651, 0.0428892, 0.0319728, 1.073879 },
  };

  for (guint i = 0; i < G_N_ELEMENTS (rows); i++)
    {
      HcAirPath paths[] = { hole (rows[i].low_m2, rows[i].low_m, 0.6, 0),
                            hole (rows[i].high_m2, rows[i].high_m, 0.6, 0) };
      HcAirNetwork network = cold_night (paths, 2);
      double height_m = rows[i].high_m - rows[i].low_m;
      double p0;
      double kg_s = settle (&network, &p0);
      double neutral_m = -p0 / hc_stack_pa (network.rho_out, network.rho[0], 1);

      g_assert_cmpfloat_with_epsilon (p0, rows[i].p0, PER_MILLION (rows[i].p0));
      g_assert_cmpfloat_with_epsilon (kg_s, rows[i].kg_s, PER_MILLION (rows[i].kg_s));
      g_assert_cmpfloat_with_epsilon (kg_s / network.rho_out, rows[i].m3_s,
                                      PER_MILLION (rows[i].m3_s));
      g_assert_cmpfloat_with_epsilon (neutral_m - rows[i].low_m, rows[i].level_m, 1e-6);
      g_assert_cmpfloat_with_epsilon (
          hc_stack_neutral_level_m (rows[i].low_m2, rows[i].high_m2, height_m, 5, -10),
          neutral_m - rows[i].low_m, 1e-9);
      g_assert_cmpfloat_with_epsilon (
          hc_stack_flow_kg_s (rows[i].low_m2, rows[i].high_m2, 0.6, height_m, network.rho_out,
                              network.rho[0]), kg_s, PER_MILLION (kg_s));
    }
}

/* Computed from the orifice law. */
static void
test_wind_alone (void)
{
  static const struct
  {
    double first_m2, first_cp, last_m2, last_cp, discharge, wind_m_s, p0, m3_s;
  } rows[] = {
    { 0.5, 0.6, 0.5, -0.4, 0.6, 3, 0.54, 0.636396 },
    { 1.0, 0.7, 2.0, -0.3, 0.61, 4, -0.96, 2.182402 },
  };

  for (guint i = 0; i < G_N_ELEMENTS (rows); i++)
    {
      HcAirPath paths[]
          = { hole (rows[i].first_m2, 1, rows[i].discharge, rows[i].first_cp),
              hole (rows[i].last_m2, 1, rows[i].discharge, rows[i].last_cp) };
      HcAirNetwork network = network_of (paths, 2, 1.2, 1.2, rows[i].wind_m_s);
      double p0;
      double kg_s = settle (&network, &p0);

      g_assert_cmpfloat_with_epsilon (p0, rows[i].p0, PER_MILLION (rows[i].p0));
      g_assert_cmpfloat_with_epsilon (kg_s / 1.2, rows[i].m3_s, PER_MILLION (rows[i].m3_s));
    }
}

/* AIDA balances volumes, not masses: one density, and the stack as one more pressure. */
static double
aida_coefficient (double coefficient, double z_m, double wind_m_s)
{
  double wind_pa = coefficient * 1.29 / 2 * wind_m_s * wind_m_s;
  double stack_pa = -3455 * z_m * (1.0 / 263 - 1.0 / 278);

  return (wind_pa + stack_pa) / (1.29 / 2);
}

/* Published inputs: AIDA, Liddament 1996; the answers are computed. */
static void
test_leakage_by_the_power_law (void)
{
  static const double rows[][3] = { { 0, 0.0034699, -1.01621 }, { 3, 0.0090153, -0.026905 } };

  for (guint i = 0; i < G_N_ELEMENTS (rows); i++)
    {
      double wind_m_s = rows[i][0];
      HcAirPath paths[] = { crack (0.002, 0.65, 0, aida_coefficient (0.6, 0.3, wind_m_s)),
                            crack (0.002, 0.65, 0, aida_coefficient (-0.3, 0.3, wind_m_s)),
                            crack (0.003, 0.60, 0, aida_coefficient (0.6, 2, wind_m_s)),
                            crack (0.003, 0.60, 0, aida_coefficient (-0.3, 2, wind_m_s)) };
      HcAirNetwork network = network_of (paths, 4, 1.29, 1.29, 1);
      double p0;
      double kg_s = settle (&network, &p0);

      g_assert_cmpfloat_with_epsilon (p0, rows[i][2], PER_10000 (rows[i][2]));
      g_assert_cmpfloat_with_epsilon (kg_s / 1.29, rows[i][1], PER_10000 (rows[i][1]));
    }
}

/* Published inputs: a course problem after ASHRAE, chapter 16; the answers are computed. */
static void
test_chimney (void)
{
  static const double rows[][5] = { { 0, -4.4492, 0.018991, 0.018991, 0.037982 },
                                    { 5, -10.4955, 0.044905, 0.009287, 0.054191 } };

  for (guint i = 0; i < G_N_ELEMENTS (rows); i++)
    {
      HcAirPath paths[] = { crack (20 / 3600.0, 0.64, 0, 0.4), crack (20 / 3600.0, 0.64, 0, -0.55),
                            crack (50 / 3600.0, 0.5, 8 * 9.8 / 9.80665, -0.7) };
      HcAirNetwork network = network_of (paths, 3, 1.315, 1.191, rows[i][0]);
      double p0;
      HcAirFlow north;
      HcAirFlow south;
      HcAirFlow chimney;

      settle (&network, &p0);
      north = hc_air_network_get_flow (&network, &paths[0], &p0);
      south = hc_air_network_get_flow (&network, &paths[1], &p0);
      chimney = hc_air_network_get_flow (&network, &paths[2], &p0);
      g_assert_cmpfloat_with_epsilon (p0, rows[i][1], PER_10000 (rows[i][1]));
      g_assert_cmpfloat_with_epsilon (north.in_kg_s, rows[i][2], PER_10000 (rows[i][2]));
      g_assert_cmpfloat_with_epsilon (south.in_kg_s, rows[i][3], PER_10000 (rows[i][3]));
      g_assert_cmpfloat_with_epsilon (chimney.out_kg_s, rows[i][4], PER_10000 (rows[i][4]));
    }
}

/* With densities that differ little, warm for cold turns every sign. */
static void
test_warm_for_cold_turns_every_sign (void)
{
  HcAirPath paths[] = { hole (0.1, 0.3, 0.6, 0), hole (0.05, 1.8, 0.6, 0) };
  HcAirNetwork cold = network_of (paths, 2, 1.2 + 1e-7, 1.2, 0);
  HcAirNetwork warm = network_of (paths, 2, 1.2, 1.2 + 1e-7, 0);
  double big_pa;
  double p0;

  paths[0].effective_m2 *= 1e4;
  paths[1].effective_m2 *= 1e4;
  g_assert_cmpfloat_with_epsilon (settle (&cold, &p0), settle (&warm, &big_pa), 1e-6);
  g_assert_cmpfloat_with_epsilon (p0, -big_pa, 1e-12);
}

static void
test_double_holes_double_flow (void)
{
  HcAirPath paths[] = { hole (0.1, 0.3, 0.6, 0), hole (0.05, 1.8, 0.6, 0) };
  HcAirNetwork network = cold_night (paths, 2);
  double p0;
  double kg_s = settle (&network, &p0);
  double again_pa;

  paths[0].effective_m2 *= 2;
  paths[1].effective_m2 *= 2;
  g_assert_cmpfloat_with_epsilon (settle (&network, &again_pa), 2 * kg_s, 1e-9);
  g_assert_cmpfloat_with_epsilon (again_pa, p0, 1e-9);
}

static HcAirPath
random_path (guint n_spaces)
{
  int space = g_test_rand_int_range (0, (int) n_spaces);
  int beyond = g_test_rand_int_range (-1, (int) n_spaces);
  HcAirPath path = hole (g_test_rand_double_range (1e-5, 1), g_test_rand_double_range (0, 3),
                         g_test_rand_double_range (0.2, 0.65),
                         g_test_rand_double_range (-0.7, 0.7));

  path.space = space;
  path.beyond = beyond == space ? HC_AIR_OUTSIDE : beyond;
  if (g_test_rand_bit ())
    path.height_m = g_test_rand_double_range (0, 2);
  return path;
}

/* Whatever the openings, as much air comes into every space as goes out of it. */
static void
test_mass_balances (void)
{
  for (guint i = 0; i < 10000; i++)
    {
      HcAirPath paths[12];
      guint n_spaces = (guint) g_test_rand_int_range (1, 5);
      HcAirNetwork network = { n_spaces, g_test_rand_double_range (1.1, 1.5), { 0 },
                               g_test_rand_bit () ? g_test_rand_double_range (0, 20) : 0,
                               (guint) g_test_rand_int_range (1, 13), paths };
      double pressure_pa[HC_AIR_MOST_SPACES] = { 0 };

      for (guint path = 0; path < network.n_paths; path++)
        paths[path] = random_path (n_spaces);
      for (guint space = 0; space < n_spaces; space++)
        network.rho[space] = g_test_rand_double_range (1.1, 1.5);
      g_assert_cmpfloat (hc_air_network_settle (&network, pressure_pa), <, 1e-9);
    }
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/network/two-openings", test_two_openings);
  g_test_add_func ("/network/wind-alone", test_wind_alone);
  g_test_add_func ("/network/power-law", test_leakage_by_the_power_law);
  g_test_add_func ("/network/chimney", test_chimney);
  g_test_add_func ("/network/warm-for-cold", test_warm_for_cold_turns_every_sign);
  g_test_add_func ("/network/double-holes", test_double_holes_double_flow);
  g_test_add_func ("/network/mass-balances", test_mass_balances);
  return g_test_run ();
}
