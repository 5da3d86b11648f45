/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What is kept between checks changes no answer, and neither does order. */
#include "config.h"

#include "house.h"
#include "needs/cache.h"
#include "plan/edit-fitting.h"

static void
assert_same (const HcCheck *a, const HcCheck *b)
{
  for (guint need = 0; need < HC_N_NEEDS; need++)
    {
      g_assert_cmpint (hc_check_applies (a, need), ==, hc_check_applies (b, need));
      g_assert_cmpint (hc_check_get_need_level (a, need), ==, hc_check_get_need_level (b, need));
      g_assert_cmpint (hc_check_get_birds (a, need), ==, hc_check_get_birds (b, need));
      for (HcLevel level = HC_LEVEL_TIGHT; level <= HC_LEVEL_PLENTY; level++)
        g_assert_cmpint (hc_check_get_served (a, need, level), ==,
                         hc_check_get_served (b, need, level));
      g_assert_cmpuint (hc_check_get_n_findings (a, need), ==,
                        hc_check_get_n_findings (b, need));
      for (guint i = 0; i < hc_check_get_n_findings (a, need); i++)
        g_assert_cmpstr (hc_check_get_finding (a, need, i)->code, ==,
                         hc_check_get_finding (b, need, i)->code);
    }
}

static void
furnish (House *house, const char *pen, double x_mm)
{
  house_add_roost (house, pen, x_mm + 1500, 700, 2000, 800, 2);
  house_add_nests (house, pen, x_mm + 1000, 2700, 3);
  house_add (house, pen, HC_FITTING_FEEDER, x_mm + 2200, 2000, 800, 150);
  house_add (house, pen, HC_FITTING_DRINKER, x_mm + 700, 1800, 300, 300)->form = HC_FORM_ROUND;
}

static void
start (House *house)
{
  house_init (house);
  house->site.birds_go_out = TRUE;
  house_add_pen (house, "a", HC_PEN_INDOOR, 3000, 3000);
  house_add_pen (house, "b", HC_PEN_INDOOR, 3000, 3000);
  house_add_pen (house, "r", HC_PEN_RUN, 5000, 3000);
  furnish (house, "a", 0);
  furnish (house, "b", 3000);
  house_add_opening (house, HC_OPENING_POP_HOLE, "b-e", 1500, 400, 450);
  house_add_opening (house, HC_OPENING_WINDOW, "a-n", 1500, 600, 500);
  house_add_birds (house, "medium_layer", "a", 12, 1, -1);
  house_add_birds (house, "bantam", "b", 6, 0, -1);
  house_add_birds (house, "heavy_breed", "b", 4, 1, -1);
}

static void
test_a_warm_check_is_a_cold_check (void)
{
  House house;
  g_autoptr (HcCheckCache) warm = hc_check_cache_new ();
  const HcCondition conditions[]
      = { HC_CONDITION_DAY, HC_CONDITION_NIGHT, HC_CONDITION_SHUT_IN };
  g_autoptr (HcPlan) plan = NULL;
  g_autoptr (HcFlock) flock = NULL;

  start (&house);
  plan = house_make_plan (&house);
  flock = hc_flock_on (plan, house.book, hc_plan_get_day (plan));
  for (guint i = 0; i < 60; i++)
    {
      g_autoptr (HcCheckCache) cold = hc_check_cache_new ();
      HcCondition condition = conditions[i % 3];
      g_autofree char *id = g_strdup_printf ("f%d", g_test_rand_int_range (0, 8));
      const char *const ids[] = { id, NULL };
      HcPoint by = hc_point (g_test_rand_int_range (-200, 201), g_test_rand_int_range (-200, 201));
      HcPlan *moved = hc_plan_move_fittings (plan, ids, by, NULL);
      g_autoptr (HcCheck) a = NULL;
      g_autoptr (HcCheck) b = NULL;

      hc_plan_unref (plan);
      plan = moved;
      a = hc_check_plan (warm, plan, house.book, condition, flock);
      b = hc_check_plan (cold, plan, house.book, condition, flock);
      assert_same (a, b);
    }
  house_clear (&house);
}

static void
test_what_did_not_change_is_not_worked_out_again (void)
{
  House house;
  g_autoptr (HcCheckCache) cache = hc_check_cache_new ();
  g_autoptr (HcPlan) plan = NULL;
  g_autoptr (HcFlock) flock = NULL;
  g_autoptr (HcFlock) more = NULL;
  g_autoptr (HcCheck) first = NULL;
  g_autoptr (HcCheck) again = NULL;
  g_autoptr (HcCheck) with_more = NULL;
  guint64 worked_out;

  start (&house);
  plan = house_make_plan (&house);
  flock = hc_flock_on (plan, house.book, hc_plan_get_day (plan));
  first = hc_check_plan (cache, plan, house.book, HC_CONDITION_DAY, flock);
  worked_out = hc_check_cache_get_n_worked_out (cache);
  again = hc_check_plan (cache, plan, house.book, HC_CONDITION_DAY, flock);
  more = hc_flock_scaled (flock, 100);
  with_more = hc_check_plan (cache, plan, house.book, HC_CONDITION_DAY, more);
  g_assert_cmpuint (hc_check_cache_get_n_worked_out (cache), ==, worked_out);
  assert_same (first, again);
  house_clear (&house);
}

static void
test_the_order_of_birds_changes_nothing (void)
{
  House house;
  House other;
  g_autoptr (HcCheck) a = NULL;
  g_autoptr (HcCheck) b = NULL;

  start (&house);
  start (&other);
  g_ptr_array_set_size (other.batches, 0);
  house_add_birds (&other, "heavy_breed", "b", 4, 1, -1);
  house_add_birds (&other, "bantam", "b", 6, 0, -1);
  house_add_birds (&other, "medium_layer", "a", 12, 1, -1);
  a = house_check (&house, HC_CONDITION_DAY);
  b = house_check (&other, HC_CONDITION_DAY);
  assert_same (a, b);
  house_clear (&house);
  house_clear (&other);
}

static void
test_every_need_is_in_the_table (void)
{
  for (guint id = 0; id < HC_N_NEEDS; id++)
    {
      const HcNeed *need = hc_need_get (id);

      g_assert_cmpint (need->id, ==, id);
      g_assert_true (hc_need_find (need->word) == need);
      g_assert_cmpint (need->serve != NULL, ==, need->sort == HC_NEED_COUNTING);
    }
  g_assert_null (hc_need_find ("wishes"));
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/check/a-warm-check-is-a-cold-check", test_a_warm_check_is_a_cold_check);
  g_test_add_func ("/check/what-did-not-change-is-not-worked-out-again",
                   test_what_did_not_change_is_not_worked_out_again);
  g_test_add_func ("/check/the-order-of-birds-changes-nothing",
                   test_the_order_of_birds_changes_nothing);
  g_test_add_func ("/check/every-need-is-in-the-table", test_every_need_is_in_the_table);
  return g_test_run ();
}
