/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What demands ask of a number of birds, and how many birds they serve. */
#include "config.h"

#include "book/demand.h"

#include "base/whole.h"

static HcDemand
demand_of (HcFigureUnit unit, HcClause clause)
{
  HcDemand demand = { .figure.unit = unit, .stated = 1u << HC_LEVEL_TIGHT };

  demand.clauses[0][0] = clause;
  demand.n_clauses[0] = 1;
  return demand;
}

static double
asked (const HcDemand *demand, double birds, double kg)
{
  return hc_demand_required (demand, HC_LEVEL_TIGHT, birds, kg, NULL);
}

static void
test_no_birds_ask_nothing (void)
{
  HcDemand demand = demand_of (HC_FIGURE_M2, (HcClause){ .fixed = 2.5e6, .each = 1e5 });

  g_assert_cmpfloat (asked (&demand, 0, 0), ==, 0);
  g_assert_cmpfloat (asked (&demand, 1, 2), ==, 2.6e6);
}

static void
test_birds_to_a_metre_stay_whole (void)
{
  HcDemand demand = demand_of (HC_FIGURE_M2, (HcClause){ .birds_per = 9 });

  g_assert_cmpfloat (asked (&demand, 360, 720), ==, 40e6);
  g_assert_cmpint (hc_demand_most_birds (&demand, HC_LEVEL_TIGHT, 40e6, 2, NULL), ==, 360);
}

/* Every whole number of square metres, at every density from 1 to 30. */
static void
test_birds_to_a_metre_lose_no_bird (void)
{
  for (int density = 1; density <= 30; density++)
    {
      HcDemand demand = demand_of (HC_FIGURE_M2, (HcClause){ .birds_per = density });

      for (int area = 1; area <= 60; area++)
        g_assert_cmpint (hc_demand_most_birds (&demand, HC_LEVEL_TIGHT, area * 1e6, 2, NULL),
                         ==, (gint64) density * area);
    }
}

static void
test_mass_is_shared_too (void)
{
  HcDemand demand = demand_of (HC_FIGURE_M2, (HcClause){ .kg_per = 33 });

  g_assert_cmpfloat (asked (&demand, 100, 330), ==, 10e6);
  g_assert_cmpint (hc_demand_most_birds (&demand, HC_LEVEL_TIGHT, 10e6, 3.3, NULL), ==, 100);
}

static void
test_steps_count_when_begun (void)
{
  HcDemand demand = demand_of (
      HC_FIGURE_COUNT, (HcClause){ .fixed = 2, .step_amount = 1, .step_from = 10, .step = 10 });

  g_assert_cmpfloat (asked (&demand, 10, 20), ==, 2);
  g_assert_cmpfloat (asked (&demand, 11, 22), ==, 3);
  g_assert_cmpfloat (asked (&demand, 20, 40), ==, 3);
  g_assert_cmpfloat (asked (&demand, 21, 42), ==, 4);
  g_assert_cmpint (hc_demand_most_birds (&demand, HC_LEVEL_TIGHT, 3, 2, NULL), ==, 20);
}

static void
test_the_largest_clause_rules (void)
{
  HcDemand demand = demand_of (HC_FIGURE_COUNT, (HcClause){ .birds_per = 8 });

  demand.clauses[0][1] = (HcClause){ .fixed = 2 };
  demand.n_clauses[0] = 2;
  g_assert_cmpfloat (asked (&demand, 1, 2), ==, 2);
  g_assert_cmpfloat (asked (&demand, 16, 32), ==, 2);
  g_assert_cmpfloat (asked (&demand, 17, 34), ==, 3);
  g_assert_cmpint (hc_demand_most_birds (&demand, HC_LEVEL_TIGHT, 1, 2, NULL), ==, 0);
}

static void
test_shares_follow_their_basis (void)
{
  HcBasis basis = { .ground_floor_mm2 = 12e6, .required_floor_mm2 = 100e6, .perimeter_mm = 14e3 };
  HcDemand windows = demand_of (HC_FIGURE_M2, (HcClause){ .share = 0.03 });
  HcDemand holes = demand_of (
      HC_FIGURE_M, (HcClause){ .share = 4000 / 100e6, .of = HC_BASIS_REQUIRED_FLOOR });
  HcDemand fence
      = demand_of (HC_FIGURE_M, (HcClause){ .share = 1, .of = HC_BASIS_PERIMETER });

  g_assert_cmpfloat_with_epsilon (hc_demand_required (&windows, HC_LEVEL_TIGHT, 1, 2, &basis),
                                  0.36e6, 1e-6);
  g_assert_cmpfloat_with_epsilon (hc_demand_required (&holes, HC_LEVEL_TIGHT, 1, 2, &basis),
                                  4000, 1e-6);
  g_assert_cmpfloat (hc_demand_required (&fence, HC_LEVEL_TIGHT, 1, 2, &basis), ==, 14e3);
  g_assert_cmpfloat (hc_demand_required (&fence, HC_LEVEL_TIGHT, 1, 2, NULL), ==, 0);
}

