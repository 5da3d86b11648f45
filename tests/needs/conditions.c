/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Needs that are right or wrong: light, air, company, clearance. Figures of
 * the home rules are common practice, no source. */
#include "config.h"

#include "house.h"

static void
start (House *house)
{
  house_init (house);
  house_add_pen (house, "p", HC_PEN_INDOOR, 4000, 3000);
}

/* Window area 3 % of the floor: German Livestock Husbandry Ordinance, § 13(3):
 * 0.36 m² for 12 m². */
static void
test_twelve_square_metres_want_a_third_of_a_metre_of_window (void)
{
  House house;
  g_autoptr (HcCheck) dark = NULL;
  g_autoptr (HcCheck) light = NULL;

  start (&house);
  house.rules.standard = (char *) "de-ordinance";
  house_add_birds (&house, "medium_layer", "p", 5, 0, -1);
  house_add_opening (&house, HC_OPENING_WINDOW, "p-n", 2000, 899, 400);
  dark = house_check (&house, HC_CONDITION_DAY);
  g_assert_cmpint (hc_check_get_need_level (dark, HC_NEED_LIGHT), ==, HC_LEVEL_SHORT);
  g_assert_cmpfloat_with_epsilon (house_find (dark, "light.too-little")->required, 360000, 1);
  house_clear (&house);
  start (&house);
  house.rules.standard = (char *) "de-ordinance";
  house_add_birds (&house, "medium_layer", "p", 5, 0, -1);
  house_add_opening (&house, HC_OPENING_WINDOW, "p-n", 2000, 900, 400);
  light = house_check (&house, HC_CONDITION_DAY);
  g_assert_cmpint (hc_check_get_need_level (light, HC_NEED_LIGHT), ==, HC_LEVEL_TIGHT);
  house_clear (&house);
}

/* Light by pens of which something is changed. */
static HcLevel
light_of (House *house)
{
  g_autoptr (HcCheck) check = house_check (house, HC_CONDITION_DAY);
  HcLevel level = hc_check_get_need_level (check, HC_NEED_LIGHT);

  house_clear (house);
  return level;
}

/* Its texts are those of the opening, which must not go first. */
static HcOpeningValues
last_opening (House *house)
{
  return *hc_opening_get (house->openings->pdata[house->openings->len - 1]);
}

static void
change_last_opening (House *house, const HcOpeningValues *values)
{
  guint last = house->openings->len - 1;
  const char *id = hc_opening_get_id (house->openings->pdata[last]);

  g_ptr_array_add (house->openings, hc_opening_new (id, values));
  g_ptr_array_remove_index (house->openings, last);
}

static void
start_dark (House *house)
{
  start (house);
  house_add_birds (house, "medium_layer", "p", 5, 0, -1);
}

static void
test_glass_in_a_door_lets_in_light (void)
{
  House house;

  start_dark (&house);
  house_add_opening (&house, HC_OPENING_KEEPER_DOOR, "p-n", 2000, 900, 1900);
  g_assert_cmpint (light_of (&house), ==, HC_LEVEL_SHORT);
  for (int glazed = 0; glazed <= 1; glazed++)
    {
      HcOpeningValues door;

      start_dark (&house);
      house_add_opening (&house, HC_OPENING_KEEPER_DOOR, "p-n", 2000, 900, 1900);
      door = last_opening (&house);
      door.glazed = glazed;
      change_last_opening (&house, &door);
      g_assert_cmpint (light_of (&house) > HC_LEVEL_SHORT, ==, glazed);
    }
}

/* Netting of which the book says that less than all of it is open. */
static void
test_wire_before_a_window_takes_light (void)
{
  House house;
  HcOpeningValues window;

  start_dark (&house);
  house.rules.standard = (char *) "de-ordinance";
  house_add_opening (&house, HC_OPENING_WINDOW, "p-n", 2000, 900, 400);
  window = last_opening (&house);
  window.mesh = (char *) "cloth_12";
  change_last_opening (&house, &window);
  g_assert_cmpint (light_of (&house), ==, HC_LEVEL_SHORT);
}

static void
rebuild (House *house, const char *roof, const char *wall)
{
  HcPenValues pen = *hc_pen_get (house->pens->pdata[0]);
  g_autoptr (HcPen) before = hc_pen_ref (house->pens->pdata[0]);
  HcWallValues values = *hc_wall_get (house->walls->pdata[0]);
  g_autoptr (HcWall) wall_before = hc_wall_ref (house->walls->pdata[0]);

  pen.roof_construction = (char *) roof;
  values.construction = (char *) wall;
  g_ptr_array_remove_index (house->pens, 0);
  g_ptr_array_insert (house->pens, 0, hc_pen_new (hc_pen_get_id (before), &pen));
  g_ptr_array_remove_index (house->walls, 0);
  g_ptr_array_insert (house->walls, 0, hc_wall_new (hc_wall_get_id (wall_before), &values));
}

