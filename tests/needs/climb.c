/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Up and down. Figures of the home rules: the long hop after a trial of landings
 * (British Poultry Science, 2014), the widest gap after another (Applied Animal
 * Behaviour Science, 2004); the rest common practice, no source. */
#include "config.h"

#include "house.h"

#define ROOM_W 4000
#define ROOM_D 3000

static void
start (House *house)
{
  house_init (house);
  house_add_pen (house, "p", HC_PEN_INDOOR, ROOM_W, ROOM_D);
}

/* One bar, away from the walls. */
static HcFittingValues *
add_bar (House *house, double y_mm, double height_mm)
{
  HcFittingValues *roost = house_add_roost (house, "p", 2000, y_mm, 2000, 90, 1);

  roost->base_mm = height_mm;
  return roost;
}

static HcFittingValues *
add_steps (House *house, int bars, double base_mm, double rise_mm)
{
  HcFittingValues *roost = house_add_roost (house, "p", 2000, 800, 1000, 300 * bars, bars);

  roost->base_mm = base_mm;
  roost->rise_mm = rise_mm;
  return roost;
}

/* A platform whose top is @height_mm, and a bar @gap_mm behind it. */
static void
add_bar_behind_platform (House *house, double height_mm, double gap_mm, double bar_mm)
{
  HcFittingValues *platform
      = house_add (house, "p", HC_FITTING_PLATFORM, 2000, 2000, 2000, 400);

  platform->base_mm = height_mm - 20;
  platform->height_mm = 20;
  add_bar (house, 1800 - gap_mm - 45, bar_mm);
}

static void
add_ramp (House *house, double head_y_mm, double run_mm, double height_mm, double across_mm)
{
  house_add (house, "p", HC_FITTING_RAMP, 2000, head_y_mm + run_mm / 2, across_mm, run_mm)
      ->height_mm = height_mm;
}

static void
set_floor (House *house, const char *layer, double bedding_mm)
{
  HcPenValues values = *hc_pen_get (house->pens->pdata[0]);
  g_autoptr (HcPen) before = house->pens->pdata[0];

  values.floor_layers = (char *[]){ (char *) layer, NULL };
  values.bedding = (char *) "shavings";
  values.bedding_mm = bedding_mm;
  house->pens->pdata[0] = hc_pen_new (hc_pen_get_id (before), &values);
}

static void
add_sill (House *house, double sill_mm)
{
  HcOpeningValues values;
  g_autoptr (HcOpening) before = NULL;

  house_add_opening (house, HC_OPENING_POP_HOLE, "p-n", 2000, 450, 450);
  before = house->openings->pdata[0];
  values = *hc_opening_get (before);
  values.sill_mm = sill_mm;
  house->openings->pdata[0] = hc_opening_new (hc_opening_get_id (before), &values);
}

/* Bins all along a bar of 50 cm, @clear_mm before it; behind it is the wall. */
static void
add_bins_before_bar (House *house, double clear_mm, double width_mm)
{
  add_bar (house, 300, 500);
  house_add (house, "p", HC_FITTING_STORE_BIN, 1000 + width_mm / 2, 345 + clear_mm + 200,
             width_mm, 400)
      ->height_mm = 900;
}

static void
ordinary_steps (House *house)
{
  add_steps (house, 3, 400, 300);
}

static void
bar_of_450 (House *house)
{
  add_bar (house, 1500, 450);
}

static void
bar_of_600 (House *house)
{
  add_bar (house, 1500, 600);
}

static void
bar_of_850 (House *house)
{
  add_bar (house, 1500, 850);
}

static void
bar_of_1000 (House *house)
{
  add_bar (house, 1500, 1000);
}

static void
bar_of_1001 (House *house)
{
  add_bar (house, 1500, 1001);
}

static void
steps_of_450 (House *house)
{
  add_steps (house, 2, 400, 450);
}

static void
steps_of_451 (House *house)
{
  add_steps (house, 2, 400, 451);
}

static void
a_gap_of_801 (House *house)
{
  add_bar_behind_platform (house, 400, 801, 850);
}

static void
a_gap_of_800 (House *house)
{
  add_bar_behind_platform (house, 400, 800, 850);
}

static void
a_long_hop_of_501 (House *house)
{
  add_bar_behind_platform (house, 400, 501, 901);
}

