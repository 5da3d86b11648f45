/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Which stretches of bars birds can sleep on. */
#include "config.h"

#include "sample.h"

#define TOUCH_MM 0.05

static double
total_at (const Sample *sample, HcLevel level)
{
  return sample_total (sample, HC_OFFER_ROOST, level);
}

/* Spacing 30 cm and 20 cm from the wall: Council Directive 1999/74/EC, as
 * transposed by the French order of 1 February 2002, article 3. */
static void
test_two_bars_as_the_law_spaces_them (void)
{
  Sample sample;

  sample_init (&sample, 2400, 2000);
  sample_use_standard (&sample, "eu-laying-hens");
  sample_add_roost (&sample, 1200, 200 + 150, 2400, 2 * 300, 2);
  g_assert_cmpfloat_with_epsilon (total_at (&sample, HC_LEVEL_TIGHT), 4800, TOUCH_MM);
  sample_clear (&sample);
}

static void
test_a_bar_nearer_to_the_wall_is_lost (void)
{
  Sample sample;
  g_autoptr (HcOffer) offer = NULL;
  const HcPlace *place;

  sample_init (&sample, 3000, 2000);
  sample_add_roost (&sample, 1500, 199, 2000, 100, 1);
  offer = sample_offer (&sample, HC_OFFER_ROOST);
  g_assert_cmpuint (hc_offer_get_n_places (offer), ==, 1);
  place = hc_offer_get_place (offer, 0);
  g_assert_cmpfloat (place->amounts[0], ==, 0);
  g_assert_cmpstr (place->why_not, ==, "roost.bar-to-wall");
  sample_clear (&sample);
}

/* Both ends touch a wall: distances are square to the bar, never at its ends. */
static void
test_a_bar_from_wall_to_wall_counts_to_its_ends (void)
{
  Sample sample;

  sample_init (&sample, 2400, 2000);
  sample_add_roost (&sample, 1200, 1000, 2400, 100, 1);
  for (HcLevel level = HC_LEVEL_TIGHT; level <= HC_LEVEL_PLENTY; level++)
    g_assert_cmpfloat_with_epsilon (total_at (&sample, level), 2400, TOUCH_MM);
  sample_clear (&sample);
}

static void
test_levels_ask_for_more_room (void)
{
  Sample sample;

  sample_init (&sample, 3000, 2000);
  sample_add_roost (&sample, 1500, 250, 2000, 100, 1);
  g_assert_cmpfloat_with_epsilon (total_at (&sample, HC_LEVEL_TIGHT), 2000, TOUCH_MM);
  g_assert_cmpfloat_with_epsilon (total_at (&sample, HC_LEVEL_GOOD), 2000, TOUCH_MM);
  g_assert_cmpfloat_with_epsilon (total_at (&sample, HC_LEVEL_PLENTY), 0, TOUCH_MM);
  sample_clear (&sample);
}

/* Five bars 20 cm apart, 30 cm asked: the first, third and fifth count. */
static void
test_of_crowded_bars_every_other_counts (void)
{
  Sample sample;

  sample_init (&sample, 3000, 3000);
  sample_add_roost (&sample, 1500, 1500, 2000, 1000, 5);
  g_assert_cmpfloat_with_epsilon (total_at (&sample, HC_LEVEL_TIGHT), 6000, TOUCH_MM);
  sample_clear (&sample);
}

static void
test_bars_end_to_end_do_not_crowd (void)
{
  Sample sample;

  sample_init (&sample, 4000, 2000);
  sample_add_roost (&sample, 1000, 1000, 2000, 100, 1);
  sample_add_roost (&sample, 3000, 1000, 2000, 100, 1);
  g_assert_cmpfloat_with_epsilon (total_at (&sample, HC_LEVEL_PLENTY), 4000, TOUCH_MM);
  sample_clear (&sample);
}

static void
test_a_bar_above_another_fouls_it (void)
{
  Sample sample;

  sample_init (&sample, 3000, 3000);
  sample_add_roost (&sample, 1500, 1500, 2000, 100, 1);
  sample_add_roost (&sample, 1500, 1500, 2000, 100, 1)->base_mm = 1000;
  g_assert_cmpfloat_with_epsilon (total_at (&sample, HC_LEVEL_TIGHT), 2000, TOUCH_MM);
  sample_clear (&sample);
}

static void
test_a_post_cuts_the_bar (void)
{
  Sample sample;
  g_autoptr (HcOffer) offer = NULL;

  sample_init (&sample, 3000, 3000);
  sample_add_roost (&sample, 1500, 1500, 2000, 100, 1);
  sample_add (&sample, HC_FITTING_POST, 1500, 1500, 100, 100)->height_mm = 2200;
  offer = sample_offer (&sample, HC_OFFER_ROOST);
  g_assert_cmpuint (hc_offer_get_n_places (offer), ==, 2);
  g_assert_cmpfloat_with_epsilon (hc_offer_get_place (offer, 0)->amounts[0], 950, TOUCH_MM);
  g_assert_cmpstr (hc_offer_get_place (offer, 0)->blocker, ==, "f1");
  sample_clear (&sample);
}

