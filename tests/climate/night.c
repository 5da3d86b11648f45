/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The coldest night of the demo and of ready houses. */
#include "config.h"

#include "climate/hot-day.h"
#include "climate/night-chart.h"
#include "files/read.h"

#include <math.h>

typedef struct
{
  HcBook *book;
  HcPlan *plan;
  HcFlock *flock;
  HcHouse *house;
  HcHouseAirAsk ask;
} Fixture;

static HcPlan *
read_demo (void)
{
  g_autoptr (GError) error = NULL;
  g_autoptr (HcPlanFile) file = NULL;
  g_autofree char *text = NULL;
  gsize length;

  g_assert_true (g_file_get_contents (DEMO_PLAN, &text, &length, NULL));
  file = hc_plan_file_read (text, length, &error);
  g_assert_no_error (error);
  return hc_plan_ref (file->plan);
}

static void
set_up (Fixture *fixture, gconstpointer user_data)
{
  g_autoptr (GError) error = NULL;

  fixture->book = hc_book_load_default (&error);
  g_assert_no_error (error);
  fixture->plan = read_demo ();
  fixture->flock = hc_flock_on (fixture->plan, fixture->book, hc_plan_get_day (fixture->plan));
  fixture->house = hc_house_new (hc_plan_get_layout (fixture->plan), NULL);
  hc_house_air_ask_init (&fixture->ask, fixture->house, fixture->flock,
                         hc_plan_get_site (fixture->plan));
}

static void
tear_down (Fixture *fixture, gconstpointer user_data)
{
  hc_house_unref (fixture->house);
  hc_flock_unref (fixture->flock);
  hc_plan_unref (fixture->plan);
  hc_book_unref (fixture->book);
}

static void
settle_with_vents (Fixture *fixture, double open, HcNight *night)
{
  g_autoptr (HcHouseAir) house = hc_house_air_new (&fixture->ask);

  hc_house_air_open_vents (house, open);
  hc_night_settle (house, &fixture->ask, NULL, night);
}

static guint
all_faults (const HcNight *night)
{
  guint faults = 0;

  for (guint i = 0; i < night->n_spaces; i++)
    if (night->spaces[i].birds > 0)
      faults |= night->spaces[i].faults;
  return faults;
}

/* With shut vents the demo house is damp; as it is planned it is not. */
static void
test_shut_vents_are_damp (Fixture *fixture, gconstpointer user_data)
{
  HcNight shut;
  HcNight planned;

  settle_with_vents (fixture, 0, &shut);
  hc_night_work_out (&fixture->ask, &planned);
  g_assert_cmpuint (all_faults (&shut) & HC_NIGHT_DAMP_AIR, !=, 0);
  g_assert_cmpuint (all_faults (&shut) & HC_NIGHT_SWEATING, !=, 0);
  g_assert_cmpuint (all_faults (&planned), ==, 0);
}

static void
test_advised_opening_mends (Fixture *fixture, gconstpointer user_data)
{
  HcNight shut;
  HcNight advised;
  double open;

  settle_with_vents (fixture, 0, &shut);
  g_assert_cmpint (hc_night_advise (&fixture->ask, &shut, &open), ==, HC_VENT_ADVICE_OPEN);
  g_assert_cmpfloat (open, >, 0);
  settle_with_vents (fixture, open, &advised);
  g_assert_cmpuint (advised.spaces[advised.worst].faults & ~HC_NIGHT_OPEN_WATER, ==, 0);
}

/* Damp and cold are told apart: what vents do to the one they do not do to the other. */
static void
test_plain_cold_is_told_beside (Fixture *fixture, gconstpointer user_data)
{
  HcNight mild;
  HcNight bitter;

  fixture->ask.weather.t_c = 6;
  hc_night_work_out (&fixture->ask, &mild);
  fixture->ask.weather.t_c = -30;
  hc_night_work_out (&fixture->ask, &bitter);
  g_assert_cmpint (mild.spaces[mild.worst].cold, ==, HC_COLD_NONE);
  g_assert_cmpint (bitter.spaces[0].cold, ==, HC_COLD_SEVERE);
}

static void
test_ranges_hold_the_figure (Fixture *fixture, gconstpointer user_data)
{
  HcNight night;

  hc_night_work_out (&fixture->ask, &night);
  for (guint i = 0; i < night.n_spaces; i++)
    {
      const HcNightSpace *space = &night.spaces[i];

      g_assert_cmpfloat (space->t_c.low, <=, space->air.t_c);
      g_assert_cmpfloat (space->t_c.high, >=, space->air.t_c);
      g_assert_cmpfloat (space->humidity.low, <=, space->air.humidity);
      g_assert_cmpfloat (space->humidity.high, <=, 1);
      g_assert_cmpfloat (space->co2_ppm.high, >, space->co2_ppm.low);
    }
}