static void
test_clear_roofs_and_glass_walls_let_in_light (void)
{
  static const struct
  {
    const char *roof, *wall;
    gboolean light;
  } built[] = { { "steel_roof", "board_wall", FALSE },
                { "clear_roof", "board_wall", TRUE },
                { "steel_roof", "glass_wall", TRUE } };

  for (guint i = 0; i < G_N_ELEMENTS (built); i++)
    {
      House house;

      start_dark (&house);
      rebuild (&house, built[i].roof, built[i].wall);
      g_assert_cmpint (light_of (&house) > HC_LEVEL_SHORT, ==, built[i].light);
    }
}

static House *
bed (House *house, const char *pen, double depth_mm)
{
  for (guint i = 0; i < house->pens->len; i++)
    {
      HcPenValues values = *hc_pen_get (house->pens->pdata[i]);
      g_autoptr (HcPen) before = house->pens->pdata[i];

      if (g_str_equal (hc_pen_get_id (before), pen))
        {
          values.bedding = (char *) "shavings";
          values.bedding_mm = depth_mm;
        }
      house->pens->pdata[i] = hc_pen_new (hc_pen_get_id (before), &values);
    }
  return house;
}

/* Pens of 4 m² and of the width given, joined by day; only the first is bedded. */
static void
test_a_third_of_the_floor_is_bedded (void)
{
  static const double widths_mm[] = { 3990, 4010 };

  g_test_summary ("Directive 1999/74/EC by the French order of 1 February 2002, article 3 "
                  "(1°)(e): a third of the floor is covered with litter");
  for (guint i = 0; i < G_N_ELEMENTS (widths_mm); i++)
    {
      House house;
      g_autoptr (HcCheck) check = NULL;

      house_init (&house);
      house.rules.standard = (char *) "eu-laying-hens";
      house_add_pen (&house, "p", HC_PEN_INDOOR, 2000, 2000);
      house_add_pen (&house, "q", HC_PEN_INDOOR, widths_mm[i], 2000);
      house_add_opening (&house, HC_OPENING_POP_HOLE, "p-e", 1000, 400, 400);
      house_add_birds (&house, "medium_layer", "p", 10, 0, -1);
      check = house_check (bed (&house, "p", 100), HC_CONDITION_DAY);
      if (i == 0)
        g_assert_null (house_find (check, "litter.too-little"));
      else
        g_assert_nonnull (house_find (check, "litter.too-little"));
      house_clear (&house);
    }
}

/* Common practice, no source: shavings less than 5 cm deep are soon wet. */
static void
test_thin_bedding_is_worth_topping_up (void)
{
  static const double depths_mm[] = { 49, 50 };

  for (guint i = 0; i < G_N_ELEMENTS (depths_mm); i++)
    {
      House house;
      g_autoptr (HcCheck) check = NULL;

      start (&house);
      house_add_birds (&house, "medium_layer", "p", 5, 0, -1);
      check = house_check (bed (&house, "p", depths_mm[i]), HC_CONDITION_DAY);
      g_assert_true ((house_find (check, "litter.thin") != NULL) == (i == 0));
      g_assert_null (house_find (check, "litter.none"));
      house_clear (&house);
    }
}

static void
test_a_bare_floor_is_told (void)
{
  House house;
  g_autoptr (HcCheck) check = NULL;

  start (&house);
  house_add_birds (&house, "medium_layer", "p", 5, 0, -1);
  check = house_check (&house, HC_CONDITION_DAY);
  g_assert_nonnull (house_find (check, "litter.none"));
  house_clear (&house);
}

static void
test_a_house_without_vents_is_short_of_air (void)
{
  House house;
  g_autoptr (HcCheck) check = NULL;

  start (&house);
  house_add_birds (&house, "medium_layer", "p", 5, 0, -1);
  check = house_check (&house, HC_CONDITION_DAY);
  g_assert_nonnull (house_find (check, "air.winter-vents"));
  g_assert_nonnull (house_find (check, "air.summer-vents"));
  g_assert_cmpint (hc_check_get_need_level (check, HC_NEED_AIR), ==, HC_LEVEL_SHORT);
  house_clear (&house);
}

/* Birds of a test, and the finding they make. */
typedef struct
{
  const char *kinds[2];
  int females[2], males[2], weeks[2];
  const char *pen;
  const char *code;
} Company;

