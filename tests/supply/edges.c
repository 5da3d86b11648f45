/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Feeders, drinkers, nests and heaters: who can get at how much of them. */
#include "config.h"

#include "sample.h"

#define TOUCH_MM 0.2

static double
tight (const Sample *sample, HcOfferKind kind)
{
  return sample_total (sample, kind, HC_LEVEL_TIGHT);
}

static double
tight_for (const Sample *sample, HcOfferKind kind, guint body)
{
  return sample_total_for (sample, kind, HC_LEVEL_TIGHT, body);
}

static void
test_a_trough_offers_both_sides (void)
{
  Sample sample;

  sample_init (&sample, 3000, 3000);
  sample_add (&sample, HC_FITTING_FEEDER, 1500, 1500, 1000, 150);
  g_assert_cmpfloat_with_epsilon (tight (&sample, HC_OFFER_FEED_LONG), 2000, TOUCH_MM);
  sample_clear (&sample);
}

static void
test_a_trough_at_the_wall_offers_one_side (void)
{
  Sample sample;

  sample_init (&sample, 3000, 3000);
  sample_add (&sample, HC_FITTING_FEEDER, 1500, 75, 1000, 150);
  g_assert_cmpfloat_with_epsilon (tight (&sample, HC_OFFER_FEED_LONG), 1000, TOUCH_MM);
  sample_clear (&sample);
}

static void
test_a_bin_in_front_takes_its_width (void)
{
  Sample sample;

  sample_init (&sample, 3000, 3000);
  sample_add (&sample, HC_FITTING_FEEDER, 1500, 75, 1000, 150);
  sample_add (&sample, HC_FITTING_STORE_BIN, 1200, 400, 400, 300);
  g_assert_cmpfloat_with_epsilon (tight (&sample, HC_OFFER_FEED_LONG), 600, TOUCH_MM);
  sample_clear (&sample);
}

/* 60 cm in front of the trough: a hen (44 cm) stands there, a goose (80 cm)
 * does not. Lengths of birds are from memory. */
static void
test_longer_birds_need_more_room (void)
{
  Sample sample;

  sample_init (&sample, 3000, 750);
  sample_add_kind (&sample, "goose");
  sample_add (&sample, HC_FITTING_FEEDER, 1500, 75, 1000, 150);
  g_assert_cmpfloat_with_epsilon (tight_for (&sample, HC_OFFER_FEED_LONG, 0), 1000, TOUCH_MM);
  g_assert_cmpfloat (tight_for (&sample, HC_OFFER_FEED_LONG, 1), ==, 0);
  sample_clear (&sample);
}

static void
test_a_trough_hung_over_their_backs_feeds_nobody (void)
{
  Sample sample;

  sample_init (&sample, 3000, 3000);
  sample_add (&sample, HC_FITTING_FEEDER, 1500, 1500, 1000, 150)->base_mm = 400;
  g_assert_cmpfloat (tight_for (&sample, HC_OFFER_FEED_LONG, 0), ==, 0);
  sample_clear (&sample);
}

static void
test_a_round_feeder_offers_its_rim (void)
{
  Sample sample;

  sample_init (&sample, 3000, 3000);
  sample_add (&sample, HC_FITTING_FEEDER, 1500, 1500, 400, 400)->form = HC_FORM_ROUND;
  g_assert_cmpfloat_with_epsilon (tight (&sample, HC_OFFER_FEED_ROUND), G_PI * 400, TOUCH_MM);
  g_assert_cmpfloat (tight (&sample, HC_OFFER_FEED_LONG), ==, 0);
  sample_clear (&sample);
}

static void
test_a_round_feeder_in_a_corner_offers_less_than_half (void)
{
  Sample sample;
  double rim_mm;

  sample_init (&sample, 3000, 3000);
  sample_add (&sample, HC_FITTING_FEEDER, 220, 220, 400, 400)->form = HC_FORM_ROUND;
  rim_mm = tight (&sample, HC_OFFER_FEED_ROUND);
  g_assert_cmpfloat (rim_mm, >, G_PI * 400 / 4 - 1);
  g_assert_cmpfloat (rim_mm, <, G_PI * 400 / 2);
  sample_clear (&sample);
}

static void
test_a_hopper_is_no_feeder (void)
{
  Sample sample;

  sample_init (&sample, 3000, 3000);
  sample_add (&sample, HC_FITTING_HOPPER, 1500, 1500, 400, 200);
  g_assert_cmpfloat (tight (&sample, HC_OFFER_FEED_LONG), ==, 0);
  sample_clear (&sample);
}

