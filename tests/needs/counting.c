/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Counting needs on hand-made houses, under the usual home rules unless a
 * test names others. Figures of the home rules are common practice. */
#include "config.h"

#include "house.h"

static void
start (House *house)
{
  house_init (house);
  house_add_pen (house, "p", HC_PEN_INDOOR, 6000, 4000);
}

static gint64
served (const HcCheck *check, HcNeedId need, HcLevel level)
{
  return hc_check_get_served (check, need, level);
}

/* 20 seats of 18 cm on two bars of 1.8 m, 16 of 22 cm. */
static void
test_every_hen_needs_a_seat (void)
{
  House house;
  g_autoptr (HcCheck) check = NULL;

  start (&house);
  house_add_roost (&house, "p", 3000, 1000, 1800, 800, 2);
  house_add_birds (&house, "medium_layer", "p", 24, 0, -1);
  check = house_check (&house, HC_CONDITION_DAY);
  g_assert_cmpint (served (check, HC_NEED_ROOST, HC_LEVEL_TIGHT), ==, 20);
  g_assert_cmpint (served (check, HC_NEED_ROOST, HC_LEVEL_GOOD), ==, 16);
  g_assert_cmpint (hc_check_get_birds (check, HC_NEED_ROOST), ==, 24);
  g_assert_cmpint (house_find (check, "roost.too-few-seats")->birds, ==, 4);
  g_assert_cmpint (hc_check_get_part_level (check, "p"), ==, HC_LEVEL_SHORT);
  house_clear (&house);
}

/* Heavy birds go no higher than 60 cm, so the high bar is none of theirs. */
static void
test_heavy_birds_are_confined_to_low_bars (void)
{
  House house;
  g_autoptr (HcCheck) check = NULL;
  const HcFinding *finding;

  start (&house);
  house_add_roost (&house, "p", 3000, 1000, 2000, 400, 1)->base_mm = 900;
  house_add_roost (&house, "p", 3000, 2500, 900, 400, 1);
  house_add_birds (&house, "heavy_breed", "p", 8, 0, -1);
  house_add_birds (&house, "light_layer", "p", 2, 0, -1);
  check = house_check (&house, HC_CONDITION_DAY);
  finding = house_find (check, "roost.confined");
  g_assert_nonnull (finding);
  g_assert_cmpint (finding->birds, ==, 4);
  g_assert_cmpstr (finding->ids[0], ==, "f1");
  g_assert_null (finding->ids[1]);
  house_clear (&house);
}

/* Heavy birds go no higher than 60 cm, in comfort no higher than 45 cm. */
static void
test_a_bar_that_is_not_good_is_a_bar (void)
{
  House house;
  g_autoptr (HcCheck) check = NULL;

  start (&house);
  house_add_roost (&house, "p", 3000, 1000, 2000, 400, 1)->base_mm = 600;
  house_add_birds (&house, "heavy_breed", "p", 4, 0, -1);
  check = house_check (&house, HC_CONDITION_DAY);
  g_assert_cmpint (served (check, HC_NEED_ROOST, HC_LEVEL_TIGHT), ==, 4);
  g_assert_cmpint (served (check, HC_NEED_ROOST, HC_LEVEL_GOOD), ==, 0);
  g_assert_null (house_find (check, "roost.none"));
  g_assert_cmpint (house_find (check, "roost.too-few-seats")->birds, ==, 4);
  house_clear (&house);
}

static void
test_narrow_bars_are_told_where_nights_are_hard (void)
{
  House house;
  g_autoptr (HcCheck) mild = NULL;
  g_autoptr (HcCheck) hard = NULL;

  start (&house);
  house_add_roost (&house, "p", 3000, 1000, 3000, 400, 1)->bar_width_mm = 50;
  house_add_birds (&house, "medium_layer", "p", 4, 0, -1);
  mild = house_check (&house, HC_CONDITION_DAY);
  house.site.coldest_night_c = -20;
  hard = house_check (&house, HC_CONDITION_DAY);
  g_assert_null (house_find (mild, "roost.bar-narrow-for-cold"));
  g_assert_nonnull (house_find (hard, "roost.bar-narrow-for-cold"));
  house_clear (&house);
}