static const Company companies[] = {
  { { "medium_layer", NULL }, { 1, 0 }, { 0, 0 }, { -1, 0 }, "p", "company.lonely" },
  { { "medium_layer", NULL }, { 6, 0 }, { 4, 0 }, { -1, 0 }, "p", "company.too-many-males" },
  { { "medium_layer", NULL }, { 30, 0 }, { 1, 0 }, { -1, 0 }, "p", "company.too-few-males" },
  { { "medium_layer", "medium_layer" }, { 6, 6 }, { 0, 0 }, { -1, 5 }, "p",
    "company.too-young" },
  { { "medium_layer", "duck" }, { 6, 0 }, { 0, 3 }, { -1, -1 }, "p",
    "company.drakes-with-hens" },
  { { "medium_layer", "duck" }, { 6, 3 }, { 0, 1 }, { -1, -1 }, "p", "company.ducks-splash" },
  { { "medium_layer", NULL }, { 6, 0 }, { 0, 0 }, { -1, 0 }, "", "company.no-home" },
  { { "medium_layer", NULL }, { 9, 0 }, { 1, 0 }, { -1, 0 }, "p", NULL },
};

static void
test_company (gconstpointer data)
{
  const Company *company = data;
  House house;
  g_autoptr (HcCheck) check = NULL;

  start (&house);
  for (guint i = 0; i < 2 && company->kinds[i] != NULL; i++)
    house_add_birds (&house, company->kinds[i], company->pen, company->females[i],
                     company->males[i], company->weeks[i]);
  check = house_check (&house, HC_CONDITION_DAY);
  if (company->code != NULL)
    g_assert_nonnull (house_find (check, company->code));
  else
    g_assert_cmpuint (hc_check_get_n_findings (check, HC_NEED_COMPANY), ==, 0);
  house_clear (&house);
}

/* Birds of one group came that many days ago to a pen; others live in it, or
 * beside it. */
static HcCheck *
check_new_birds (guint days, const char *pen, gboolean furnished)
{
  House house;
  HcBatchValues values;
  g_autoptr (HcBatch) before = NULL;
  HcCheck *check;

  start (&house);
  house_add_pen (&house, "q", HC_PEN_INDOOR, 2000, 3000);
  if (furnished)
    {
      house_add (&house, "q", HC_FITTING_FEEDER, 4500, 500, 400, 200);
      house_add (&house, "q", HC_FITTING_DRINKER, 5500, 2500, 300, 300);
    }
  house_add_birds (&house, "medium_layer", "p", 6, 0, -1);
  house_add_birds (&house, "medium_layer", pen, 3, 0, -1);
  before = house.batches->pdata[1];
  values = *hc_batch_get (before);
  values.came = HOUSE_TODAY - days;
  house.batches->pdata[1] = hc_batch_new (hc_batch_get_id (before), &values);
  check = house_check (&house, HC_CONDITION_DAY);
  house_clear (&house);
  return check;
}

/* Advice on keeping diseases out: 30 days apart; the book names it. */
static void
test_new_birds_are_kept_apart_for_thirty_days (void)
{
  g_autoptr (HcCheck) new = check_new_birds (29, "p", FALSE);
  g_autoptr (HcCheck) old = check_new_birds (30, "p", FALSE);
  g_autoptr (HcCheck) apart = check_new_birds (1, "q", FALSE);

  g_assert_cmpint (house_find (new, "company.new-birds")->birds, ==, 3);
  g_assert_null (house_find (old, "company.new-birds"));
  g_assert_null (house_find (apart, "company.new-birds"));
}

static void
test_a_free_pen_is_named_to_new_birds (void)
{
  g_autoptr (HcCheck) check = check_new_birds (1, "p", TRUE);
  const HcFinding *finding = house_find (check, "company.new-birds-beside-a-free-pen");

  g_assert_nonnull (finding);
  g_assert_cmpstr (finding->ids[1], ==, "q");
}

static void
test_local_rules_are_what_the_keeper_entered (void)
{
  static const int allowed[] = { 0, 8, 7 };

  for (guint i = 0; i < G_N_ELEMENTS (allowed); i++)
    {
      House house;
      g_autoptr (HcCheck) check = NULL;

      start (&house);
      house.site.birds_allowed = allowed[i];
      house.site.males_allowed = i == 0 ? -1 : 0;
      house_add_birds (&house, "medium_layer", "p", 7, 1, -1);
      check = house_check (&house, HC_CONDITION_DAY);
      g_assert_cmpint (hc_check_applies (check, HC_NEED_SITE_RULES), ==, i > 0);
      g_assert_cmpint (house_find (check, "site-rules.too-many-birds") != NULL, ==, i == 2);
      g_assert_cmpint (house_find (check, "site-rules.too-many-males") != NULL, ==, i > 0);
      house_clear (&house);
    }
}

