/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Council Directive 1999/74/EC on laying hens, and the French order of
 * 1 February 2002 (AGRG0200019A), article 3, which transposes its article 4.
 * Each figure is the rule as stated there, at its boundary. */
#include "config.h"

#include "barn.h"

#define HEN "medium_layer"

static void
open_barn (House *barn)
{
  barn_init (barn, "eu-laying-hens", 8000, 5000);
}

static void
test_nine_hens_to_a_square_metre (void)
{
  House barn;

  g_test_summary ("Directive 1999/74/EC, article 4 (1)(4): at most 9 hens to 1 m² of usable "
                  "area; 40 m² are for 360");
  open_barn (&barn);
  barn_assert_carries (&barn, HC_NEED_FLOOR, HEN, BARN_GROWN, 360);
  barn_clear (&barn);
}

static void
test_seven_hens_to_a_nest (void)
{
  House barn;

  g_test_summary ("French order of 1 February 2002, article 3 (1°)(c): one nest for 7 hens; "
                  "360 hens need 52");
  open_barn (&barn);
  barn_add_nests (&barn, 52, 350, 350);
  g_assert_true (barn_holds (&barn, HC_NEED_NESTS, HEN, BARN_GROWN, 360));
  barn_clear (&barn);
  open_barn (&barn);
  barn_add_nests (&barn, 51, 350, 350);
  g_assert_false (barn_holds (&barn, HC_NEED_NESTS, HEN, BARN_GROWN, 360));
  barn_clear (&barn);
}

static void
test_a_square_metre_of_group_nest_for_120_hens (void)
{
  House barn;

  g_test_summary ("French order of 1 February 2002, article 3 (1°)(c): 1 m² of group nest for "
                  "120 hens; 3 m² for 360");
  open_barn (&barn);
  for (int i = 0; i < 3; i++)
    barn_add_group_nest (&barn, 1);
  barn_assert_carries (&barn, HC_NEED_NESTS, HEN, BARN_GROWN, 360);
  barn_clear (&barn);
}

static void
test_fifteen_centimetres_of_perch (void)
{
  House barn;

  g_test_summary ("French order of 1 February 2002, article 3 (1°)(d): 15 cm of perch a hen, "
                  "axes 30 cm apart and 20 cm from the wall; 54 m for 360");
  open_barn (&barn);
  barn_add_roost (&barn, 6000, 9, 300, 200);
  barn_assert_carries (&barn, HC_NEED_ROOST, HEN, BARN_GROWN, 360);
  barn_clear (&barn);
}

static void
test_a_hair_less_perch_seats_fewer (void)
{
  House barn;

  g_test_summary ("French order of 1 February 2002, article 3 (1°)(d): bars a millimetre short "
                  "of 40 seats have 39");
  open_barn (&barn);
  barn_add_roost (&barn, 5999, 9, 300, 200);
  barn_assert_carries (&barn, HC_NEED_ROOST, HEN, BARN_GROWN, 9 * 39);
  barn_clear (&barn);
}

static void
test_bars_too_near_count_once (void)
{
  House barn;

  g_test_summary ("French order of 1 February 2002, article 3 (1°)(d): of axes less than 30 cm "
                  "apart only one counts");
  open_barn (&barn);
  barn_add_roost (&barn, 6000, 2, 299, 200);
  barn_assert_carries (&barn, HC_NEED_ROOST, HEN, BARN_GROWN, 40);
  barn_clear (&barn);
}

static void
test_a_bar_too_near_the_wall_does_not_count (void)
{
  House barn;

  g_test_summary ("French order of 1 February 2002, article 3 (1°)(d): an axis less than 20 cm "
                  "from the wall does not count");
  open_barn (&barn);
  barn_add_roost (&barn, 6000, 2, 300, 199);
  barn_assert_carries (&barn, HC_NEED_ROOST, HEN, BARN_GROWN, 40);
  barn_clear (&barn);
}

static void
test_ten_centimetres_of_trough (void)
{
  House barn;

  g_test_summary ("French order of 1 February 2002, article 3 (1°)(a): 10 cm of long feeder a "
                  "hen, both sides; 36 m for 360");
  open_barn (&barn);
  barn_add_edges (&barn, HC_FITTING_FEEDER, HC_FORM_LONG, 6, 3000);
  barn_assert_carries (&barn, HC_NEED_FEED, HEN, BARN_GROWN, 360);
  barn_clear (&barn);
}

