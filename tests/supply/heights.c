/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Heights: the room over and under a thing, what catches it, what bedding comes up to. */
#include "config.h"

#include "sample.h"

#include "supply/bedding-limits.h"
#include "supply/catch-height.h"
#include "supply/upright.h"

#define REACH_MM 40.0
#define NEST_BELOW_MM 200.0

/* A roost of two bars at 500 and 650 over a board at 300, nests whose upper row
 * is at 550, a pop hole with its sill at 200 and a door that opens inwards. */
static HcHouse *
make_house (Sample *sample)
{
  HcFittingValues *roost, *board, *nests;
  HcOpeningValues opening;
  g_autoptr (HcLayout) layout = NULL;

  sample_init (sample, 4000, 3000);
  sample->height_mm = 2000;
  roost = sample_add_roost (sample, 1500, 600, 2000, 600, 2);
  roost->rise_mm = 150;
  board = sample_add (sample, HC_FITTING_DROPPINGS_BOARD, 1500, 600, 2000, 800);
  board->base_mm = 300;
  board->height_mm = 20;
  nests = sample_add (sample, HC_FITTING_NEST_BOXES, 3500, 2000, 600, 400);
  nests->base_mm = 250;
  nests->height_mm = 600;
  nests->rows = 2;
  nests->columns = 2;
  hc_opening_values_init (&opening);
  opening.wall = (char *) "w1";
  opening.kind = HC_OPENING_POP_HOLE;
  opening.along_mm = 1500;
  opening.width_mm = 300;
  opening.height_mm = 350;
  opening.sill_mm = 200;
  g_array_append_val (sample->openings, opening);
  opening.kind = HC_OPENING_KEEPER_DOOR;
  opening.wall = (char *) "w2";
  opening.height_mm = 1800;
  opening.sill_mm = 50;
  opening.swing = HC_SWING_IN;
  g_array_append_val (sample->openings, opening);
  layout = sample_make_layout (sample);
  return hc_house_new (layout, NULL);
}

static void
test_headroom_is_over_the_highest_bar_and_the_drop_ends_on_the_board (void)
{
  Sample sample;
  g_autoptr (HcHouse) house = make_house (&sample);
  HcUpright found;

  g_assert_true (hc_house_measure_upright (house, "f0", &found));
  g_assert_cmpfloat_with_epsilon (found.bottom_mm, 500, 0.01);
  g_assert_cmpfloat_with_epsilon (found.top_mm, 650, 0.01);
  g_assert_cmpfloat_with_epsilon (found.over_mm, 2000, 0.01);
  g_assert_null (found.over_id);
  g_assert_cmpfloat_with_epsilon (found.under_mm, 320, 0.01);
  g_assert_cmpstr (found.under_id, ==, "f1");
  g_assert_true (hc_house_measure_upright (house, "f1", &found));
  g_assert_cmpstr (found.over_id, ==, "f0");
  g_assert_cmpfloat_with_epsilon (found.under_mm, 0, 0.01);
  g_assert_false (hc_house_measure_upright (house, "nothing", &found));
  sample_clear (&sample);
}

/* @nest_below_mm: what the rules ask; the nearest height wins */
typedef struct
{
  const char *path;
  const char *id;
  double wanted_mm;
  double nest_below_mm;
  HcHeightKind kind;
  double base_mm;
} Caught;

static const Caught catches[] = {
  { "/heights/caught/floor", "f2", 20, 0, HC_HEIGHT_FLOOR, 0 },
  { "/heights/caught/as-before", "f0", 490, 0, HC_HEIGHT_AS_BEFORE, 500 },
  { "/heights/caught/underside", "f0", 280, 0, HC_HEIGHT_UNDERSIDE, 300 },
  { "/heights/caught/top", "f2", 80, 0, HC_HEIGHT_TOP, 50 },
  { "/heights/caught/over-nests", "f0", 770, NEST_BELOW_MM, HC_HEIGHT_OVER_NESTS, 750 },
  { "/heights/caught/under-bars", "f2", 10, 190, HC_HEIGHT_UNDER_BARS, 10 },
  { "/heights/caught/sill", "o0", 40, 0, HC_HEIGHT_UNDERSIDE, 50 },
};

static void
test_it_is_caught_by_the_nearest_height (gconstpointer data)
{
  const Caught *expected = data;
  Sample sample;
  g_autoptr (HcHouse) house = make_house (&sample);
  HcHeightCatch caught;

  g_assert_true (hc_house_catch_height (house, expected->id, expected->wanted_mm, REACH_MM,
                                        expected->nest_below_mm, &caught));
  g_assert_cmpint (caught.kind, ==, expected->kind);
  g_assert_cmpfloat_with_epsilon (caught.base_mm, expected->base_mm, 0.01);
  sample_clear (&sample);
}

static void
test_nothing_catches_from_farther_than_the_reach (void)
{
  Sample sample;
  g_autoptr (HcHouse) house = make_house (&sample);
  HcHeightCatch caught;

  g_assert_false (hc_house_catch_height (house, "f0", 1200, REACH_MM, 0, &caught));
  g_assert_false (hc_house_catch_height (house, "nothing", 0, REACH_MM, 0, &caught));
  sample_clear (&sample);
}

static void
test_bedding_comes_up_to_doors_then_sills_then_nests (void)
{
  Sample sample;
  g_autoptr (HcHouse) house = make_house (&sample);
  g_autoptr (GArray) limits = hc_room_find_bedding_limits (hc_house_get_room (house, 0));
  static const HcBeddingLimit expected[] = {
    { HC_BEDDING_STOPS_DOOR, 50, "o1" },
    { HC_BEDDING_SPILLS, 200, "o0" },
    { HC_BEDDING_INTO_NESTS, 250, "f2" },
  };

  g_assert_cmpuint (limits->len, ==, G_N_ELEMENTS (expected));
  for (guint i = 0; i < limits->len; i++)
    {
      const HcBeddingLimit *limit = &g_array_index (limits, HcBeddingLimit, i);

      g_assert_cmpint (limit->kind, ==, expected[i].kind);
      g_assert_cmpfloat_with_epsilon (limit->height_mm, expected[i].height_mm, 0.01);
      g_assert_cmpstr (limit->id, ==, expected[i].id);
    }
  sample_clear (&sample);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/heights/upright",
                   test_headroom_is_over_the_highest_bar_and_the_drop_ends_on_the_board);
  for (guint i = 0; i < G_N_ELEMENTS (catches); i++)
    g_test_add_data_func (catches[i].path, &catches[i],
                          test_it_is_caught_by_the_nearest_height);
  g_test_add_func ("/heights/free", test_nothing_catches_from_farther_than_the_reach);
  g_test_add_func ("/heights/bedding", test_bedding_comes_up_to_doors_then_sills_then_nests);
  return g_test_run ();
}
