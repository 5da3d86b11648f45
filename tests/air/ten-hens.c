/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The whole balance against nights worked out elsewhere with the same equations. */
#include "config.h"

#include "air/moist-air.h"
#include "air/open-water.h"
#include "small-house.h"

#include <math.h>

#define G_H 3.6e6

/* Columns of the answers. */
enum
{
  T_C,
  FRESH_M3_H,
  FRESH_KG_S,
  RATIO_G_KG,
  HUMIDITY_PERCENT,
  DEW_POINT_C,
  WALL_C,
  ROOF_C,
  WARMING_W,
  LOSS_W,
  VENT_W,
  LITTER_G_H,
  DRINKER_G_H,
  FROST_G_H,
  CO2_PPM,
  AMMONIA_PPM,
  N_ANSWERS
};

typedef struct
{
  const char *name;
  gboolean litter_with_birds;
  gboolean drinker;
  double vent_m2;
  double wind_m_s;
  double outside_c;
  gboolean insulated;
  double answers[N_ANSWERS];
} Row;

/* Regressions, not published: ten hens of 2 kg, out of an independent program. */
static const Row rows[] = {
  { "S1", .litter_with_birds = TRUE, .outside_c = 0, .insulated = TRUE,
    .answers = { 2.565, 38.58, 0.013781, 4.4810, 98.62, 2.369, 2.392, 2.462,
                 87.44, 51.69, 35.75, 0.00, 0.00, 0.00, 1076, 2.15 } },
  { "S2", .litter_with_birds = TRUE, .outside_c = 5, .insulated = TRUE,
    .answers = { 7.402, 37.04, 0.012968, 5.7970, 90.85, 6.007, 7.240, 7.306,
                 79.98, 48.40, 31.58, 0.00, 0.00, 0.00, 1055, 2.28 } },
  { "S3", .outside_c = 0, .insulated = TRUE,
    .answers = { 3.191, 42.96, 0.015346, 3.5945, 75.77, -0.587, 2.977, 3.064,
                 113.86, 64.32, 49.54, 3.98, 0.00, 0.00, 1004, 1.94 } },
  { "S4", .outside_c = -15, .insulated = TRUE,
    .answers = { -11.221, 47.92, 0.018177, 1.2504, 87.22, -12.738, -11.475, -11.372,
                 145.39, 76.17, 69.22, 0.64, 0.00, 0.00, 1056, 1.65 } },
  { "S5", .outside_c = -15, .insulated = FALSE,
    .answers = { -13.458, 30.81, 0.011687, 1.1710, 100.00, -13.458, -14.211, -14.111,
                 150.36, 132.20, 18.16, 0.00, 0.00, 12.93, 1437, 2.54 } },
  { "S7", .drinker = TRUE, .outside_c = -15, .insulated = TRUE,
    .answers = { -11.252, 47.73, 0.018104, 1.2866, 89.99, -12.423, -11.503, -11.401,
                 143.92, 75.55, 68.37, 0.50, 2.39, 0.00, 1059, 1.65 } },
  { "S8", .vent_m2 = 0.01, .outside_c = -15, .insulated = TRUE,
    .answers = { -9.246, 11.76, 0.004460, 1.7101, 100.00, -9.246, -9.633, -9.477,
                 141.81, 115.96, 25.86, 0.00, 0.00, 13.59, 2951, 6.76 } },
  { "S9", .wind_m_s = 2, .outside_c = -15, .insulated = TRUE,
    .answers = { -13.066, 148.75, 0.056425, 0.9550, 78.72, -15.671, -13.196, -13.143,
                 148.96, 38.99, 109.97, 0.90, 0.00, 0.00, 630, 0.53 } },
  { "S11", .outside_c = -5, .insulated = FALSE,
    .answers = { -3.644, 28.38, 0.010344, 2.7352, 98.40, -3.835, -4.307, -4.219,
                 130.34, 116.18, 14.16, 0.15, 0.00, 0.00, 1394, 2.86 } },
  { "S12", .outside_c = -5, .insulated = TRUE,
    .answers = { -1.601, 44.69, 0.016289, 2.5037, 75.90, -4.870, -1.829, -1.737,
                 124.42, 68.51, 55.91, 2.76, 0.00, 0.00, 1022, 1.83 } },
  { "S13", .outside_c = -30, .insulated = TRUE,
    .answers = { -25.757, 52.18, 0.021038, 0.3603, 100.00, -25.757, -26.043, -25.927,
                 175.33, 85.51, 89.82, 0.00, 0.00, 14.86, 1109, 1.43 } },
};

