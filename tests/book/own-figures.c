/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The keeper's own figures laid over a standard. */
#include "config.h"

#include "shelf.h"

#include <math.h>

static HcStandard *
home_with (const char *figure, double value)
{
  HcOverride own = { figure, value, "our shed is dry" };

  return hc_standard_with_overrides (shelf_standard ("home-cold"), &own, 1);
}

static double
floor_asked (HcStandard *standard, int week, HcLevel level)
{
  const HcDemand *demand = hc_standard_find_demand (
      standard, "floor.area", shelf_kind ("medium_layer"), week, HC_CONDITION_DAY);

  return hc_demand_required (demand, level, 10, 27, NULL);
}

static void
test_none_is_the_standard_itself (void)
{
  HcStandard *home = shelf_standard ("home-cold");
  g_autoptr (HcStandard) same = hc_standard_with_overrides (home, NULL, 0);

  g_assert_true (same == home);
}

static void
test_a_limit_holds_for_all_levels (void)
{
  g_autoptr (HcStandard) own = home_with ("roost.bar-to-bar", 33);
  const HcLimit *limit
      = hc_standard_find_limit (own, "roost.bar-to-bar", NULL, 40, HC_CONDITION_NIGHT);

  g_assert_cmpint (hc_limit_grade (limit, 329), ==, HC_LEVEL_SHORT);
  g_assert_cmpint (hc_limit_grade (limit, 330), ==, HC_LEVEL_PLENTY);
  g_assert_cmpint (limit->figure.evidence, ==, HC_EVIDENCE_OWN);
  g_assert_cmpstr (limit->figure.reason, ==, "our shed is dry");
  g_assert_null (limit->figure.source);
}

static void
test_a_demand_holds_for_all_levels (void)
{
  g_autoptr (HcStandard) own = home_with ("floor.medium", 0.3);

  for (HcLevel level = HC_LEVEL_TIGHT; level <= HC_LEVEL_PLENTY; level++)
    g_assert_cmpfloat_with_epsilon (floor_asked (own, 40, level), 3e6, 1e-6);
}

static void
test_shares_follow (void)
{
  g_autoptr (HcStandard) own = home_with ("floor.medium", 0.3);

  g_assert_cmpfloat_with_epsilon (floor_asked (own, 10, HC_LEVEL_GOOD), 1.5e6, 1e-6);
  g_assert_cmpfloat_with_epsilon (floor_asked (own, 14, HC_LEVEL_GOOD), 2.25e6, 1e-6);
}

static void
test_a_share_can_be_replaced (void)
{
  g_autoptr (HcStandard) own = home_with ("floor.grower-medium-9-12", 0.1);

  g_assert_cmpfloat_with_epsilon (floor_asked (own, 10, HC_LEVEL_PLENTY), 1e6, 1e-6);
  g_assert_cmpfloat_with_epsilon (floor_asked (own, 40, HC_LEVEL_GOOD), 3.7e6, 1e-6);
}

static void
test_birds_to_a_box_are_replaced_as_stated (void)
{
  g_autoptr (HcStandard) own = home_with ("nests.boxes-medium", 6);
  const HcDemand *demand = hc_standard_find_demand (own, "nests.boxes", shelf_kind ("medium_layer"),
                                                    40, HC_CONDITION_DAY);

  g_assert_cmpfloat (hc_demand_required (demand, HC_LEVEL_PLENTY, 12, 30, NULL), ==, 2);
}

static void
test_minimums_beside_it_stay (void)
{
  g_autoptr (HcStandard) own = home_with ("water.nipples-medium", 20);
  const HcDemand *demand = hc_standard_find_demand (
      own, "water.nipples", shelf_kind ("medium_layer"), 40, HC_CONDITION_DAY);

  g_assert_cmpfloat (hc_demand_required (demand, HC_LEVEL_GOOD, 3, 8, NULL), ==, 2);
  g_assert_cmpfloat (hc_demand_required (demand, HC_LEVEL_GOOD, 60, 160, NULL), ==, 3);
}

