/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * How many birds a plan carries, against checks of every number of birds. */
#include "config.h"

#include "house.h"

static void
start (House *house)
{
  house_init (house);
  house_add_pen (house, "p", HC_PEN_INDOOR, 6000, 4000);
  house_add_roost (house, "p", 3000, 1000, 3000, 1200, 3);
  house_add_nests (house, "p", 1000, 3500, 4);
  house_add (house, "p", HC_FITTING_FEEDER, 4500, 3000, 1200, 150);
  house_add (house, "p", HC_FITTING_DRINKER, 1500, 2300, 400, 150);
}

static gboolean
reaches (const House *house, HcFlock *flock, HcNeedId need, HcLevel aim)
{
  g_autoptr (HcCheckCache) cache = hc_check_cache_new ();
  g_autoptr (HcPlan) plan = house_make_plan (house);
  g_autoptr (HcCheck) check = hc_check_plan (cache, plan, house->book, HC_CONDITION_DAY, flock);

  return hc_check_get_served (check, need, aim) == hc_check_get_birds (check, need);
}

/* Every rung is the last number of birds its need reaches the aim for. */
static void
test_rungs_are_where_checks_turn (void)
{
  House house;
  g_autoptr (HcLadder) ladder = NULL;
  g_autoptr (HcPlan) plan = NULL;
  g_autoptr (HcFlock) flock = NULL;

  start (&house);
  house_add_birds (&house, "medium_layer", "p", 9, 1, -1);
  house_add_birds (&house, "bantam", "p", 7, 0, -1);
  house_add_birds (&house, "heavy_breed", "p", 5, 0, -1);
  ladder = house_climb (&house, HC_LADDER_THIS_MIX, NULL, HC_CONDITION_DAY, HC_LEVEL_TIGHT);
  plan = house_make_plan (&house);
  flock = hc_flock_on (plan, house.book, hc_plan_get_day (plan));
  g_assert_cmpint (hc_ladder_get_there (ladder), ==, 22);
  g_assert_cmpuint (hc_ladder_get_n_rungs (ladder), >=, 4);
  for (guint i = 0; i < hc_ladder_get_n_rungs (ladder); i++)
    {
      const HcRung *rung = hc_ladder_get_rung (ladder, i);
      g_autoptr (HcFlock) held = hc_flock_scaled (flock, rung->most);
      g_autoptr (HcFlock) one_more = hc_flock_scaled (flock, rung->most + 1);

      g_assert_true (reaches (&house, held, rung->need, HC_LEVEL_TIGHT));
      g_assert_false (reaches (&house, one_more, rung->need, HC_LEVEL_TIGHT));
      g_assert_nonnull (rung->code);
      if (rung->lift > 0)
        g_assert_cmpint (rung->lift_to, >, rung->most);
    }
  g_assert_cmpint (hc_ladder_get_most (ladder), ==, hc_ladder_get_rung (ladder, 0)->most);
  house_clear (&house);
}

/* 4 boxes serve 16 hens in comfort; one more box serves 20. */
static void
test_one_more_box_lifts_the_nests (void)
{
  House house;
  g_autoptr (HcLadder) ladder = NULL;

  start (&house);
  house_add_birds (&house, "medium_layer", "p", 9, 0, -1);
  ladder = house_climb (&house, HC_LADDER_THIS_MIX, NULL, HC_CONDITION_DAY, HC_LEVEL_GOOD);
  for (guint i = 0; i < hc_ladder_get_n_rungs (ladder); i++)
    {
      const HcRung *rung = hc_ladder_get_rung (ladder, i);

      if (rung->need != HC_NEED_NESTS)
        continue;
      g_assert_cmpint (rung->most, ==, 16);
      g_assert_cmpfloat (rung->lift, ==, 1);
      g_assert_cmpstr (rung->lift_unit, ==, "boxes");
      g_assert_cmpint (rung->lift_to, ==, 20);
    }
  g_assert_cmpint (house_rung (ladder, HC_NEED_NESTS), ==, 16);
  house_clear (&house);
}

static void
test_more_of_one_kind_may_be_too_many (void)
{
  House house;
  g_autoptr (HcLadder) ladder = NULL;

  start (&house);
  house_add_birds (&house, "medium_layer", "p", 19, 0, -1);
  ladder = house_climb (&house, HC_LADDER_MORE_OF, "medium_layer", HC_CONDITION_DAY,
                        HC_LEVEL_GOOD);
  g_assert_cmpint (hc_ladder_get_there (ladder), ==, 19);
  g_assert_cmpint (house_rung (ladder, HC_NEED_NESTS), ==, 16);
  house_clear (&house);
}

static void
test_none_where_others_are_short_already (void)
{
  House house;
  g_autoptr (HcLadder) ladder = NULL;

  start (&house);
  house_add_birds (&house, "medium_layer", "p", 40, 0, -1);
  ladder = house_climb (&house, HC_LADDER_MORE_OF, "bantam", HC_CONDITION_DAY, HC_LEVEL_GOOD);
  g_assert_cmpint (hc_ladder_get_most (ladder), ==, -1);
  house_clear (&house);
}

static void
test_an_empty_house_of_one_kind (void)
{
  House house;
  g_autoptr (HcLadder) ladder = NULL;

  start (&house);
  house_add_birds (&house, "bantam", "p", 40, 0, -1);
  ladder = house_climb (&house, HC_LADDER_ONE_KIND, "medium_layer", HC_CONDITION_DAY,
                        HC_LEVEL_GOOD);
  g_assert_cmpint (house_rung (ladder, HC_NEED_NESTS), ==, 16);
  g_assert_cmpint (hc_ladder_get_most (ladder), ==, 16);
  house_clear (&house);
}

static void
test_the_headline_is_the_worse_day (void)
{
  House house;
  g_autoptr (HcCheckCache) cache = hc_check_cache_new ();
  g_autoptr (HcPlan) plan = NULL;
  g_autoptr (HcFlock) flock = NULL;
  HcHeadline headline;

  start (&house);
  house_add_birds (&house, "medium_layer", "p", 9, 0, -1);
  plan = house_make_plan (&house);
  flock = hc_flock_on (plan, house.book, hc_plan_get_day (plan));
  hc_headline_work_out (cache, plan, house.book, flock, &headline);
  g_assert_cmpint (headline.good, ==, 16);
  g_assert_cmpint (headline.need, ==, HC_NEED_NESTS);
  g_assert_cmpint (headline.least, ==, 20);
  g_assert_cmpint (headline.birds, ==, 9);
  g_assert_true (headline.mend_first[HC_NEED_AIR]);
  house_clear (&house);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/ladder/rungs-are-where-checks-turn", test_rungs_are_where_checks_turn);
  g_test_add_func ("/ladder/one-more-box-lifts-the-nests", test_one_more_box_lifts_the_nests);
  g_test_add_func ("/ladder/more-of-one-kind-may-be-too-many",
                   test_more_of_one_kind_may_be_too_many);
  g_test_add_func ("/ladder/none-where-others-are-short-already",
                   test_none_where_others_are_short_already);
  g_test_add_func ("/ladder/an-empty-house-of-one-kind", test_an_empty_house_of_one_kind);
  g_test_add_func ("/ladder/the-headline-is-the-worse-day", test_the_headline_is_the_worse_day);
  return g_test_run ();
}