static void
test_asking_nothing_serves_many (void)
{
  HcDemand demand = demand_of (HC_FIGURE_M2, (HcClause){ .fixed = 1e6 });

  g_assert_cmpint (hc_demand_most_birds (&demand, HC_LEVEL_TIGHT, 2e6, 2, NULL), ==,
                   HC_WHOLE_MANY);
  g_assert_cmpint (hc_demand_most_birds (&demand, HC_LEVEL_TIGHT, 0, 2, NULL), ==, 0);
}

static void
test_silent_levels_ask_what_is_below (void)
{
  HcDemand demand = demand_of (HC_FIGURE_CM, (HcClause){ 0 });

  demand.stated = 1u << HC_LEVEL_GOOD;
  demand.clauses[1][0].each = 100;
  demand.n_clauses[1] = 1;
  g_assert_cmpfloat (hc_demand_required (&demand, HC_LEVEL_TIGHT, 3, 6, NULL), ==, 0);
  g_assert_cmpfloat (hc_demand_required (&demand, HC_LEVEL_GOOD, 3, 6, NULL), ==, 300);
  g_assert_cmpfloat (hc_demand_required (&demand, HC_LEVEL_PLENTY, 3, 6, NULL), ==, 300);
}

static void
test_grade_is_the_highest_level_reached (void)
{
  HcDemand demand = demand_of (HC_FIGURE_CM, (HcClause){ .each = 150 });

  demand.stated = 7u << HC_LEVEL_TIGHT;
  demand.clauses[1][0].each = 200;
  demand.clauses[2][0].each = 250;
  demand.n_clauses[1] = demand.n_clauses[2] = 1;
  g_assert_cmpint (hc_demand_grade (&demand, 1499, 10, 20, NULL), ==, HC_LEVEL_SHORT);
  g_assert_cmpint (hc_demand_grade (&demand, 1500, 10, 20, NULL), ==, HC_LEVEL_TIGHT);
  g_assert_cmpint (hc_demand_grade (&demand, 2000, 10, 20, NULL), ==, HC_LEVEL_GOOD);
  g_assert_cmpint (hc_demand_grade (&demand, 9000, 10, 20, NULL), ==, HC_LEVEL_PLENTY);
}

static HcClause
any_clause (void)
{
  return (HcClause){
    .fixed = g_test_rand_double_range (0, 1e6),
    .each = g_test_rand_double_range (0, 1e5),
    .birds_per = g_test_rand_bit () ? g_test_rand_int_range (1, 20) : 0,
    .per_kg = g_test_rand_double_range (0, 1e4),
    .kg_per = g_test_rand_bit () ? g_test_rand_double_range (1, 50) : 0,
    .step_amount = g_test_rand_double_range (0, 1e5),
    .step_from = g_test_rand_int_range (0, 20),
    .step = g_test_rand_int_range (1, 20),
    .share = g_test_rand_double_range (0, 1),
  };
}

static void
test_demands_never_fall_with_birds (void)
{
  HcBasis basis = { 20e6, 10e6, 18e3 };

  for (int round = 0; round < 200; round++)
    {
      HcDemand demand = demand_of (HC_FIGURE_M2, any_clause ());
      double before = 0;

      for (int birds = 0; birds < 100; birds++)
        {
          double now
              = hc_demand_required (&demand, HC_LEVEL_TIGHT, birds, 2.1 * birds, &basis);

          g_assert_cmpfloat (now, >=, before);
          before = now;
        }
    }
}

static void
test_most_birds_undoes_required (void)
{
  HcBasis basis = { 20e6, 10e6, 18e3 };

  for (int round = 0; round < 500; round++)
    {
      HcDemand demand = demand_of (HC_FIGURE_M2, any_clause ());
      gint64 birds = g_test_rand_int_range (1, 5000);
      double required;

      demand.clauses[0][0].each += 1;
      required = hc_demand_required (&demand, HC_LEVEL_TIGHT, (double) birds,
                                     2.1 * (double) birds, &basis);
      g_assert_cmpint (hc_demand_most_birds (&demand, HC_LEVEL_TIGHT, required, 2.1, &basis), ==,
                       birds);
    }
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/demand/no-birds-ask-nothing", test_no_birds_ask_nothing);
  g_test_add_func ("/demand/birds-to-a-metre-stay-whole", test_birds_to_a_metre_stay_whole);
  g_test_add_func ("/demand/birds-to-a-metre-lose-no-bird", test_birds_to_a_metre_lose_no_bird);
  g_test_add_func ("/demand/mass-is-shared-too", test_mass_is_shared_too);
  g_test_add_func ("/demand/steps-count-when-begun", test_steps_count_when_begun);
  g_test_add_func ("/demand/the-largest-clause-rules", test_the_largest_clause_rules);
  g_test_add_func ("/demand/shares-follow-their-basis", test_shares_follow_their_basis);
  g_test_add_func ("/demand/asking-nothing-serves-many", test_asking_nothing_serves_many);
  g_test_add_func ("/demand/silent-levels-ask-what-is-below",
                   test_silent_levels_ask_what_is_below);
  g_test_add_func ("/demand/grade-is-the-highest-level-reached",
                   test_grade_is_the_highest_level_reached);
  g_test_add_func ("/demand/never-fall-with-birds", test_demands_never_fall_with_birds);
  g_test_add_func ("/demand/most-birds-undoes-required", test_most_birds_undoes_required);
  return g_test_run ();
}