static void
overlap (House *house)
{
  house_add (house, "p", HC_FITTING_STORE_BIN, 2000, 1500, 400, 400);
  house_add (house, "p", HC_FITTING_STORE_BIN, 2300, 1500, 400, 400);
}

static void
stand_one_above_another (House *house)
{
  house_add (house, "p", HC_FITTING_STORE_BIN, 2000, 1500, 400, 400);
  house_add (house, "p", HC_FITTING_PLATFORM, 2000, 1500, 400, 400)->base_mm = 600;
}

static void
go_through_a_wall (House *house)
{
  house_add (house, "p", HC_FITTING_STORE_BIN, 100, 1500, 400, 400);
}

static void
reach_the_roof (House *house)
{
  house_add (house, "p", HC_FITTING_STORE_BIN, 2000, 1500, 400, 400)->height_mm = 2300;
}

static void
block_the_door (House *house)
{
  house_add_opening (house, HC_OPENING_KEEPER_DOOR, "p-n", 2000, 800, 1900);
  house_add (house, "p", HC_FITTING_STORE_BIN, 2000, 500, 400, 400);
}

/* A gate of a fence swings in as one of a house does. */
static void
block_the_gate (House *house)
{
  house_add_pen (house, "r", HC_PEN_RUN, 4000, 3000);
  house_add_opening (house, HC_OPENING_KEEPER_DOOR, "r-n", 2000, 800, 1700);
  house_add (house, "r", HC_FITTING_STORE_BIN, 6000, 500, 400, 400);
}

static void
open_the_gate_outwards (House *house)
{
  HcOpeningValues gate;

  block_the_gate (house);
  gate = last_opening (house);
  gate.swing = HC_SWING_OUT;
  change_last_opening (house, &gate);
}

static void
block_the_pop_hole (House *house)
{
  house_add_opening (house, HC_OPENING_POP_HOLE, "p-n", 2000, 300, 350);
  house_add (house, "p", HC_FITTING_STORE_BIN, 2000, 250, 400, 400);
}

static void
stick_out_of_the_wall (House *house)
{
  house_add_opening (house, HC_OPENING_WINDOW, "p-n", 100, 600, 400);
}

static void
share_a_wall (House *house)
{
  house_add_opening (house, HC_OPENING_WINDOW, "p-n", 2000, 600, 400);
  house_add_opening (house, HC_OPENING_WINDOW, "p-n", 2400, 600, 400);
}

static void
feed_under_bars (House *house)
{
  house_add_roost (house, "p", 2000, 1000, 2000, 800, 2);
  house_add (house, "p", HC_FITTING_FEEDER, 2000, 1000, 600, 200);
}

static void
feed_under_a_board (House *house)
{
  feed_under_bars (house);
  house_add (house, "p", HC_FITTING_DROPPINGS_BOARD, 2000, 1000, 2000, 800)->base_mm = 400;
}

static void
nest_as_high_as_bars (House *house)
{
  house_add_roost (house, "p", 2000, 1000, 2000, 400, 1)->base_mm = 300;
  house_add_nests (house, "p", 2000, 2500, 2)->base_mm = 300;
}

static void
water_beside_feed (House *house)
{
  house_add (house, "p", HC_FITTING_FEEDER, 1000, 1500, 400, 200);
  house_add (house, "p", HC_FITTING_DRINKER, 1700, 1500, 400, 200);
}

static void
hang_a_lamp_low (House *house)
{
  house_add (house, "p", HC_FITTING_HEAT_LAMP, 2000, 1500, 250, 250)->base_mm = 400;
}

/* A way to set up a room, and the finding it makes or must not make. */
typedef struct
{
  const char *name;
  void (*set_up) (House *house);
  const char *code;
  gboolean found;
} Clearance;