static void
test_only_hens_at_lay_need_nests (void)
{
  House house;
  g_autoptr (HcCheck) check = NULL;

  start (&house);
  house_add_nests (&house, "p", 3000, 2000, 3);
  house_add_birds (&house, "medium_layer", "p", 16, 2, -1);
  house_add_birds (&house, "medium_layer", "p", 10, 0, 6);
  check = house_check (&house, HC_CONDITION_DAY);
  g_assert_cmpint (hc_check_get_birds (check, HC_NEED_NESTS), ==, 16);
  g_assert_cmpint (served (check, HC_NEED_NESTS, HC_LEVEL_TIGHT), ==, 15);
  g_assert_cmpint (served (check, HC_NEED_NESTS, HC_LEVEL_GOOD), ==, 12);
  house_clear (&house);
}

/* 1 m of trough, both sides: 20 hens at 10 cm; a round feeder of 30 cm has
 * 94 cm of edge: 23 hens at 4 cm. Council Directive 1999/74/EC, article 4. */
static void
test_long_and_round_feeders_add_up (void)
{
  House house;
  g_autoptr (HcCheck) check = NULL;

  start (&house);
  house.rules.standard = (char *) "eu-laying-hens";
  house_add (&house, "p", HC_FITTING_FEEDER, 2000, 2000, 1000, 150)->form = HC_FORM_LONG;
  house_add (&house, "p", HC_FITTING_FEEDER, 4500, 2000, 300, 300)->form = HC_FORM_ROUND;
  house_add_birds (&house, "medium_layer", "p", 60, 0, -1);
  check = house_check (&house, HC_CONDITION_DAY);
  g_assert_cmpint (served (check, HC_NEED_FEED, HC_LEVEL_TIGHT), ==, 43);
  house_clear (&house);
}

static HcFittingValues *
add_nipples (House *house, int places)
{
  HcFittingValues *line = house_add (house, "p", HC_FITTING_DRINKER, 3000, 2000, 1500, 20);

  line->form = HC_FORM_NIPPLES;
  line->places = places;
  line->base_mm = 300;
  return line;
}

static void
test_one_nipple_is_never_enough (void)
{
  House house;
  g_autoptr (HcCheck) one = NULL;
  g_autoptr (HcCheck) two = NULL;

  start (&house);
  add_nipples (&house, 1);
  house_add_birds (&house, "medium_layer", "p", 3, 0, -1);
  one = house_check (&house, HC_CONDITION_DAY);
  g_assert_cmpint (served (one, HC_NEED_WATER, HC_LEVEL_TIGHT), ==, 0);
  house_clear (&house);
  start (&house);
  add_nipples (&house, 2);
  house_add_birds (&house, "medium_layer", "p", 3, 0, -1);
  two = house_check (&house, HC_CONDITION_DAY);
  g_assert_cmpint (served (two, HC_NEED_WATER, HC_LEVEL_TIGHT), ==, 3);
  house_clear (&house);
}

static void
test_ducks_want_to_dip_their_heads (void)
{
  House house;
  g_autoptr (HcCheck) check = NULL;

  start (&house);
  add_nipples (&house, 10);
  house_add_birds (&house, "duck", "p", 3, 0, -1);
  house_add_birds (&house, "medium_layer", "p", 3, 0, -1);
  check = house_check (&house, HC_CONDITION_DAY);
  g_assert_nonnull (house_find (check, "water.not-head-deep"));
  house_clear (&house);
}

static void
test_unheated_water_freezes_when_shut_in (void)
{
  House house;
  g_autoptr (HcCheck) check = NULL;

  start (&house);
  add_nipples (&house, 10);
  house_add_birds (&house, "medium_layer", "p", 3, 0, -1);
  check = house_check (&house, HC_CONDITION_SHUT_IN);
  g_assert_nonnull (house_find (check, "water.freezes"));
  house_clear (&house);
}

/* 45 cm² a chick: "Poultry Your Way", University of Wisconsin, figure 24. */
static void
test_a_plate_warms_one_chick_for_45_square_centimetres (void)
{
  House house;
  g_autoptr (HcCheck) check = NULL;

  start (&house);
  house_add (&house, "p", HC_FITTING_HEAT_PLATE, 3000, 2000, 300, 300);
  house_add_birds (&house, "medium_layer", "p", 25, 0, 1);
  check = house_check (&house, HC_CONDITION_NIGHT);
  g_assert_cmpint (hc_check_get_birds (check, HC_NEED_WARMTH), ==, 25);
  g_assert_cmpint (served (check, HC_NEED_WARMTH, HC_LEVEL_TIGHT), ==, 20);
  house_clear (&house);
}