static void
a_short_hop_of_451 (House *house)
{
  add_bar_behind_platform (house, 400, 500, 851);
}

static void
clear_by_a_share_of_the_drop (House *house)
{
  add_bins_before_bar (house, 375, 2000);
}

static void
not_clear (House *house)
{
  add_bins_before_bar (house, 374, 2000);
}

static void
clear_beside_the_bins (House *house)
{
  add_bins_before_bar (house, 0, 1700);
}

static void
not_wide_enough_beside_the_bins (House *house)
{
  add_bins_before_bar (house, 0, 1701);
}

static void
a_hard_floor (House *house)
{
  set_floor (house, "concrete", 99);
  add_bar (house, 1500, 750);
}

static void
a_bedded_hard_floor (House *house)
{
  set_floor (house, "concrete", 100);
  add_bar (house, 1500, 750);
}

static void
a_hard_floor_far_down (House *house)
{
  set_floor (house, "concrete", 0);
  add_bar (house, 1500, 600);
}

static void
a_ramp_to_a_high_bar (House *house)
{
  bar_of_850 (house);
  add_ramp (house, 1545, 1300, 850, 300);
}

static void
a_narrow_ramp (House *house)
{
  bar_of_850 (house);
  add_ramp (house, 1545, 1300, 850, 199);
}

static void
a_steep_ramp (House *house)
{
  bar_of_850 (house);
  add_ramp (house, 1545, 849, 850, 300);
}

static void
a_sill_of_15_cm (House *house)
{
  add_sill (house, 150);
}

static void
a_sill_of_30_cm (House *house)
{
  add_sill (house, 300);
}

static void
a_ramp_to_the_sill (House *house)
{
  a_sill_of_30_cm (house);
  add_ramp (house, 0, 1200, 300, 400);
}

static void
a_ramp_to_the_sill_too_steep_for_ducks (House *house)
{
  a_sill_of_30_cm (house);
  add_ramp (house, 0, 600, 300, 400);
}

static void
a_low_bar_and_a_high_one (House *house)
{
  add_bar (house, 600, 450);
  add_bar (house, 2200, 600);
}

static void
a_low_bar_and_one_of_no_use (House *house)
{
  add_bar (house, 600, 450);
  add_bar (house, 2200, 850);
}

static void
nests_as_high_as_a_hen_hops (House *house)
{
  house_add_nests (house, "p", 2000, 1500, 3)->base_mm = 1000;
}

static void
nests_too_high (House *house)
{
  house_add_nests (house, "p", 2000, 1500, 3)->base_mm = 1001;
}

static void
nests_that_face_the_wall (House *house)
{
  house_add_nests (house, "p", 2000, 400, 3)->turn_deg = 180;
}

/* @code is %NULL where nothing is found. */
typedef struct
{
  const char *name;
  const char *kind;
  void (*set_up) (House *house);
  const char *code;
  HcLevel level;
  double measured;
  double required;
} Way;