static void
set_up_house (SmallHouse *house, HcBook *book, const Row *row)
{
  small_house_init (house, book, row->outside_c, row->insulated);
  if (row->litter_with_birds)
    small_house_take_litter_with_birds (house);
  if (row->vent_m2 > 0)
    small_house_set_vents (house, row->vent_m2);
  if (row->drinker)
    {
      HcAirWet drinker = { .t_c = 5,
                           .kg_s_pa = hc_open_water_kg_s_pa (0.05, HC_STILL_WATER),
                           .most_kg_s = G_MAXDOUBLE };

      house->wets[house->house.n_wets++] = drinker;
    }
  house->house.outside.wind_m_s = row->wind_m_s;
  house->paths[0].pressure_coefficient = 0.6;
  house->paths[1].pressure_coefficient = -0.3;
}

static void
check (const char *name, guint column, double answer, double expected, double within)
{
  if (!(fabs (answer - expected) <= within))
    g_error ("%s, column %u: %g is not %g", name, column, answer, expected);
}

static void
check_answers (const Row *row, const HcAirHouse *house, const HcAirState *state)
{
  const HcAirSpaceState *space = &state->spaces[0];
  double ratio = hc_moist_air_ratio (house->outside.t_c, 0.8, HC_STANDARD_PRESSURE_PA);
  double volume = hc_moist_air_volume_m3_kg (house->outside.t_c, ratio, HC_STANDARD_PRESSURE_PA);
  double drying_g_h = space->drying_kg_s * G_H;
  const double *expected = row->answers;
  const struct
  {
    double answer, within;
  } answers[] = {
    [T_C] = { space->t_c, 0.005 },
    [FRESH_M3_H] = { space->fresh_kg_s * volume * 3600, expected[FRESH_M3_H] * 1e-3 },
    [FRESH_KG_S] = { space->fresh_kg_s, expected[FRESH_KG_S] * 1e-3 },
    [RATIO_G_KG] = { space->ratio * 1000, expected[RATIO_G_KG] * 1e-3 },
    [HUMIDITY_PERCENT] = { space->humidity * 100, 0.1 },
    [DEW_POINT_C] = { space->dew_point_c, 0.01 },
    [WALL_C] = { hc_air_state_get_surface_c (state, house, &house->surfaces[0]), 0.006 },
    [ROOF_C] = { hc_air_state_get_surface_c (state, house, &house->surfaces[1]), 0.006 },
    [WARMING_W] = { space->source.heat_w - space->latent_w, 0.1 },
    [LOSS_W] = { space->loss_w, 0.4 },
    [VENT_W] = { space->vent_w, 0.4 },
    [LITTER_G_H] = { drying_g_h, 0.02 },
    [DRINKER_G_H] = { drying_g_h, 0.02 },
    [FROST_G_H] = { space->frost_kg_s * G_H, 0.1 },
    [CO2_PPM] = { space->co2_ppm, expected[CO2_PPM] * 2e-3 },
    [AMMONIA_PPM] = { space->ammonia_ppm, 0.02 },
  };
  double both_g_h = expected[LITTER_G_H] + expected[DRINKER_G_H];

  for (guint i = 0; i < N_ANSWERS; i++)
    {
      gboolean drying = i == LITTER_G_H || i == DRINKER_G_H;

      check (row->name, i, answers[i].answer, drying ? both_g_h : expected[i], answers[i].within);
    }
}

static void
test_night (gconstpointer user_data)
{
  const Row *row = user_data;
  g_autoptr (GError) error = NULL;
  g_autoptr (HcBook) book = hc_book_load_default (&error);
  SmallHouse house;
  HcAirStates states;

  g_assert_no_error (error);
  set_up_house (&house, book, row);
  hc_air_settle (&house.house, &states);
  g_assert_cmpuint (states.faults, ==, 0);
  g_assert_cmpuint (states.n_states, ==, 1);
  g_assert_true (states.states[0].stable);
  g_assert_cmpfloat (fabs (states.states[0].spaces[0].residual_w), <, 1e-6);
  g_assert_cmpfloat (fabs (states.states[0].spaces[0].moisture_residual_kg_s), <, 1e-12);
  check_answers (row, &house.house, &states.states[0]);
}

/* Regression: a pad of 60 W warms the insulated house by 1.2 K. */
static void
test_heat_pad (void)
{
  g_autoptr (HcBook) book = hc_book_load_default (NULL);
  SmallHouse house;
  HcAirStates without;
  HcAirStates with;

  small_house_init (&house, book, -15, TRUE);
  hc_air_settle (&house.house, &without);
  house.house.spaces[0].power_w = 60;
  hc_air_settle (&house.house, &with);
  g_assert_cmpfloat_with_epsilon (with.states[0].spaces[0].t_c - without.states[0].spaces[0].t_c,
                                  1.2, 0.05);
  g_assert_cmpfloat (with.states[0].spaces[0].humidity, <, without.states[0].spaces[0].humidity);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  for (guint i = 0; i < G_N_ELEMENTS (rows); i++)
    {
      g_autofree char *path = g_strconcat ("/ten-hens/", rows[i].name, NULL);

      g_test_add_data_func (path, &rows[i], test_night);
    }
  g_test_add_func ("/ten-hens/heat-pad", test_heat_pad);
  return g_test_run ();
}
