/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * States of random houses: nothing left over, and what must hold for any house. */
#include "config.h"

#include "air/moist-air.h"
#include "air/steady.h"
#include "air/surface.h"

#include <math.h>

#define N_HOUSES 10000
#define MOST_PARTS 12

/* Heat that falls and vapour that rises with warmth, as of animals. */
typedef struct
{
  double heat_w;
  double vapour_kg_s;
} Herd;

typedef struct
{
  Herd herds[HC_AIR_MOST_SPACES];
  HcAirPath paths[MOST_PARTS];
  HcAirSurface surfaces[MOST_PARTS];
  HcAirWet wets[MOST_PARTS];
  HcAirHouse house;
} AnyHouse;

static void
emit (gconstpointer who, double t_c, HcAirSource *source)
{
  const Herd *herd = who;
  double share = CLAMP (1 + 0.02 * (20 - t_c), 0, 2);

  source->vapour_kg_s = herd->vapour_kg_s * (1 + MAX (t_c, 0) / 30);
  source->heat_w = MAX (herd->heat_w * share - HC_LATENT_J_KG * source->vapour_kg_s, 0);
  source->co2_m3_s = 5e-8 * herd->heat_w;
  source->ammonia_kg_s = 1e-9;
}

static int
any_space (guint n_spaces)
{
  return g_test_rand_int_range (0, (int) n_spaces);
}

static int
any_beyond (guint n_spaces, int space)
{
  int beyond = g_test_rand_int_range (-1, (int) n_spaces);

  return beyond == space ? HC_AIR_OUTSIDE : beyond;
}

static void
make_paths (AnyHouse *any, guint n_spaces)
{
  any->house.n_paths = (guint) g_test_rand_int_range ((int) n_spaces, MOST_PARTS);
  for (guint i = 0; i < any->house.n_paths; i++)
    {
      HcAirPath path = {
        .space = i < n_spaces ? (int) i : any_space (n_spaces),
        .effective_m2 = pow (10, g_test_rand_double_range (-4, 0)),
        .bottom_m = g_test_rand_double_range (0, 3),
        .height_m = g_test_rand_bit () ? g_test_rand_double_range (0, 2) : 0,
        .pressure_coefficient = g_test_rand_double_range (-0.7, 0.7),
      };

      path.beyond = i < n_spaces ? HC_AIR_OUTSIDE : any_beyond (n_spaces, path.space);
      path.stir_m3_s = 0.05 * path.effective_m2;
      any->paths[i] = path;
    }
}

static void
make_surfaces (AnyHouse *any, guint n_spaces)
{
  any->house.n_surfaces = (guint) g_test_rand_int_range ((int) n_spaces, MOST_PARTS);
  for (guint i = 0; i < any->house.n_surfaces; i++)
    {
      HcAirSurface surface = {
        .space = i < n_spaces ? (int) i : any_space (n_spaces),
        .area_m2 = g_test_rand_double_range (1, 40),
        .u_w_m2k = g_test_rand_double_range (0.1, 7),
        .film_m2k_w = HC_FILM_WALL,
        .deposition_kg_m2_s = HC_DEPOSITION_KG_M2_S,
        .warmer_k = g_test_rand_bit () ? g_test_rand_double_range (-4, 0) : 0,
      };

      surface.beyond = i < n_spaces ? HC_AIR_OUTSIDE : any_beyond (n_spaces, surface.space);
      if (surface.beyond != HC_AIR_OUTSIDE)
        surface.warmer_k = 0;
      any->surfaces[i] = surface;
    }
}

static void
make_wets (AnyHouse *any, guint n_spaces)
{
  any->house.n_wets = (guint) g_test_rand_int_range (0, MOST_PARTS);
  for (guint i = 0; i < any->house.n_wets; i++)
    {
      HcAirWet wet = {
        .space = any_space (n_spaces),
        .at_air = g_test_rand_bit (),
        .t_c = g_test_rand_double_range (0, 20),
        .kg_s_pa = pow (10, g_test_rand_double_range (-10, -8)),
        .most_kg_s = g_test_rand_bit () ? 1e-6 : G_MAXDOUBLE,
      };

      any->wets[i] = wet;
    }
}

static void
make_any_house (AnyHouse *any, guint n_spaces)
{
  any->house = (HcAirHouse){
    .outside = { g_test_rand_double_range (-40, 40), g_test_rand_double_range (0.1, 1),
                 g_test_rand_double_range (80000, 104000),
                 g_test_rand_bit () ? g_test_rand_double_range (0, 12) : 0, 420 },
    .n_spaces = n_spaces,
    .paths = any->paths,
    .surfaces = any->surfaces,
    .wets = any->wets,
  };
  for (guint i = 0; i < n_spaces; i++)
    {
      HcAirSpace space = { emit, &any->herds[i],
                           g_test_rand_bit () ? g_test_rand_double_range (0, 300) : 0,
                           g_test_rand_double_range (0, 20) };

      any->herds[i].heat_w = pow (10, g_test_rand_double_range (0, 3.5));
      any->herds[i].vapour_kg_s = any->herds[i].heat_w * 5e-8;
      any->house.spaces[i] = space;
    }
  make_paths (any, n_spaces);
  make_surfaces (any, n_spaces);
  make_wets (any, n_spaces);
}