static const Way ways[] = {
  { "ordinary-steps-of-30-cm", "medium_layer", ordinary_steps, NULL },
  { "ordinary-steps-for-heavy-hens", "heavy_breed", ordinary_steps, NULL },
  { "a-bar-of-45-cm-for-heavy-hens", "heavy_breed", bar_of_450, NULL },
  { "a-bar-of-60-cm-for-heavy-hens", "heavy_breed", bar_of_600, "climb.first-step",
    HC_LEVEL_TIGHT, 600, 450 },
  { "a-bar-of-60-cm-for-other-hens", "medium_layer", bar_of_600, NULL },
  { "a-bar-of-85-cm-for-heavy-hens", "heavy_breed", bar_of_850, "climb.first-step",
    HC_LEVEL_SHORT, 850, 600 },
  { "a-bar-of-1-m", "light_layer", bar_of_1000, "climb.first-step", HC_LEVEL_TIGHT, 1000, 750 },
  { "a-bar-of-more-than-1-m", "light_layer", bar_of_1001, "climb.first-step", HC_LEVEL_SHORT,
    1001, 1000 },
  { "steps-of-45-cm", "heavy_breed", steps_of_450, "climb.between-bars", HC_LEVEL_TIGHT, 450,
    350 },
  { "steps-of-more-than-45-cm", "heavy_breed", steps_of_451, "climb.between-bars",
    HC_LEVEL_SHORT, 451, 450 },
  { "a-short-hop-of-more-than-45-cm", "heavy_breed", a_short_hop_of_451, "climb.step",
    HC_LEVEL_SHORT, 451, 450 },
  { "a-long-hop-of-more-than-50-cm", "heavy_breed", a_long_hop_of_501, "climb.step",
    HC_LEVEL_SHORT, 501, 500 },
  { "a-gap-of-80-cm-is-hopped", "heavy_breed", a_gap_of_800, "climb.step", HC_LEVEL_TIGHT, 450,
    400 },
  { "a-wider-gap-is-not", "heavy_breed", a_gap_of_801, "climb.first-step", HC_LEVEL_SHORT, 850,
    600 },
  { "clear-by-three-quarters-of-the-drop", "medium_layer", clear_by_a_share_of_the_drop,
    "climb.landing", HC_LEVEL_TIGHT, 375, 500 },
  { "not-clear-to-land-on", "medium_layer", not_clear, "climb.landing", HC_LEVEL_SHORT, 374,
    375 },
  { "clear-beside-what-stands-there", "medium_layer", clear_beside_the_bins, NULL },
  { "not-wide-enough-beside-it", "medium_layer", not_wide_enough_beside_the_bins,
    "climb.landing", HC_LEVEL_SHORT, 0, 375 },
  { "a-hard-floor", "medium_layer", a_hard_floor, "climb.drop-hard", HC_LEVEL_TIGHT, 750, 750 },
  { "a-hard-floor-well-bedded", "medium_layer", a_bedded_hard_floor, NULL },
  { "up-but-not-down-unhurt", "heavy_breed", a_hard_floor_far_down, "climb.drop-hard",
    HC_LEVEL_SHORT, 600, 600 },
  { "a-ramp-lifts-the-step", "heavy_breed", a_ramp_to_a_high_bar, NULL },
  { "a-narrow-ramp", "heavy_breed", a_narrow_ramp, "climb.narrow", HC_LEVEL_SHORT, 199, 200 },
  { "a-steep-ramp", "heavy_breed", a_steep_ramp, "climb.steep", HC_LEVEL_SHORT, 45.03, 45 },
  { "a-sill-ducks-step-over", "duck", a_sill_of_15_cm, "climb.first-step", HC_LEVEL_TIGHT, 150,
    100 },
  { "a-sill-ducks-do-not-step-over", "duck", a_sill_of_30_cm, "climb.first-step",
    HC_LEVEL_SHORT, 300, 150 },
  { "a-sill-hens-hop-over", "medium_layer", a_sill_of_30_cm, NULL },
  { "a-ramp-to-the-sill", "duck", a_ramp_to_the_sill, NULL },
  { "a-ramp-too-steep-for-ducks", "duck", a_ramp_to_the_sill_too_steep_for_ducks, "climb.steep",
    HC_LEVEL_SHORT, 26.57, 25 },
  { "enough-seats-elsewhere", "heavy_breed", a_low_bar_and_a_high_one, NULL },
  { "a-roost-of-no-use-to-anyone", "heavy_breed", a_low_bar_and_one_of_no_use,
    "climb.first-step", HC_LEVEL_SHORT, 850, 600 },
  { "nests-a-hen-hops-up-to", "light_layer", nests_as_high_as_a_hen_hops, "climb.first-step",
    HC_LEVEL_TIGHT, 1000, 750 },
  { "nests-too-high", "light_layer", nests_too_high, "climb.first-step", HC_LEVEL_SHORT, 1001,
    1000 },
  { "nests-that-face-the-wall", "light_layer", nests_that_face_the_wall, NULL },
};

static HcCheck *
check_way (const Way *way)
{
  House house;
  HcCheck *check;

  start (&house);
  way->set_up (&house);
  house_add_birds (&house, way->kind, "p", 4, 0, -1);
  check = house_check (&house, HC_CONDITION_DAY);
  house_clear (&house);
  return check;
}