static void
test_what_hangs_too_low_over_a_bar_cuts_it (void)
{
  Sample sample;
  HcFittingValues *shelf;
  g_autoptr (HcOffer) offer = NULL;

  sample_init (&sample, 3000, 3000);
  sample_add_roost (&sample, 1500, 1500, 2000, 100, 1);
  shelf = sample_add (&sample, HC_FITTING_PLATFORM, 1000, 1500, 1000, 400);
  shelf->base_mm = 900;
  shelf->height_mm = 20;
  offer = sample_offer (&sample, HC_OFFER_ROOST);
  g_assert_cmpfloat_with_epsilon (hc_offer_get_place (offer, 0)->amounts[0], 1000, TOUCH_MM);
  g_assert_cmpstr (hc_offer_get_place (offer, 0)->why_not, ==, "roost.headroom");
  sample_clear (&sample);
}

/* A roof 50 cm above the bar: 45 cm is the least, 60 cm good. */
static void
test_a_low_roof_takes_the_better_levels (void)
{
  Sample sample;

  sample_init (&sample, 3000, 3000);
  sample.height_mm = 1000;
  sample_add_roost (&sample, 1500, 1500, 2000, 100, 1);
  g_assert_cmpfloat_with_epsilon (total_at (&sample, HC_LEVEL_TIGHT), 2000, TOUCH_MM);
  g_assert_cmpfloat_with_epsilon (total_at (&sample, HC_LEVEL_GOOD), 0, TOUCH_MM);
  sample_clear (&sample);
}

/* Heavy birds want bars of 60 cm at most: common practice, no source. */
static void
test_a_high_bar_suits_only_light_birds (void)
{
  Sample sample;

  sample_init (&sample, 3000, 3000);
  sample_add_kind (&sample, "heavy_breed");
  sample_add_kind (&sample, "duck");
  sample_add_roost (&sample, 1500, 1500, 2000, 100, 1)->base_mm = 800;
  g_assert_cmpfloat_with_epsilon (
      sample_total_for (&sample, HC_OFFER_ROOST, HC_LEVEL_TIGHT, 0), 2000, TOUCH_MM);
  g_assert_cmpfloat (sample_total_for (&sample, HC_OFFER_ROOST, HC_LEVEL_TIGHT, 1), ==, 0);
  g_assert_cmpfloat (sample_total_for (&sample, HC_OFFER_ROOST, HC_LEVEL_TIGHT, 2), ==, 0);
  sample_clear (&sample);
}

static void
test_cold_nights_want_wide_bars (void)
{
  Sample sample;

  sample_init (&sample, 3000, 3000);
  sample_add_roost (&sample, 1500, 1500, 2000, 100, 1)->bar_width_mm = 50;
  g_assert_cmpfloat_with_epsilon (
      sample_total_for (&sample, HC_OFFER_ROOST, HC_LEVEL_GOOD, 0), 2000, TOUCH_MM);
  sample.coldest_night_c = -20;
  g_assert_cmpfloat (sample_total_for (&sample, HC_OFFER_ROOST, HC_LEVEL_GOOD, 0), ==, 0);
  sample_clear (&sample);
}

/* A lean-to over 3 m, from 1 m to 1.9 m: a bar at 500 mm that runs up the slope
 * has 650 mm of headroom from 500 mm on, one that runs along it has it or not. */
static void
test_a_sloping_roof_cuts_the_bar (void)
{
  Sample sample;

  sample_init (&sample, 3000, 3000);
  sample_use_standard (&sample, "eu-laying-hens");
  sample.height_mm = 650;
  sample.ridge_mm = 1550;
  sample.roof_shape = HC_ROOF_LEAN_TO;
  sample.roof_turn_deg = 0;
  sample_add_roost (&sample, 1500, 1500, 3000, 100, 1);
  g_assert_cmpfloat_with_epsilon (total_at (&sample, HC_LEVEL_TIGHT), 2000, 1);
  sample.roof_turn_deg = 270;
  g_assert_cmpfloat_with_epsilon (total_at (&sample, HC_LEVEL_TIGHT), 3000, TOUCH_MM);
  sample_clear (&sample);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/roost/as-the-law-spaces-bars", test_two_bars_as_the_law_spaces_them);
  g_test_add_func ("/roost/too-near-the-wall", test_a_bar_nearer_to_the_wall_is_lost);
  g_test_add_func ("/roost/wall-to-wall", test_a_bar_from_wall_to_wall_counts_to_its_ends);
  g_test_add_func ("/roost/levels", test_levels_ask_for_more_room);
  g_test_add_func ("/roost/crowded", test_of_crowded_bars_every_other_counts);
  g_test_add_func ("/roost/end-to-end", test_bars_end_to_end_do_not_crowd);
  g_test_add_func ("/roost/above-another", test_a_bar_above_another_fouls_it);
  g_test_add_func ("/roost/post", test_a_post_cuts_the_bar);
  g_test_add_func ("/roost/hangs-low", test_what_hangs_too_low_over_a_bar_cuts_it);
  g_test_add_func ("/roost/low-roof", test_a_low_roof_takes_the_better_levels);
  g_test_add_func ("/roost/sloping-roof", test_a_sloping_roof_cuts_the_bar);
  g_test_add_func ("/roost/high-bar", test_a_high_bar_suits_only_light_birds);
  g_test_add_func ("/roost/cold-nights", test_cold_nights_want_wide_bars);
  return g_test_run ();
}
