/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Heat and water of birds against worked values and outside measurements. */
#include "config.h"

#include "air/moist-air.h"
#include "flock/bird-heat.h"
#include "flock/heat-stress.h"

#include <math.h>

typedef struct
{
  HcBook *book;
  HcBirdAir air;
} Fixture;

/* From memory: CIGR's layers in cages, whose sensible heat falls with t⁶. */
static const HcHeatLaw cages = { .w_kg = 6.28, .power = 0.75, .egg_w_kg = 25 };

static void
set_up (Fixture *fixture, gconstpointer user_data)
{
  g_autoptr (GError) error = NULL;

  fixture->book = hc_book_load_default (&error);
  g_assert_no_error (error);
  hc_bird_air_init (&fixture->air, fixture->book);
}

static void
tear_down (Fixture *fixture, gconstpointer user_data)
{
  hc_book_unref (fixture->book);
}

/* Computed from CIGR 2002, equations 18, 26 and 35: a hen of 2 kg on a floor. */
static void
test_hen_on_a_floor (Fixture *fixture, gconstpointer user_data)
{
  static const double rows[][3]
      = { { 20, 12.686, 6.901 }, { 10, 15.223, 9.439 }, { 30, 10.149, 3.755 }, { 0, 17.761, 11.367 } };
  const HcHeatLaw *law = hc_book_get_heat_law (fixture->book, "hen_floor");
  double at_20_w = hc_bird_heat_at_20_w (law, 2, 0.05);

  for (guint i = 0; i < G_N_ELEMENTS (rows); i++)
    {
      double total_w = at_20_w * hc_bird_heat_share (&fixture->air, rows[i][0]);
      double warming_w
          = at_20_w * hc_bird_heat_warming_share (&fixture->air, law, rows[i][0]);

      g_assert_cmpfloat_with_epsilon (total_w, rows[i][1], 1e-3);
      g_assert_cmpfloat_with_epsilon (warming_w, rows[i][2], 1e-3);
      if (i == 0)
        g_assert_cmpfloat_with_epsilon ((total_w - warming_w) / 0.680, 8.507, 1e-3);
    }
}

/* Computed from CIGR's cages (from memory). */
static void
test_hen_in_a_cage (Fixture *fixture, gconstpointer user_data)
{
  double total_w = hc_bird_heat_at_20_w (&cages, 2, 0.05);
  double warming_w = total_w * (0.67 - 9.8e-8 * pow (20, 6) / 1000);

  g_assert_cmpfloat_with_epsilon (total_w, 11.812, 1e-3);
  g_assert_cmpfloat_with_epsilon (warming_w, 7.840, 1e-3);
  g_assert_cmpfloat_with_epsilon (total_w - warming_w, 3.972, 1e-3);
}

/* Our own line through published anchors. */
static void
test_breath (Fixture *fixture, gconstpointer user_data)
{
  static const double rows[][2]
      = { { -10, 1.75 }, { 10, 1.75 }, { 20, 2.85 }, { 28.5, 5.35 }, { 35, 9.10 } };

  for (guint i = 0; i < G_N_ELEMENTS (rows); i++)
    g_assert_cmpfloat_with_epsilon (hc_bird_breath_g_h_kg (&fixture->air, rows[i][0]), rows[i][1],
                                    1e-6);
}

/* Computed: 10 hens, air outside 420 ppm, 3000 ppm allowed. */
static void
test_air_for_carbon_dioxide (Fixture *fixture, gconstpointer user_data)
{
  const HcHeatLaw *law = hc_book_get_heat_law (fixture->book, "hen_floor");
  double kw = 10 * hc_bird_heat_at_20_w (law, 2, 0.05) / 1000;
  double m3_h = fixture->air.co2_m3_h_kw * kw;

  g_assert_cmpfloat_with_epsilon (kw, 0.126862, 1.3e-5);
  g_assert_cmpfloat_with_epsilon (m3_h, 0.023469, 2.4e-6);
  g_assert_cmpfloat_with_epsilon (1e6 * m3_h / (3000 - 420), 9.0967, 9.1e-4);
}

/* Published: hens of an aviary, 1.55 kg, give 74 g a day. */
static void
test_measured_carbon_dioxide (Fixture *fixture, gconstpointer user_data)
{
  double kw = hc_bird_heat_at_20_w (&cages, 1.55, 0.05)
              * hc_bird_heat_share (&fixture->air, 21) / 1000;
  double grams = fixture->air.co2_m3_h_kw * kw * 24 * 44.01 / 0.02414;

  g_assert_cmpfloat_with_epsilon (grams, 74, 7.4);
}

/* Published: Li, Ito and Yamamoto 1991: 18.9 kJ/(kg^0.75·h) in the dark, a third below
 * the light. The share of the day is computed. */
static void
test_night_share (Fixture *fixture, gconstpointer user_data)
{
  double dark = 18.9 / 3.6;
  double light = dark / 0.67;

  g_assert_cmpfloat_with_epsilon (dark * 24 / (14 * light + 10 * dark), 0.7768, 1e-4);
  g_assert_cmpfloat_with_epsilon (dark * 24 / (10 * light + 14 * dark), 0.8297, 1e-4);
  g_assert_cmpfloat (fixture->air.night_share, >, 0.7768);
  g_assert_cmpfloat (fixture->air.night_share, <, 0.8297);
}