static void
test_way (gconstpointer data)
{
  const Way *way = data;
  g_autoptr (HcCheck) check = check_way (way);
  const HcFinding *finding;

  if (way->code == NULL)
    {
      g_assert_cmpuint (hc_check_get_n_findings (check, HC_NEED_CLIMB), ==, 0);
      return;
    }
  finding = house_find (check, way->code);
  g_assert_nonnull (finding);
  g_assert_cmpint (finding->level, ==, way->level);
  g_assert_cmpint (hc_check_get_need_level (check, HC_NEED_CLIMB), ==, way->level);
  g_assert_cmpint (finding->birds, ==, 4);
  g_assert_cmpfloat_with_epsilon (finding->measured, way->measured, 0.01);
  g_assert_cmpfloat_with_epsilon (finding->required, way->required, 0.01);
}

static void
test_the_strip_to_land_on_is_in_the_finding (void)
{
  const Way way = { "", "medium_layer", not_clear };
  g_autoptr (HcCheck) check = check_way (&way);
  const HcFinding *finding = house_find (check, "climb.landing");
  HcBox box = hc_shape_get_bounds (finding->area);

  g_assert_cmpfloat_with_epsilon (box.x_mm, 1000, 0.01);
  g_assert_cmpfloat_with_epsilon (box.width_mm, 2000, 0.01);
  g_assert_cmpfloat_with_epsilon (box.y_mm, 345, 0.01);
  g_assert_cmpfloat_with_epsilon (box.depth_mm, 375, 0.01);
}

static void
test_what_is_in_the_way_is_named (void)
{
  const Way way = { "", "medium_layer", not_clear };
  g_autoptr (HcCheck) check = check_way (&way);
  const HcFinding *finding = house_find (check, "climb.landing");

  g_assert_cmpstr (finding->ids[0], ==, "f0");
  g_assert_cmpstr (finding->ids[1], ==, "f1");
}

static void
test_kinds_share_a_finding (void)
{
  House house;
  g_autoptr (HcCheck) check = NULL;

  start (&house);
  bar_of_1001 (&house);
  house_add_birds (&house, "medium_layer", "p", 4, 0, -1);
  house_add_birds (&house, "heavy_breed", "p", 3, 1, -1);
  check = house_check (&house, HC_CONDITION_DAY);
  g_assert_cmpuint (hc_check_get_n_findings (check, HC_NEED_CLIMB), ==, 1);
  g_assert_cmpint (house_find (check, "climb.first-step")->birds, ==, 8);
  house_clear (&house);
}

/* Growers of twelve weeks hop as heavy hens do, a judgement. */
static void
test_young_birds_hop_less_far (void)
{
  const int weeks[] = { 11, 12 };

  for (guint i = 0; i < G_N_ELEMENTS (weeks); i++)
    {
      House house;
      g_autoptr (HcCheck) check = NULL;

      start (&house);
      bar_of_600 (&house);
      house_add_birds (&house, "medium_layer", "p", 4, 0, weeks[i]);
      check = house_check (&house, HC_CONDITION_DAY);
      g_assert_cmpint (house_find (check, "climb.first-step") != NULL, ==, i == 0);
      house_clear (&house);
    }
}

static void
add_anything (House *house, HcFittingKind kind)
{
  HcFittingValues *thing = house_add (house, "p", kind, g_test_rand_int_range (300, ROOM_W - 300),
                                      g_test_rand_int_range (300, ROOM_D - 300),
                                      g_test_rand_int_range (300, 1500),
                                      g_test_rand_int_range (100, 600));

  thing->turn_deg = g_test_rand_int_range (0, 24) * 15;
  thing->base_mm = kind == HC_FITTING_STORE_BIN ? 0 : g_test_rand_int_range (0, 1200);
  if (kind == HC_FITTING_ROOST)
    {
      thing->bars = g_test_rand_int_range (1, 4);
      thing->bar_width_mm = 60;
      thing->rise_mm = g_test_rand_int_range (0, 500);
    }
  if (kind == HC_FITTING_NEST_BOXES)
    thing->columns = thing->rows = g_test_rand_int_range (1, 3);
}

static void
furnish_at_random (House *house)
{
  static const HcFittingKind kinds[]
      = { HC_FITTING_ROOST, HC_FITTING_ROOST, HC_FITTING_NEST_BOXES, HC_FITTING_PLATFORM,
          HC_FITTING_DROPPINGS_BOARD, HC_FITTING_STORE_BIN };

  start (house);
  if (g_test_rand_bit ())
    set_floor (house, "concrete", g_test_rand_int_range (0, 150));
  for (guint i = 0; i < G_N_ELEMENTS (kinds); i++)
    add_anything (house, kinds[i]);
  house_add_birds (house, "medium_layer", "p", 6, 1, -1);
  house_add_birds (house, "heavy_breed", "p", 4, 1, -1);
  house_add_birds (house, "bantam", "p", 4, 0, 10);
}