static HcCheck *
check_plate (const char *device, double side_mm, int weeks)
{
  House house;
  HcCheck *check;

  start (&house);
  house_add (&house, "p", HC_FITTING_HEAT_PLATE, 3000, 2000, side_mm, side_mm)->device
      = (char *) device;
  house_add_birds (&house, "medium_layer", "p", 40, 0, weeks);
  check = house_check (&house, HC_CONDITION_NIGHT);
  house_clear (&house);
  return check;
}

/* "plate-15" is made for 15 chicks, whatever it measures; the same plate made to
 * measure warms as many as its area says, and so does one that its maker made for
 * more. That makers count so is common practice, no source. */
static void
test_no_heater_warms_more_than_its_maker_says (void)
{
  g_autoptr (HcCheck) bought = check_plate ("plate-15", 400, 1);
  g_autoptr (HcCheck) made = check_plate (NULL, 400, 1);
  g_autoptr (HcCheck) small = check_plate ("plate-50", 300, 1);

  g_assert_cmpint (served (bought, HC_NEED_WARMTH, HC_LEVEL_TIGHT), ==, 15);
  g_assert_nonnull (house_find (bought, "warmth.maker-says-fewer"));
  g_assert_cmpint (served (made, HC_NEED_WARMTH, HC_LEVEL_TIGHT), ==, 35);
  g_assert_null (house_find (made, "warmth.maker-says-fewer"));
  g_assert_cmpint (served (small, HC_NEED_WARMTH, HC_LEVEL_TIGHT), ==, 20);
  g_assert_null (house_find (small, "warmth.maker-says-fewer"));
}

static void
test_chicks_need_a_cool_end (void)
{
  House house;
  g_autoptr (HcCheck) check = NULL;

  house_init (&house);
  house_add_pen (&house, "p", HC_PEN_INDOOR, 1000, 1000);
  house_add (&house, "p", HC_FITTING_FLOOR_HEAT_PAD, 500, 500, 800, 800);
  house_add_birds (&house, "medium_layer", "p", 5, 0, 1);
  check = house_check (&house, HC_CONDITION_DAY);
  g_assert_nonnull (house_find (check, "warmth.no-cool-end"));
  house_clear (&house);
}

static void
test_grown_birds_need_no_heat (void)
{
  House house;
  g_autoptr (HcCheck) check = NULL;

  start (&house);
  house_add_birds (&house, "medium_layer", "p", 5, 0, -1);
  check = house_check (&house, HC_CONDITION_DAY);
  g_assert_false (hc_check_applies (check, HC_NEED_WARMTH));
  house_clear (&house);
}

static void
start_with_run (House *house)
{
  start (house);
  house->site.birds_go_out = TRUE;
  house_add_pen (house, "r", HC_PEN_RUN, 5000, 4000);
}

/* 20 m² of run at 0.93 m² a bird hold 21, at 1.4 m² 14. */
static void
test_a_run_holds_so_many (void)
{
  House house;
  g_autoptr (HcCheck) check = NULL;

  start_with_run (&house);
  house_add_opening (&house, HC_OPENING_POP_HOLE, "p-e", 2000, 400, 450);
  house_add_birds (&house, "medium_layer", "p", 30, 0, -1);
  check = house_check (&house, HC_CONDITION_DAY);
  g_assert_cmpint (served (check, HC_NEED_RUN, HC_LEVEL_TIGHT), ==, 21);
  g_assert_cmpint (served (check, HC_NEED_RUN, HC_LEVEL_GOOD), ==, 14);
  house_clear (&house);
}

static void
test_a_small_pop_hole_lets_no_goose_out (void)
{
  House house;
  g_autoptr (HcCheck) check = NULL;

  start_with_run (&house);
  house_add_opening (&house, HC_OPENING_POP_HOLE, "p-e", 2000, 400, 450);
  house_add_birds (&house, "medium_layer", "p", 3, 0, -1);
  house_add_birds (&house, "goose", "p", 2, 0, -1);
  check = house_check (&house, HC_CONDITION_DAY);
  g_assert_cmpint (hc_check_get_birds (check, HC_NEED_WAY_OUT), ==, 5);
  g_assert_cmpint (served (check, HC_NEED_WAY_OUT, HC_LEVEL_TIGHT), ==, 3);
  house_clear (&house);
}