static double
wet_bulb (double t_c, double humidity)
{
  double pressure_pa = HC_STANDARD_PRESSURE_PA;

  return hc_moist_air_wet_bulb_c (t_c, hc_moist_air_ratio (t_c, humidity, pressure_pa),
                                  pressure_pa);
}

static void
test_heat_indices (Fixture *fixture, gconstpointer user_data)
{
  static const double rows[][2] = { { 0.2, 36.604 }, { 0.7, 34.038 }, { 1.2, 32.991 } };

  /* Published: Kang 2020; the second values are computed. */
  g_assert_cmpfloat_with_epsilon (hc_heat_index_layers_c (27, wet_bulb (27, 0.56)), 24.2, 0.3);
  g_assert_cmpfloat_with_epsilon (hc_heat_index_layers_c (36, wet_bulb (36, 0.45)), 32.1, 0.3);
  g_assert_cmpfloat_with_epsilon (hc_heat_index_layers_c (27, wet_bulb (27, 0.56)), 24.420, 0.005);
  /* Published formulas. */
  g_assert_cmpfloat_with_epsilon (hc_heat_index_livestock (28, 0.9), 81.04, 0.01);
  g_assert_cmpfloat_with_epsilon (hc_heat_index_turkeys_c (30, 20), 27.4, 1e-9);
  for (guint i = 0; i < G_N_ELEMENTS (rows); i++)
    g_assert_cmpfloat_with_epsilon (hc_heat_index_broilers_c (35, 23.943, rows[i][0]), rows[i][1],
                                    0.01);
}

/* Published: 0 °F and 15 mph chill like -19 °F. */
static void
test_wind_chill (Fixture *fixture, gconstpointer user_data)
{
  g_assert_cmpfloat_with_epsilon (hc_wind_chill_c (-32 / 1.8, 15 * 1.609344) * 1.8 + 32, -19, 0.5);
  g_assert_cmpfloat (hc_wind_chill_c (-10, 0), ==, -10);
}

/* Green and Xin 2009 measured no warming of the air at 35 °C. */
static void
test_hot_birds_warm_nothing (Fixture *fixture, gconstpointer user_data)
{
  const HcHeatLaw *law = hc_book_get_heat_law (fixture->book, "hen_floor");

  g_assert_cmpfloat (hc_bird_heat_warming_share (&fixture->air, law, 35), ==, 0);
  g_assert_cmpfloat (hc_bird_heat_share (&fixture->air, -300), ==, fixture->air.heat_most);
}

static void
test_frozen_litter_gives_little_ammonia (Fixture *fixture, gconstpointer user_data)
{
  g_assert_cmpfloat_with_epsilon (hc_bird_ammonia_share (&fixture->air, 20), 1, 1e-12);
  g_assert_cmpfloat (hc_bird_ammonia_share (&fixture->air, -40), ==, fixture->air.ammonia_least);
}

/* Every kind of bird has its law. */
static void
test_every_kind_gives_heat (Fixture *fixture, gconstpointer user_data)
{
  for (guint i = 0; i < hc_book_get_n_kinds (fixture->book); i++)
    {
      const HcKind *kind = hc_book_get_kind_at (fixture->book, i);
      guint n_laws = 0;
      HcBody hen;
      HcBody chick;

      hc_body_init (&hen, kind, TRUE, HC_WEEK_GROWN, 0);
      hc_body_init (&chick, kind, TRUE, 1, 0);
      g_assert_cmpfloat (hc_bird_heat_of_body_w (fixture->book, &chick), >, 0.1);
      g_assert_cmpfloat (hc_bird_heat_of_body_w (fixture->book, &hen), >,
                         hc_bird_heat_of_body_w (fixture->book, &chick));
      for (guint law = 0; law < hc_book_get_n_heat_laws (fixture->book); law++)
        n_laws += hc_book_get_heat_law_at (fixture->book, law)->kinds >> i & 1;
      g_assert_cmpuint (n_laws, ==, 1);
    }
}

#define TEST(path, name) \
  g_test_add ("/bird-heat/" path, Fixture, NULL, set_up, name, tear_down)

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  TEST ("hen-on-a-floor", test_hen_on_a_floor);
  TEST ("hen-in-a-cage", test_hen_in_a_cage);
  TEST ("breath", test_breath);
  TEST ("air-for-carbon-dioxide", test_air_for_carbon_dioxide);
  TEST ("measured-carbon-dioxide", test_measured_carbon_dioxide);
  TEST ("night-share", test_night_share);
  TEST ("heat-indices", test_heat_indices);
  TEST ("wind-chill", test_wind_chill);
  TEST ("hot-birds", test_hot_birds_warm_nothing);
  TEST ("frozen-litter", test_frozen_litter_gives_little_ammonia);
  TEST ("every-kind", test_every_kind_gives_heat);
  return g_test_run ();
}