static void
test_four_centimetres_of_round_feeder (void)
{
  House barn;

  g_test_summary ("French order of 1 February 2002, article 3 (1°)(a): 4 cm of round feeder a "
                  "hen; 14.4 m for 360, 120 on a rim of 4.8 m");
  open_barn (&barn);
  barn_add_edges (&barn, HC_FITTING_FEEDER, HC_FORM_ROUND, 4, 382);
  barn_assert_carries (&barn, HC_NEED_FEED, HEN, BARN_GROWN, 120);
  barn_clear (&barn);
  open_barn (&barn);
  barn_add_edges (&barn, HC_FITTING_FEEDER, HC_FORM_ROUND, 4, 381);
  barn_assert_carries (&barn, HC_NEED_FEED, HEN, BARN_GROWN, 119);
  barn_clear (&barn);
}

static void
test_two_and_a_half_centimetres_of_drinking_trough (void)
{
  House barn;

  g_test_summary ("French order of 1 February 2002, article 3 (1°)(b): 2.5 cm of long drinker a "
                  "hen; 9 m for 360");
  open_barn (&barn);
  barn_add_edges (&barn, HC_FITTING_DRINKER, HC_FORM_LONG, 3, 1500);
  barn_assert_carries (&barn, HC_NEED_WATER, HEN, BARN_GROWN, 360);
  barn_clear (&barn);
}

static void
test_a_centimetre_of_round_drinker (void)
{
  House barn;

  g_test_summary ("French order of 1 February 2002, article 3 (1°)(b): 1 cm of round drinker a "
                  "hen; 100 on a rim of 1 m");
  open_barn (&barn);
  barn_add_edges (&barn, HC_FITTING_DRINKER, HC_FORM_ROUND, 1, 319);
  barn_assert_carries (&barn, HC_NEED_WATER, HEN, BARN_GROWN, 100);
  barn_clear (&barn);
}

static void
test_ten_hens_to_a_nipple (void)
{
  House barn;

  g_test_summary ("French order of 1 February 2002, article 3 (1°)(b): one nipple for 10 hens, "
                  "two in reach of each; 36 for 360, and one alone for nobody");
  open_barn (&barn);
  barn_add_nipples (&barn, 36);
  barn_assert_carries (&barn, HC_NEED_WATER, HEN, BARN_GROWN, 360);
  barn_clear (&barn);
  open_barn (&barn);
  barn_add_nipples (&barn, 1);
  g_assert_false (barn_holds (&barn, HC_NEED_WATER, HEN, BARN_GROWN, 1));
  barn_clear (&barn);
}

static void
test_two_metres_of_pop_hole_for_a_thousand (void)
{
  House barn;

  g_test_summary ("French order of 1 February 2002, article 3 (3°)(b): 2 m of pop hole for 1,000 "
                  "hens, none less than 40 cm wide; five of them for 1,000");
  open_barn (&barn);
  barn_add_pop_holes (&barn, 5, 400, 350);
  barn_assert_carries (&barn, HC_NEED_WAY_OUT, HEN, BARN_GROWN, 1000);
  barn_clear (&barn);
}

static void
test_a_pop_hole_too_small_is_none (void)
{
  static const double sizes[][2] = { { 399, 350 }, { 400, 349 } };

  g_test_summary ("French order of 1 February 2002, article 3 (3°)(b): pop holes of 40 cm by "
                  "35 cm at least");
  for (guint i = 0; i < G_N_ELEMENTS (sizes); i++)
    {
      House barn;

      open_barn (&barn);
      barn_add_pop_holes (&barn, 5, sizes[i][0], sizes[i][1]);
      g_assert_false (barn_holds (&barn, HC_NEED_WAY_OUT, HEN, BARN_GROWN, 1));
      barn_clear (&barn);
    }
}

/* A bin across the barn leaves a strip behind it, and 3 m before it. */
static void
leave_strip (House *barn, double strip_mm)
{
  double depth_mm = 2000 - strip_mm;

  open_barn (barn);
  house_add (barn, "p", HC_FITTING_STORE_BIN, 4000, strip_mm + depth_mm / 2, 8000, depth_mm);
}

static void
test_a_strip_of_thirty_centimetres_counts (void)
{
  House barn;

  g_test_summary ("Directive 1999/74/EC, article 2 (2)(d): usable area is at least 30 cm wide; "
                  "24 m² and 8 m of strip are for 237 hens, without it for 216");
  leave_strip (&barn, 300);
  barn_assert_carries (&barn, HC_NEED_FLOOR, HEN, BARN_GROWN, 237);
  barn_clear (&barn);
  leave_strip (&barn, 299);
  barn_assert_carries (&barn, HC_NEED_FLOOR, HEN, BARN_GROWN, 216);
  barn_clear (&barn);
}

/* A box of 2 m² hangs in the barn. */
static void
hang_box (House *barn, double above_floor_mm)
{
  HcFittingValues *box;

  open_barn (barn);
  box = house_add (barn, "p", HC_FITTING_STORE_BIN, 4000, 2500, 2000, 1000);
  box->base_mm = above_floor_mm;
}