static void
test_more_birds_are_warmer (Fixture *fixture, gconstpointer user_data)
{
  g_autoptr (HcFlock) many
      = hc_flock_scaled (fixture->flock, 4 * hc_flock_get_total (fixture->flock));
  HcNight few_night;
  HcNight many_night;

  hc_night_work_out (&fixture->ask, &few_night);
  fixture->ask.flock = many;
  hc_night_work_out (&fixture->ask, &many_night);
  g_assert_cmpfloat (many_night.spaces[0].air.t_c, >, few_night.spaces[0].air.t_c);
  g_assert_cmpfloat (many_night.spaces[0].air.co2_ppm, >, few_night.spaces[0].air.co2_ppm);
}

static void
test_absurd_weather_is_told (Fixture *fixture, gconstpointer user_data)
{
  static const double askers[] = { -90, 1.3, 130, NAN, -1, 1e9 };

  for (guint i = 0; i < G_N_ELEMENTS (askers); i++)
    {
      HcNight night;

      fixture->ask.weather = (HcWeather){ askers[i], askers[i], askers[i], FALSE };
      hc_night_work_out (&fixture->ask, &night);
      g_assert_true (isfinite (night.spaces[0].air.t_c));
      g_assert_true (isfinite (night.spaces[0].humidity.high));
      g_assert_cmpuint (night.air_faults, !=, 0);
    }
}

static void
test_chart (Fixture *fixture, gconstpointer user_data)
{
  g_autoptr (GArray) points = hc_night_chart (&fixture->ask, -20, 10, 8);
  const HcNightPoint *first = &g_array_index (points, HcNightPoint, 0);
  const HcNightPoint *last;

  g_assert_cmpuint (points->len, ==, 64);
  last = &g_array_index (points, HcNightPoint, 63);
  g_assert_cmpfloat (first->outside_c, ==, -20);
  g_assert_cmpfloat (first->open, ==, 0);
  g_assert_cmpfloat (last->outside_c, ==, 10);
  g_assert_cmpfloat (last->open, ==, 1);
  g_assert_cmpint (first->cold, >=, last->cold);
}

/* Field anchor, published: uninsulated roofs made houses of Auburn 4 K hotter. */
static void
test_sun_on_the_roof_heats (Fixture *fixture, gconstpointer user_data)
{
  HcSiteValues place = *fixture->ask.site;
  HcHotDay hot;

  place.hottest_day_c = 35;
  fixture->ask.site = &place;
  hc_hot_day_work_out (&fixture->ask, &hot);
  g_assert_cmpfloat (hot.above_outside_k, >, 0);
  g_assert_cmpfloat (hot.t_c, >, 35);
  g_assert_cmpint (hot.risk, >=, HC_HEAT_STRESS);
}

static void
test_no_roof_no_night (void)
{
  g_autoptr (HcBook) book = hc_book_load_default (NULL);
  g_autoptr (HcPlan) plan = hc_plan_new_empty ("u", "t");
  g_autoptr (HcFlock) flock = hc_flock_on (plan, book, hc_plan_get_day (plan));
  g_autoptr (HcHouse) house = hc_house_new (hc_plan_get_layout (plan), NULL);
  HcHouseAirAsk ask;
  HcNight night;
  HcHotDay hot;

  hc_house_air_ask_init (&ask, house, flock, hc_plan_get_site (plan));
  hc_night_work_out (&ask, &night);
  hc_hot_day_work_out (&ask, &hot);
  g_assert_cmpuint (night.n_spaces, ==, 0);
  g_assert_cmpuint (hot.n_spaces, ==, 0);
}

/* Indicative bands; a small comb is one better, a large one worse. */
static void
test_combs (Fixture *fixture, gconstpointer user_data)
{
  g_assert_cmpint (hc_cold_risk (fixture->book, 1, 0, HC_COMB_LARGE), ==, HC_COLD_NONE);
  g_assert_cmpint (hc_cold_risk (fixture->book, -8, 0, HC_COMB_SINGLE), ==, HC_COLD_MODERATE);
  g_assert_cmpint (hc_cold_risk (fixture->book, -8, 0, HC_COMB_SMALL), ==, HC_COLD_LOW);
  g_assert_cmpint (hc_cold_risk (fixture->book, -8, 0, HC_COMB_LARGE), ==, HC_COLD_HIGH);
  g_assert_cmpint (hc_cold_risk (fixture->book, -8, 5, HC_COMB_SINGLE), >, HC_COLD_MODERATE);
  g_assert_cmpint (hc_cold_risk (fixture->book, -40, 0, HC_COMB_NONE), ==, HC_COLD_NONE);
}

#define TEST(path, name) g_test_add ("/night/" path, Fixture, NULL, set_up, name, tear_down)

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  TEST ("shut-vents", test_shut_vents_are_damp);
  TEST ("advised-opening", test_advised_opening_mends);
  TEST ("plain-cold", test_plain_cold_is_told_beside);
  TEST ("ranges", test_ranges_hold_the_figure);
  TEST ("more-birds", test_more_birds_are_warmer);
  TEST ("absurd-weather", test_absurd_weather_is_told);
  TEST ("chart", test_chart);
  TEST ("sun", test_sun_on_the_roof_heats);
  TEST ("combs", test_combs);
  g_test_add_func ("/night/no-roof", test_no_roof_no_night);
  return g_test_run ();
}
