/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The floor that counts: 30 cm wide, 45 cm of headroom, 14 % of slope. Usable
 * area of Council Directive 1999/74/EC, article 2 (2)(d). */
#include "config.h"

#include "sample.h"

#define TOUCH_MM2 100.0

static double
floor_at (const Sample *sample, HcLevel level)
{
  return sample_total (sample, HC_OFFER_FLOOR, level);
}

static void
test_an_empty_room_counts_whole (void)
{
  Sample sample;

  sample_init (&sample, 5000, 8000);
  for (HcLevel level = HC_LEVEL_TIGHT; level <= HC_LEVEL_PLENTY; level++)
    g_assert_cmpfloat_with_epsilon (floor_at (&sample, level), 40e6, TOUCH_MM2);
  sample_clear (&sample);
}

static void
test_a_gap_of_30_cm_counts_and_of_29_does_not (void)
{
  Sample wide, narrow;

  sample_init (&wide, 2000, 1000);
  sample_add (&wide, HC_FITTING_STORE_BIN, 1000, 650, 2000, 700);
  g_assert_cmpfloat_with_epsilon (floor_at (&wide, HC_LEVEL_TIGHT), 2000 * 300, TOUCH_MM2);
  sample_init (&narrow, 2000, 1000);
  sample_add (&narrow, HC_FITTING_STORE_BIN, 1000, 645, 2000, 710);
  g_assert_cmpfloat_with_epsilon (floor_at (&narrow, HC_LEVEL_TIGHT), 0, TOUCH_MM2);
  sample_clear (&wide);
  sample_clear (&narrow);
}

static void
test_floor_under_a_board_counts_from_45_cm (void)
{
  static const struct
  {
    double base_mm;
    double tight_m2, plenty_m2;
  } rows[] = { { 449, 3, 3 }, { 450, 4, 3 }, { 599, 4, 3 }, { 600, 4, 4 } };

  for (guint i = 0; i < G_N_ELEMENTS (rows); i++)
    {
      Sample sample;

      sample_init (&sample, 2000, 2000);
      sample_add (&sample, HC_FITTING_DROPPINGS_BOARD, 1000, 250, 2000, 500)->base_mm
          = rows[i].base_mm;
      g_assert_cmpfloat_with_epsilon (floor_at (&sample, HC_LEVEL_TIGHT),
                                      rows[i].tight_m2 * 1e6, TOUCH_MM2);
      g_assert_cmpfloat_with_epsilon (floor_at (&sample, HC_LEVEL_PLENTY),
                                      rows[i].plenty_m2 * 1e6, TOUCH_MM2);
      sample_clear (&sample);
    }
}

static void
test_bars_and_pads_take_no_floor (void)
{
  Sample sample;

  sample_init (&sample, 2000, 2000);
  sample_add_roost (&sample, 1000, 500, 1800, 800, 3)->base_mm = 300;
  sample_add (&sample, HC_FITTING_FLOOR_HEAT_PAD, 1000, 1500, 300, 450)->height_mm = 25;
  g_assert_cmpfloat_with_epsilon (floor_at (&sample, HC_LEVEL_TIGHT), 4e6, TOUCH_MM2);
  sample_clear (&sample);
}

/* Steeper than 14 % is no floor, and a ramp is. */
static void
test_nests_and_ramps_are_no_floor (void)
{
  Sample sample;

  sample_init (&sample, 2000, 2000);
  sample_add (&sample, HC_FITTING_NEST_BOXES, 500, 500, 1000, 1000)->base_mm = 100;
  sample_add (&sample, HC_FITTING_RAMP, 1500, 1500, 1000, 1000)->height_mm = 600;
  g_assert_cmpfloat_with_epsilon (floor_at (&sample, HC_LEVEL_TIGHT), 2e6, TOUCH_MM2);
  sample_clear (&sample);
}

static void
test_a_low_roof_leaves_no_floor (void)
{
  Sample sample;

  sample_init (&sample, 2000, 2000);
  sample.height_mm = 440;
  g_assert_cmpfloat (floor_at (&sample, HC_LEVEL_TIGHT), ==, 0);
  sample_clear (&sample);
}