static void
test_floor_needs_headroom (void)
{
  House barn;

  g_test_summary ("Directive 1999/74/EC, article 2 (2)(d): usable area has 45 cm of headroom; "
                  "2 m² under a box of less are lost to 18 hens");
  hang_box (&barn, 450);
  barn_assert_carries (&barn, HC_NEED_FLOOR, HEN, BARN_GROWN, 360);
  barn_clear (&barn);
  hang_box (&barn, 449);
  barn_assert_carries (&barn, HC_NEED_FLOOR, HEN, BARN_GROWN, 342);
  barn_clear (&barn);
}

static void
test_nests_are_not_floor (void)
{
  House barn;

  g_test_summary ("Directive 1999/74/EC, article 2 (2)(d): nest areas are not usable area");
  open_barn (&barn);
  barn_add_nests (&barn, 8, 500, 500);
  barn_assert_carries (&barn, HC_NEED_FLOOR, HEN, BARN_GROWN, 342);
  barn_clear (&barn);
}

static void
test_raised_levels_count (void)
{
  House barn;
  HcFittingValues *platform;

  g_test_summary ("Directive 1999/74/EC, article 4 (1)(3): levels with 45 cm between them are "
                  "usable area; 2 m² more are for 18 hens");
  open_barn (&barn);
  platform = house_add (&barn, "p", HC_FITTING_PLATFORM, 4000, 2500, 2000, 1000);
  platform->base_mm = 450;
  platform->height_mm = 50;
  barn_assert_carries (&barn, HC_NEED_FLOOR, HEN, BARN_GROWN, 378);
  barn_clear (&barn);
}

/* No need judges slopes and litter by itself: the rules are asked. */
static void
test_a_slope_of_fourteen_per_cent (void)
{
  House barn;
  const HcLimit *slope;

  g_test_summary ("Directive 1999/74/EC, article 2 (2)(d): usable area slopes by 14 % at most");
  open_barn (&barn);
  slope = hc_standard_find_limit (hc_book_get_standard (barn.book, "eu-laying-hens"),
                                  "floor.slope", NULL, HC_WEEK_GROWN, HC_CONDITION_DAY);
  g_assert_true (hc_limit_is_met (slope, HC_LEVEL_TIGHT, 7.97));
  g_assert_false (hc_limit_is_met (slope, HC_LEVEL_TIGHT, 8.53));
  barn_clear (&barn);
}

static void
test_litter_on_a_third_of_the_floor (void)
{
  House barn;
  const HcDemand *litter;
  HcBasis basis = { .ground_floor_mm2 = 40e6 };

  g_test_summary ("French order of 1 February 2002, article 3 (1°)(e): 250 cm² of litter a hen "
                  "and a third of the floor; 13.33 m² for 360 hens on 40 m²");
  open_barn (&barn);
  litter = hc_standard_find_demand (hc_book_get_standard (barn.book, "eu-laying-hens"),
                                    "litter.area", hc_book_get_kind (barn.book, HEN),
                                    HC_WEEK_GROWN, HC_CONDITION_DAY);
  g_assert_cmpint (hc_demand_grade (litter, 13.34e6, 360, 0, &basis), >=, HC_LEVEL_TIGHT);
  g_assert_cmpint (hc_demand_grade (litter, 13.33e6, 360, 0, &basis), ==, HC_LEVEL_SHORT);
  g_assert_cmpint (hc_demand_grade (litter, 13.34e6, 534, 0, &basis), ==, HC_LEVEL_SHORT);
  barn_clear (&barn);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
#define ADD(name) g_test_add_func ("/published/directive-1999-74/" #name, test_##name)
  ADD (nine_hens_to_a_square_metre);
  ADD (seven_hens_to_a_nest);
  ADD (a_square_metre_of_group_nest_for_120_hens);
  ADD (fifteen_centimetres_of_perch);
  ADD (a_hair_less_perch_seats_fewer);
  ADD (bars_too_near_count_once);
  ADD (a_bar_too_near_the_wall_does_not_count);
  ADD (ten_centimetres_of_trough);
  ADD (four_centimetres_of_round_feeder);
  ADD (two_and_a_half_centimetres_of_drinking_trough);
  ADD (a_centimetre_of_round_drinker);
  ADD (ten_hens_to_a_nipple);
  ADD (two_metres_of_pop_hole_for_a_thousand);
  ADD (a_pop_hole_too_small_is_none);
  ADD (a_strip_of_thirty_centimetres_counts);
  ADD (floor_needs_headroom);
  ADD (nests_are_not_floor);
  ADD (raised_levels_count);
  ADD (a_slope_of_fourteen_per_cent);
  ADD (litter_on_a_third_of_the_floor);
#undef ADD
  return g_test_run ();
}
