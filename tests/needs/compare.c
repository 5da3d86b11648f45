/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Two variants side by side: what each need says of either. */
#include "config.h"

#include "needs/compare.h"

#include "house.h"
#include "plan/edit-fitting.h"
#include "plan/edit-variant.h"
#include "supply/rule-distances.h"

static HcFlock *
flock_of (const House *house)
{
  return hc_flock_of_kind (house->book, hc_book_get_kind (house->book, "medium_layer"), 4, "p");
}

/* The other variant lacks the roost: sleeping moves, water does not. */
static void
test_only_what_changed_has_moved (void)
{
  House house;
  g_autoptr (HcCheckCache) cache = hc_check_cache_new ();
  g_autoptr (HcPlan) plan = NULL;
  g_autoptr (HcPlan) with = NULL;
  g_autoptr (HcPlan) bare = NULL;
  g_autoptr (HcFlock) flock = NULL;
  HcComparison comparison;
  const char *roost;

  house_init (&house);
  house_add_pen (&house, "p", HC_PEN_INDOOR, 4000, 3000);
  house_add_roost (&house, "p", 2000, 1500, 2000, 100, 1);
  house_add_birds (&house, "medium_layer", "p", 4, 0, -1);
  plan = house_make_plan (&house);
  flock = flock_of (&house);
  roost = hc_part_get_id (
      hc_pen_get (hc_layout_get_pen (hc_plan_get_layout (plan), "p"))->fittings->pdata[0]);
  with = hc_plan_add_variant (plan, "other", "Other", NULL);
  bare = hc_plan_remove_fittings (with, (const char *const[]){ roost, NULL }, NULL);
  hc_comparison_make (&comparison, cache, house.book, plan, bare, flock, HC_CONDITION_NIGHT);
  g_assert_true (hc_comparison_has_moved (&comparison, HC_NEED_ROOST));
  g_assert_cmpint (comparison.needs[HC_NEED_ROOST].after, ==, HC_LEVEL_SHORT);
  g_assert_cmpint (comparison.needs[HC_NEED_ROOST].before, >, HC_LEVEL_SHORT);
  g_assert_false (hc_comparison_has_moved (&comparison, HC_NEED_WATER));
  g_assert_cmpint (comparison.after.good, <=, comparison.before.good);
  hc_comparison_make (&comparison, cache, house.book, plan, plan, flock, HC_CONDITION_DAY);
  for (HcNeedId need = 0; need < HC_N_NEEDS; need++)
    g_assert_false (hc_comparison_has_moved (&comparison, need));
  house_clear (&house);
}

/* 30 cm from bar to bar and 20 cm to the wall: Council Directive 1999/74/EC as
 * transposed by the French order of 1 February 2002, article 3. */
static void
test_distances_of_the_rules (void)
{
  House house;
  HcSnapRules rules;

  house_init (&house);
  rules = hc_standard_get_distances (hc_book_get_standard (house.book, "eu-laying-hens"),
                                     HC_LEVEL_TIGHT);
  g_assert_cmpfloat (rules.bar_to_bar_mm, ==, 300);
  g_assert_cmpfloat (rules.bar_to_wall_mm, ==, 200);
  house_clear (&house);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/compare/variants", test_only_what_changed_has_moved);
  g_test_add_func ("/compare/distances", test_distances_of_the_rules);
  return g_test_run ();
}