static void
test_percents_are_stated_as_percents (void)
{
  g_autoptr (HcStandard) own = home_with ("air.winter-vents", 3);
  HcBasis basis = { .ground_floor_mm2 = 10e6 };
  const HcDemand *demand
      = hc_standard_find_demand (own, "air.winter-vents", NULL, 40, HC_CONDITION_NIGHT);

  g_assert_cmpfloat_with_epsilon (hc_demand_required (demand, HC_LEVEL_GOOD, 1, 2, &basis),
                                  0.3e6, 1e-6);
}

static void
test_the_fallback_takes_them_too (void)
{
  HcOverride own = { "reach.keeper-way", 55, NULL };
  g_autoptr (HcStandard) law
      = hc_standard_with_overrides (shelf_standard ("eu-laying-hens"), &own, 1);
  const HcLimit *limit
      = hc_standard_find_limit (law, "reach.keeper-way", NULL, 40, HC_CONDITION_DAY);

  g_assert_cmpint (hc_limit_grade (limit, 550), ==, HC_LEVEL_PLENTY);
  g_assert_cmpstr (limit->figure.reason, ==, "");
}

static void
test_what_makes_no_sense_is_passed_over (void)
{
  HcOverride own[] = { { "floor.medium", NAN, NULL },
                       { "floor.medium", -1, NULL },
                       { "nests.boxes-medium", 0, NULL },
                       { "no.such-figure", 5, NULL } };
  g_autoptr (HcStandard) same
      = hc_standard_with_overrides (shelf_standard ("home-cold"), own, G_N_ELEMENTS (own));

  g_assert_cmpfloat_with_epsilon (floor_asked (same, 40, HC_LEVEL_GOOD), 3.7e6, 1e-6);
  g_assert_cmpint (hc_standard_find_figure (same, "nests.boxes-medium")->evidence, ==,
                   HC_EVIDENCE_PRACTICE);
  g_assert_null (hc_standard_find_figure (same, "no.such-figure"));
}

static void
test_the_standard_is_left_as_it_was (void)
{
  g_autoptr (HcStandard) own = home_with ("floor.medium", 0.3);
  g_autoptr (HcStandard) again = NULL;
  HcOverride more = { "roost.headroom", 50, NULL };

  again = hc_standard_with_overrides (own, &more, 1);
  g_clear_pointer (&own, hc_standard_unref);
  g_assert_cmpfloat_with_epsilon (floor_asked (shelf_standard ("home-cold"), 40, HC_LEVEL_GOOD),
                                  3.7e6, 1e-6);
  g_assert_cmpfloat_with_epsilon (floor_asked (again, 40, HC_LEVEL_GOOD), 3e6, 1e-6);
  g_assert_cmpstr (hc_standard_find_figure (again, "floor.medium")->reason, ==,
                   "our shed is dry");
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/own-figures/none-is-the-standard-itself", test_none_is_the_standard_itself);
  g_test_add_func ("/own-figures/a-limit-holds-for-all-levels",
                   test_a_limit_holds_for_all_levels);
  g_test_add_func ("/own-figures/a-demand-holds-for-all-levels",
                   test_a_demand_holds_for_all_levels);
  g_test_add_func ("/own-figures/shares-follow", test_shares_follow);
  g_test_add_func ("/own-figures/a-share-can-be-replaced", test_a_share_can_be_replaced);
  g_test_add_func ("/own-figures/birds-to-a-box-are-replaced-as-stated",
                   test_birds_to_a_box_are_replaced_as_stated);
  g_test_add_func ("/own-figures/minimums-beside-it-stay", test_minimums_beside_it_stay);
  g_test_add_func ("/own-figures/percents-are-stated-as-percents",
                   test_percents_are_stated_as_percents);
  g_test_add_func ("/own-figures/the-fallback-takes-them-too", test_the_fallback_takes_them_too);
  g_test_add_func ("/own-figures/what-makes-no-sense-is-passed-over",
                   test_what_makes_no_sense_is_passed_over);
  g_test_add_func ("/own-figures/the-standard-is-left-as-it-was",
                   test_the_standard_is_left_as_it_was);
  return g_test_run ();
}