static void
check_state (const HcAirHouse *house, const HcAirState *state)
{
  g_assert_cmpfloat (state->imbalance_kg_s, <, 1e-9);
  for (guint i = 0; i < house->n_spaces; i++)
    {
      const HcAirSpaceState *space = &state->spaces[i];

      g_assert_cmpfloat (fabs (space->residual_w), <, 1e-6);
      g_assert_cmpfloat (fabs (space->moisture_residual_kg_s), <, 1e-12);
      g_assert_cmpfloat (space->humidity, >=, 0);
      g_assert_cmpfloat (space->humidity, <=, 1);
      g_assert_cmpfloat (space->co2_ppm, >=, 420 - 1e-6);
      g_assert_true (isfinite (space->dew_point_c) && isfinite (space->ammonia_ppm));
    }
}

static void
test_nothing_is_left_over (void)
{
  for (guint i = 0; i < N_HOUSES; i++)
    {
      AnyHouse any;
      HcAirStates states;

      make_any_house (&any, (guint) g_test_rand_int_range (1, 4));
      hc_air_settle (&any.house, &states);
      g_assert_cmpuint (states.faults, ==, 0);
      g_assert_cmpuint (states.n_states, >=, 1);
      for (guint state = 0; state < states.n_states; state++)
        check_state (&any.house, &states.states[state]);
    }
}

static gboolean
has_one_state (const HcAirStates *states)
{
  return states->n_states == 1 && states->states[0].stable;
}

static void
test_more_vent_never_more_carbon_dioxide (void)
{
  for (guint i = 0; i < 1000; i++)
    {
      AnyHouse any;
      HcAirStates before;
      HcAirStates after;

      make_any_house (&any, 1);
      hc_air_settle (&any.house, &before);
      for (guint path = 0; path < any.house.n_paths; path++)
        {
          any.paths[path].effective_m2 *= 1.2;
          any.paths[path].stir_m3_s *= 1.2;
        }
      hc_air_settle (&any.house, &after);
      if (has_one_state (&before) && has_one_state (&after) && any.house.outside.wind_m_s == 0)
        g_assert_cmpfloat (after.states[0].spaces[0].co2_ppm, <=,
                           before.states[0].spaces[0].co2_ppm + 1e-6);
    }
}

static void
test_more_insulation_is_never_colder (void)
{
  for (guint i = 0; i < 1000; i++)
    {
      AnyHouse any;
      HcAirStates before;
      HcAirStates after;

      make_any_house (&any, 1);
      any.house.n_wets = 0;
      for (guint surface = 0; surface < any.house.n_surfaces; surface++)
        any.surfaces[surface].warmer_k = 0;
      hc_air_settle (&any.house, &before);
      for (guint surface = 0; surface < any.house.n_surfaces; surface++)
        any.surfaces[surface].u_w_m2k *= 0.7;
      hc_air_settle (&any.house, &after);
      if (has_one_state (&before) && has_one_state (&after))
        g_assert_cmpfloat (after.states[0].spaces[0].t_c, >=,
                           before.states[0].spaces[0].t_c - 1e-6);
    }
}

static void
test_an_empty_house_is_like_outside (void)
{
  AnyHouse any;
  HcAirStates states;

  make_any_house (&any, 1);
  any.house.spaces[0] = (HcAirSpace){ 0 };
  any.house.n_wets = 0;
  for (guint surface = 0; surface < any.house.n_surfaces; surface++)
    any.surfaces[surface].warmer_k = 0;
  hc_air_settle (&any.house, &states);
  g_assert_cmpfloat_with_epsilon (states.states[0].spaces[0].t_c, any.house.outside.t_c, 1e-6);
  g_assert_cmpfloat_with_epsilon (states.states[0].spaces[0].humidity, any.house.outside.humidity,
                                  1e-6);
}

/* Wind into the high vent and out of the low one: what the warmth drives it hinders.
 * Warm it rises as in a chimney, cool it is blown down through. */
static void
make_undecided_house (AnyHouse *any)
{
  HcAirPath low = { .beyond = HC_AIR_OUTSIDE,
                    .effective_m2 = 0.03,
                    .bottom_m = 0.2,
                    .pressure_coefficient = -0.4 };
  HcAirPath high = { .beyond = HC_AIR_OUTSIDE,
                     .effective_m2 = 0.03,
                     .bottom_m = 3,
                     .pressure_coefficient = 0.5 };
  HcAirSurface wall = {
    .beyond = HC_AIR_OUTSIDE, .area_m2 = 15, .u_w_m2k = 0.2, .film_m2k_w = 0.13
  };

  any->herds[0] = (Herd){ 180, 1e-5 };
  any->paths[0] = low;
  any->paths[1] = high;
  any->surfaces[0] = wall;
  any->house = (HcAirHouse){
    .outside = { 0, 0.8, HC_STANDARD_PRESSURE_PA, 1.7, 420 },
    .n_spaces = 1,
    .spaces = { { emit, &any->herds[0], 0, 0 } },
    .n_paths = 2,
    .paths = any->paths,
    .n_surfaces = 1,
    .surfaces = any->surfaces,
    .wets = any->wets,
  };
}