static const Clearance clearances[] = {
  { "things-overlap", overlap, "clearance.overlap", TRUE },
  { "one-stands-above-another", stand_one_above_another, "clearance.overlap", FALSE },
  { "through-a-wall", go_through_a_wall, "clearance.through-wall", TRUE },
  { "through-the-roof", reach_the_roof, "clearance.too-tall", TRUE },
  { "a-door-is-blocked", block_the_door, "clearance.door-blocked", TRUE },
  { "a-gate-is-blocked", block_the_gate, "clearance.door-blocked", TRUE },
  { "a-gate-swings-out", open_the_gate_outwards, "clearance.door-blocked", FALSE },
  { "a-pop-hole-is-blocked", block_the_pop_hole, "clearance.pop-hole-blocked", TRUE },
  { "an-opening-sticks-out", stick_out_of_the_wall, "clearance.opening-sticks-out", TRUE },
  { "openings-overlap", share_a_wall, "clearance.openings-overlap", TRUE },
  { "feed-under-bars", feed_under_bars, "clearance.under-bars", TRUE },
  { "feed-under-a-board", feed_under_a_board, "clearance.under-bars", FALSE },
  { "a-nest-as-high-as-bars", nest_as_high_as_bars, "clearance.nest-too-high", TRUE },
  { "water-beside-feed", water_beside_feed, "clearance.feed-near-water", TRUE },
  { "a-lamp-hangs-low", hang_a_lamp_low, "clearance.lamp-too-low", TRUE },
};

static void
test_clearance (gconstpointer data)
{
  const Clearance *clearance = data;
  House house;
  g_autoptr (HcCheck) check = NULL;

  start (&house);
  clearance->set_up (&house);
  house_add_birds (&house, "medium_layer", "p", 4, 0, -1);
  check = house_check (&house, HC_CONDITION_DAY);
  g_assert_cmpint (house_find (check, clearance->code) != NULL, ==, clearance->found);
  house_clear (&house);
}

static void
test_a_long_house_is_a_long_walk (void)
{
  House house;
  g_autoptr (HcCheck) check = NULL;

  house_init (&house);
  house_add_pen (&house, "p", HC_PEN_INDOOR, 12000, 3000);
  house_add (&house, "p", HC_FITTING_FEEDER, 500, 500, 400, 200);
  house_add (&house, "p", HC_FITTING_DRINKER, 6000, 1500, 400, 200);
  house_add_birds (&house, "medium_layer", "p", 4, 0, -1);
  check = house_check (&house, HC_CONDITION_DAY);
  g_assert_cmpint (house_find (check, "clearance.far-from-feed")->level, ==, HC_LEVEL_SHORT);
  g_assert_cmpint (house_find (check, "clearance.far-from-water")->level, ==, HC_LEVEL_TIGHT);
  house_clear (&house);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/need-litter/a-third-of-the-floor-is-bedded",
                   test_a_third_of_the_floor_is_bedded);
  g_test_add_func ("/need-litter/thin-bedding-is-worth-topping-up",
                   test_thin_bedding_is_worth_topping_up);
  g_test_add_func ("/need-litter/a-bare-floor-is-told", test_a_bare_floor_is_told);
  g_test_add_func ("/need-light/twelve-square-metres-want-a-third-of-a-metre-of-window",
                   test_twelve_square_metres_want_a_third_of_a_metre_of_window);
  g_test_add_func ("/need-light/glass-in-a-door-lets-in-light",
                   test_glass_in_a_door_lets_in_light);
  g_test_add_func ("/need-light/wire-before-a-window-takes-light",
                   test_wire_before_a_window_takes_light);
  g_test_add_func ("/need-light/clear-roofs-and-glass-walls-let-in-light",
                   test_clear_roofs_and_glass_walls_let_in_light);
  g_test_add_func ("/need-air/a-house-without-vents-is-short-of-air",
                   test_a_house_without_vents_is_short_of_air);
  for (guint i = 0; i < G_N_ELEMENTS (companies); i++)
    {
      g_autofree char *path = g_strconcat (
          "/need-company/", companies[i].code != NULL ? companies[i].code : "all-is-well", NULL);

      g_test_add_data_func (path, &companies[i], test_company);
    }
  g_test_add_func ("/need-company/new-birds-are-kept-apart-for-thirty-days",
                   test_new_birds_are_kept_apart_for_thirty_days);
  g_test_add_func ("/need-company/a-free-pen-is-named-to-new-birds",
                   test_a_free_pen_is_named_to_new_birds);
  g_test_add_func ("/need-site-rules/local-rules-are-what-the-keeper-entered",
                   test_local_rules_are_what_the_keeper_entered);
  for (guint i = 0; i < G_N_ELEMENTS (clearances); i++)
    {
      g_autofree char *path = g_strconcat ("/need-clearance/", clearances[i].name, NULL);

      g_test_add_data_func (path, &clearances[i], test_clearance);
    }
  g_test_add_func ("/need-clearance/a-long-house-is-a-long-walk",
                   test_a_long_house_is_a_long_walk);
  return g_test_run ();
}