/* 600 organic hens at six to a square metre, 4 m of pop hole to 100 m²: 4 m.
 * German leaflet on organic poultry, March 2012. */
static void
test_the_way_out_goes_by_the_floor_asked_for (void)
{
  House house;
  g_autoptr (HcCheck) check = NULL;

  house_init (&house);
  house.rules.standard = (char *) "eu-organic";
  house.site.birds_go_out = TRUE;
  house_add_pen (&house, "p", HC_PEN_INDOOR, 20000, 5000);
  for (guint i = 0; i < 10; i++)
    house_add_opening (&house, HC_OPENING_POP_HOLE, "p-n", 1000 + i * 1500, 400, 450);
  house_add_birds (&house, "medium_layer", "p", 601, 0, -1);
  check = house_check (&house, HC_CONDITION_DAY);
  g_assert_cmpint (served (check, HC_NEED_WAY_OUT, HC_LEVEL_TIGHT), ==, 600);
  house_clear (&house);
}

static void
test_birds_without_a_run_need_more_floor (void)
{
  House house;
  g_autoptr (HcCheck) with_run = NULL;
  g_autoptr (HcCheck) without = NULL;

  start_with_run (&house);
  house_add_opening (&house, HC_OPENING_POP_HOLE, "p-e", 2000, 400, 450);
  house_add_birds (&house, "medium_layer", "p", 70, 0, -1);
  with_run = house_check (&house, HC_CONDITION_DAY);
  house.site.birds_go_out = FALSE;
  without = house_check (&house, HC_CONDITION_DAY);
  g_assert_cmpint (served (with_run, HC_NEED_FLOOR, HC_LEVEL_GOOD), ==, 64);
  g_assert_cmpint (served (without, HC_NEED_FLOOR, HC_LEVEL_GOOD), ==, 43);
  house_clear (&house);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/need-roost/every-hen-needs-a-seat", test_every_hen_needs_a_seat);
  g_test_add_func ("/need-roost/heavy-birds-are-confined-to-low-bars",
                   test_heavy_birds_are_confined_to_low_bars);
  g_test_add_func ("/need-roost/a-bar-that-is-not-good-is-a-bar",
                   test_a_bar_that_is_not_good_is_a_bar);
  g_test_add_func ("/need-roost/narrow-bars-are-told-where-nights-are-hard",
                   test_narrow_bars_are_told_where_nights_are_hard);
  g_test_add_func ("/need-nests/only-hens-at-lay-need-nests", test_only_hens_at_lay_need_nests);
  g_test_add_func ("/need-feed/long-and-round-feeders-add-up",
                   test_long_and_round_feeders_add_up);
  g_test_add_func ("/need-water/one-nipple-is-never-enough", test_one_nipple_is_never_enough);
  g_test_add_func ("/need-water/ducks-want-to-dip-their-heads",
                   test_ducks_want_to_dip_their_heads);
  g_test_add_func ("/need-water/unheated-water-freezes-when-shut-in",
                   test_unheated_water_freezes_when_shut_in);
  g_test_add_func ("/need-warmth/a-plate-warms-one-chick-for-45-square-centimetres",
                   test_a_plate_warms_one_chick_for_45_square_centimetres);
  g_test_add_func ("/need-warmth/no-heater-warms-more-than-its-maker-says",
                   test_no_heater_warms_more_than_its_maker_says);
  g_test_add_func ("/need-warmth/chicks-need-a-cool-end", test_chicks_need_a_cool_end);
  g_test_add_func ("/need-warmth/grown-birds-need-no-heat", test_grown_birds_need_no_heat);
  g_test_add_func ("/need-run/a-run-holds-so-many", test_a_run_holds_so_many);
  g_test_add_func ("/need-way-out/a-small-pop-hole-lets-no-goose-out",
                   test_a_small_pop_hole_lets_no_goose_out);
  g_test_add_func ("/need-way-out/it-goes-by-the-floor-asked-for",
                   test_the_way_out_goes_by_the_floor_asked_for);
  g_test_add_func ("/need-floor/birds-without-a-run-need-more-floor",
                   test_birds_without_a_run_need_more_floor);
  return g_test_run ();
}