static void
test_all_states_are_found (void)
{
  AnyHouse any;
  HcAirStates states;
  guint n_stable = 0;
  const HcAirSpaceState *worst;

  make_undecided_house (&any);
  hc_air_settle (&any.house, &states);
  g_assert_cmpuint (states.n_states, ==, 3);
  for (guint i = 0; i < states.n_states; i++)
    {
      check_state (&any.house, &states.states[i]);
      n_stable += states.states[i].stable ? 1 : 0;
    }
  g_assert_cmpuint (n_stable, ==, 2);
  worst = &states.states[states.worst].spaces[0];
  for (guint i = 0; i < states.n_states; i++)
    if (states.states[i].stable)
      g_assert_cmpfloat (worst->humidity, >=, states.states[i].spaces[0].humidity - 1e-9);
}

/* The same house beside an empty shut shed: two spaces, the same states. */
static void
test_states_of_two_spaces (void)
{
  AnyHouse any;
  HcAirStates states;
  HcAirStates alone;

  make_undecided_house (&any);
  hc_air_settle (&any.house, &alone);
  any.house.n_spaces = 2;
  any.house.spaces[1] = (HcAirSpace){ .edge_w_k = 1 };
  any.paths[2] = (HcAirPath){ .space = 1, .beyond = HC_AIR_OUTSIDE, .effective_m2 = 0.01 };
  any.house.n_paths = 3;
  hc_air_settle (&any.house, &states);
  g_assert_cmpuint (states.n_states, >=, 2);
  for (guint i = 0; i < states.n_states; i++)
    check_state (&any.house, &states.states[i]);
  g_assert_cmpfloat_with_epsilon (states.states[states.worst].spaces[0].t_c,
                                  alone.states[alone.worst].spaces[0].t_c, 1e-4);
}

static void
test_absurd_questions (void)
{
  static const double askers[] = { -1e300, -90, 0, 1.3, 130, 1e300, NAN, INFINITY };

  for (guint i = 0; i < G_N_ELEMENTS (askers); i++)
    for (guint j = 0; j < G_N_ELEMENTS (askers); j++)
      {
        AnyHouse any;
        HcAirStates states;

        make_undecided_house (&any);
        any.house.outside.t_c = askers[i];
        any.house.outside.humidity = askers[j];
        any.house.outside.wind_m_s = askers[(i + j) % G_N_ELEMENTS (askers)];
        any.house.outside.pressure_pa = askers[j];
        hc_air_settle (&any.house, &states);
        g_assert_cmpuint (states.faults, !=, 0);
        check_state (&any.house, &states.states[states.worst]);
      }
}

/* No vents at all, and ten thousand birds in a box: a sentence, not a number that is none. */
static void
test_a_sealed_box_is_told (void)
{
  AnyHouse any;
  HcAirStates states;

  make_undecided_house (&any);
  any.house.n_paths = 0;
  any.herds[0].heat_w = 1e5;
  hc_air_settle (&any.house, &states);
  g_assert_cmpuint (states.faults & HC_AIR_FAULT_SEALED, !=, 0);
  g_assert_true (isfinite (states.states[0].spaces[0].co2_ppm));
  g_assert_true (isfinite (states.states[0].spaces[0].t_c));
}

/* A hot calm day: nothing rises, and the air is stirred all the same. */
static void
test_a_hot_calm_day (void)
{
  AnyHouse any;
  HcAirStates states;

  make_undecided_house (&any);
  any.house.outside.t_c = 38;
  any.house.outside.wind_m_s = 0;
  any.house.spaces[0] = (HcAirSpace){ 0 };
  any.paths[0].stir_m3_s = 0.0025;
  any.paths[1].stir_m3_s = 0.0025;
  hc_air_settle (&any.house, &states);
  g_assert_cmpfloat_with_epsilon (states.states[0].spaces[0].t_c, 38, 1e-6);
  g_assert_cmpfloat (states.states[0].spaces[0].fresh_kg_s, >, 0.004);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/steady/all-states", test_all_states_are_found);
  g_test_add_func ("/steady/two-spaces", test_states_of_two_spaces);
  g_test_add_func ("/steady/empty", test_an_empty_house_is_like_outside);
  g_test_add_func ("/steady/absurd", test_absurd_questions);
  g_test_add_func ("/steady/sealed", test_a_sealed_box_is_told);
  g_test_add_func ("/steady/hot-calm", test_a_hot_calm_day);
  g_test_add_func ("/steady/more-vent", test_more_vent_never_more_carbon_dioxide);
  g_test_add_func ("/steady/more-insulation", test_more_insulation_is_never_colder);
  g_test_add_func ("/steady/nothing-left-over", test_nothing_is_left_over);
  return g_test_run ();
}