/* Home figures are ground floor; multi-level houses of the law are not. */
static void
test_platforms_count_where_the_rules_count_them (void)
{
  Sample sample;
  HcFittingValues *platform;

  sample_init (&sample, 2000, 2000);
  platform = sample_add (&sample, HC_FITTING_PLATFORM, 500, 1000, 1000, 500);
  platform->base_mm = 600;
  platform->height_mm = 20;
  g_assert_cmpfloat_with_epsilon (floor_at (&sample, HC_LEVEL_TIGHT), 4e6, TOUCH_MM2);
  sample_use_standard (&sample, "eu-laying-hens");
  g_assert_cmpfloat_with_epsilon (floor_at (&sample, HC_LEVEL_TIGHT), 4.5e6, TOUCH_MM2);
  sample_clear (&sample);
}

static void
test_a_run_is_no_floor_and_netting_no_shelter (void)
{
  Sample sample;

  sample_init (&sample, 2000, 2000);
  sample.kind = HC_PEN_RUN;
  sample.roof = HC_ROOF_NET;
  g_assert_cmpfloat (floor_at (&sample, HC_LEVEL_TIGHT), ==, 0);
  g_assert_cmpfloat_with_epsilon (sample_total (&sample, HC_OFFER_RUN, HC_LEVEL_TIGHT), 4e6,
                                  TOUCH_MM2);
  sample.condition = HC_CONDITION_SHUT_IN;
  g_assert_cmpfloat (sample_total (&sample, HC_OFFER_RUN, HC_LEVEL_TIGHT), ==, 0);
  sample.roof = HC_ROOF_SOLID;
  g_assert_cmpfloat_with_epsilon (sample_total (&sample, HC_OFFER_RUN, HC_LEVEL_TIGHT), 4e6,
                                  TOUCH_MM2);
  sample_clear (&sample);
}

/* A lean-to over 3 m, from 300 mm at the front to 1200 mm at the back: 450 mm of
 * headroom begin 500 mm from the front. */
static void
test_floor_under_a_slope_counts_where_it_is_high_enough (void)
{
  Sample sample;

  sample_init (&sample, 2000, 3000);
  sample_use_standard (&sample, "eu-laying-hens");
  sample.height_mm = 300;
  sample.ridge_mm = 1200;
  sample.roof_shape = HC_ROOF_LEAN_TO;
  g_assert_cmpfloat_with_epsilon (floor_at (&sample, HC_LEVEL_TIGHT), 2000 * 2500, 200);
  sample.roof_shape = HC_ROOF_GABLE;
  g_assert_cmpfloat_with_epsilon (floor_at (&sample, HC_LEVEL_TIGHT), 2000 * 2500, 200);
  sample.roof_turn_deg = 0;
  g_assert_cmpfloat_with_epsilon (floor_at (&sample, HC_LEVEL_TIGHT), 3000 * 2000.0 * 5 / 6, 200);
  sample.roof_shape = HC_ROOF_FLAT;
  g_assert_cmpfloat (floor_at (&sample, HC_LEVEL_TIGHT), ==, 0);
  sample_clear (&sample);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/floor/empty-room", test_an_empty_room_counts_whole);
  g_test_add_func ("/floor/least-width", test_a_gap_of_30_cm_counts_and_of_29_does_not);
  g_test_add_func ("/floor/headroom", test_floor_under_a_board_counts_from_45_cm);
  g_test_add_func ("/floor/bars-and-pads", test_bars_and_pads_take_no_floor);
  g_test_add_func ("/floor/nests-and-ramps", test_nests_and_ramps_are_no_floor);
  g_test_add_func ("/floor/low-roof", test_a_low_roof_leaves_no_floor);
  g_test_add_func ("/floor/under-a-slope",
                   test_floor_under_a_slope_counts_where_it_is_high_enough);
  g_test_add_func ("/floor/platforms", test_platforms_count_where_the_rules_count_them);
  g_test_add_func ("/floor/runs", test_a_run_is_no_floor_and_netting_no_shelter);
  return g_test_run ();
}