static HcLevel
get_level (const House *house)
{
  g_autoptr (HcCheck) check = house_check (house, HC_CONDITION_DAY);

  return hc_check_get_need_level (check, HC_NEED_CLIMB);
}

/* A ramp birds walk up at ease, from the floor. */
static void
add_good_ramp (House *house)
{
  HcFittingValues *ramp
      = house_add (house, "p", HC_FITTING_RAMP, g_test_rand_int_range (500, ROOM_W - 500),
                   g_test_rand_int_range (500, ROOM_D - 500), 400,
                   g_test_rand_int_range (800, 2000));

  ramp->turn_deg = g_test_rand_int_range (0, 24) * 15;
  ramp->height_mm = ramp->depth_mm / 2;
}

static void
test_a_ramp_more_never_makes_it_worse (void)
{
  for (int i = 0; i < 200; i++)
    {
      House house;
      HcLevel before;

      furnish_at_random (&house);
      before = get_level (&house);
      add_good_ramp (&house);
      g_assert_cmpint (get_level (&house), >=, before);
      house_clear (&house);
    }
}

static void
test_a_bin_less_never_makes_it_worse (void)
{
  for (int i = 0; i < 200; i++)
    {
      House house;
      HcLevel before;

      furnish_at_random (&house);
      before = get_level (&house);
      g_ptr_array_set_size (house.fittings, (int) house.fittings->len - 1);
      g_assert_cmpint (get_level (&house), >=, before);
      house_clear (&house);
    }
}

static void
turn_about (House *house)
{
  for (guint i = 0; i < house->fittings->len / 2; i++)
    {
      gpointer thing = house->fittings->pdata[i];

      house->fittings->pdata[i] = house->fittings->pdata[house->fittings->len - 1 - i];
      house->fittings->pdata[house->fittings->len - 1 - i] = thing;
    }
}

static void
test_the_order_of_things_changes_nothing (void)
{
  for (int i = 0; i < 100; i++)
    {
      House house;
      g_autoptr (HcCheck) before = NULL;
      g_autoptr (HcCheck) after = NULL;

      furnish_at_random (&house);
      before = house_check (&house, HC_CONDITION_DAY);
      turn_about (&house);
      after = house_check (&house, HC_CONDITION_DAY);
      g_assert_cmpuint (hc_check_get_n_findings (before, HC_NEED_CLIMB), ==,
                        hc_check_get_n_findings (after, HC_NEED_CLIMB));
      for (guint j = 0; j < hc_check_get_n_findings (before, HC_NEED_CLIMB); j++)
        g_assert_cmpstr (hc_check_get_finding (before, HC_NEED_CLIMB, j)->ids[0], ==,
                         hc_check_get_finding (after, HC_NEED_CLIMB, j)->ids[0]);
      house_clear (&house);
    }
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  for (guint i = 0; i < G_N_ELEMENTS (ways); i++)
    {
      g_autofree char *path = g_strconcat ("/needs/climb/", ways[i].name, NULL);

      g_test_add_data_func (path, &ways[i], test_way);
    }
  g_test_add_func ("/needs/climb/the-strip-to-land-on-is-in-the-finding",
                   test_the_strip_to_land_on_is_in_the_finding);
  g_test_add_func ("/needs/climb/what-is-in-the-way-is-named", test_what_is_in_the_way_is_named);
  g_test_add_func ("/needs/climb/kinds-share-a-finding", test_kinds_share_a_finding);
  g_test_add_func ("/needs/climb/young-birds-hop-less-far", test_young_birds_hop_less_far);
  g_test_add_func ("/needs/climb/a-ramp-more-never-makes-it-worse",
                   test_a_ramp_more_never_makes_it_worse);
  g_test_add_func ("/needs/climb/a-bin-less-never-makes-it-worse",
                   test_a_bin_less_never_makes_it_worse);
  g_test_add_func ("/needs/climb/the-order-of-things-changes-nothing",
                   test_the_order_of_things_changes_nothing);
  return g_test_run ();
}