/* Ducks must clear their nostrils: 4 cm of water at least, from memory. */
static void
test_ducks_drink_where_they_can_dip_their_heads (void)
{
  Sample sample;
  HcFittingValues *trough, *line;

  sample_init (&sample, 3000, 3000);
  sample_add_kind (&sample, "duck");
  trough = sample_add (&sample, HC_FITTING_DRINKER, 1500, 75, 600, 150);
  trough->water_mm = 30;
  line = sample_add (&sample, HC_FITTING_DRINKER, 1500, 2000, 1000, 60);
  line->form = HC_FORM_NIPPLES;
  line->places = 4;
  g_assert_cmpfloat_with_epsilon (tight_for (&sample, HC_OFFER_WATER_LONG, 0), 600, TOUCH_MM);
  g_assert_cmpfloat (tight_for (&sample, HC_OFFER_WATER_LONG, 1), ==, 0);
  g_assert_cmpfloat (tight_for (&sample, HC_OFFER_NIPPLES, 0), ==, 4);
  g_assert_cmpfloat (tight_for (&sample, HC_OFFER_NIPPLES, 1), ==, 0);
  trough->water_mm = 60;
  g_assert_cmpfloat_with_epsilon (tight_for (&sample, HC_OFFER_WATER_LONG, 1), 600, TOUCH_MM);
  sample_clear (&sample);
}

static void
test_nipples_behind_a_bin_are_out_of_reach (void)
{
  Sample sample;
  HcFittingValues *line;

  sample_init (&sample, 3000, 3000);
  line = sample_add (&sample, HC_FITTING_DRINKER, 1500, 30, 1000, 60);
  line->form = HC_FORM_NIPPLES;
  line->places = 4;
  sample_add (&sample, HC_FITTING_STORE_BIN, 1250, 300, 500, 300);
  g_assert_cmpfloat (tight (&sample, HC_OFFER_NIPPLES), ==, 2);
  sample_clear (&sample);
}

/* A box of 30 × 30 × 35 cm at 45 to 60 cm suits hens, and heavy birds want one
 * of 35 cm, low down: common practice, no source. */
static void
test_boxes_suit_birds_by_size_and_height (void)
{
  Sample sample;
  HcFittingValues *boxes;

  sample_init (&sample, 3000, 3000);
  sample_add_kind (&sample, "heavy_breed");
  boxes = sample_add (&sample, HC_FITTING_NEST_BOXES, 1500, 200, 900, 300);
  boxes->columns = 3;
  boxes->rows = 2;
  boxes->height_mm = 700;
  boxes->base_mm = 450;
  g_assert_cmpfloat (tight (&sample, HC_OFFER_NESTS), ==, 6);
  g_assert_cmpfloat (tight_for (&sample, HC_OFFER_NESTS, 0), ==, 3);
  g_assert_cmpfloat (tight_for (&sample, HC_OFFER_NESTS, 1), ==, 0);
  g_assert_cmpfloat (tight (&sample, HC_OFFER_GROUP_NESTS), ==, 0);
  sample_clear (&sample);
}

static void
test_a_group_nest_offers_area (void)
{
  Sample sample;
  HcFittingValues *nest;

  sample_init (&sample, 3000, 3000);
  nest = sample_add (&sample, HC_FITTING_NEST_BOXES, 1500, 300, 1000, 500);
  nest->form = HC_FORM_GROUP;
  nest->height_mm = 450;
  nest->base_mm = 450;
  g_assert_cmpfloat_with_epsilon (tight (&sample, HC_OFFER_GROUP_NESTS), 500000, 1);
  g_assert_cmpfloat (tight (&sample, HC_OFFER_NESTS), ==, 0);
  sample_clear (&sample);
}

static void
test_heaters_offer_warm_floor (void)
{
  Sample sample;

  sample_init (&sample, 3000, 3000);
  sample_add (&sample, HC_FITTING_HEAT_PLATE, 500, 500, 400, 300)->base_mm = 100;
  sample_add (&sample, HC_FITTING_FLOOR_HEAT_PAD, 1500, 1500, 300, 450);
  g_assert_cmpfloat_with_epsilon (tight (&sample, HC_OFFER_WARMTH), 120000 + 135000, 1);
  g_assert_cmpfloat (tight_for (&sample, HC_OFFER_WARMTH, 0), ==, 0);
  sample_clear (&sample);
}

int
main (int argc, char **argv)
{
  static const struct
  {
    const char *path;
    void (*test) (void);
  } tests[] = {
    { "/edges/both-sides", test_a_trough_offers_both_sides },
    { "/edges/at-the-wall", test_a_trough_at_the_wall_offers_one_side },
    { "/edges/bin-in-front", test_a_bin_in_front_takes_its_width },
    { "/edges/longer-birds", test_longer_birds_need_more_room },
    { "/edges/hung-high", test_a_trough_hung_over_their_backs_feeds_nobody },
    { "/edges/round", test_a_round_feeder_offers_its_rim },
    { "/edges/round-in-a-corner", test_a_round_feeder_in_a_corner_offers_less_than_half },
    { "/edges/hopper", test_a_hopper_is_no_feeder },
    { "/edges/ducks", test_ducks_drink_where_they_can_dip_their_heads },
    { "/edges/nipples", test_nipples_behind_a_bin_are_out_of_reach },
    { "/nests/size-and-height", test_boxes_suit_birds_by_size_and_height },
    { "/nests/group", test_a_group_nest_offers_area },
    { "/warmth/area", test_heaters_offer_warm_floor },
  };

  g_test_init (&argc, &argv, NULL);
  for (guint i = 0; i < G_N_ELEMENTS (tests); i++)
    g_test_add_func (tests[i].path, tests[i].test);
  return g_test_run ();
}
