/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Shares known by their ends, and the counts that follow. */
#include "config.h"

#include "base/chance.h"

/* Binomial and beta-binomial tails of SciPy 1.10.1, scipy.stats.binom.sf and
 * scipy.stats.betabinom.sf; tests/base/odds.py holds many more against it. */
static const struct
{
  guint n;
  double a, b;
  guint at_least;
  double chance;
} tails[] = {
#include "odds-table.h"
};

static void
tails_are_those_of_a_statistics_library (void)
{
  for (guint i = 0; i < G_N_ELEMENTS (tails); i++)
    {
      HcBeta share = { tails[i].a, tails[i].b };
      g_autoptr (HcOdds) all = hc_odds_new_sure (tails[i].n);
      g_autoptr (HcOdds) odds = tails[i].b > 0 ? hc_odds_thin (all, &share)
                                               : hc_odds_thin_evenly (all, tails[i].a);

      g_assert_cmpfloat_with_epsilon (hc_odds_get_at_least (odds, tails[i].at_least),
                                      tails[i].chance, 1e-9);
    }
}

static void
a_fitted_share_has_its_ends (void)
{
  for (int low = 1; low < 95; low += 3)
    for (int high = low + 2; high < 99; high += 4)
      {
        HcBeta share;

        hc_beta_fit (low / 100.0, high / 100.0, &share);
        g_assert_cmpfloat_with_epsilon (hc_beta_get_point (&share, 0.1), low / 100.0, 1e-6);
        g_assert_cmpfloat_with_epsilon (hc_beta_get_point (&share, 0.9), high / 100.0, 1e-6);
      }
}

static void
odd_ends_give_a_share_all_the_same (void)
{
  static const double ends[][2] = { { 0, 0 }, { 1, 1 }, { 0, 1 }, { 0.9, 0.2 }, { 0.5, 0.5 } };

  for (guint i = 0; i < G_N_ELEMENTS (ends); i++)
    {
      HcBeta share;

      hc_beta_fit (ends[i][0], ends[i][1], &share);
      g_assert_cmpfloat (share.a, >, 0);
      g_assert_cmpfloat (share.b, >, 0);
      g_assert_cmpfloat (hc_beta_get_mean (&share), >, 0);
      g_assert_cmpfloat (hc_beta_get_mean (&share), <, 1);
    }
}

static void
chances_come_to_one (void)
{
  for (guint i = 0; i < 200; i++)
    {
      guint n = (guint) g_test_rand_int_range (0, 400);
      HcBeta share = { g_test_rand_double_range (0.2, 80), g_test_rand_double_range (0.2, 80) };
      g_autoptr (HcOdds) all = hc_odds_new_sure (n);
      g_autoptr (HcOdds) left = hc_odds_thin (all, &share);
      g_autoptr (HcOdds) half = hc_odds_thin_evenly (left, 0.5);
      double sum = 0;

      for (guint k = 0; k <= n; k++)
        sum += hc_odds_get (half, k);
      g_assert_cmpfloat_with_epsilon (sum, 1, 1e-9);
      g_assert_cmpfloat_with_epsilon (hc_odds_get_mean (half),
                                      n * hc_beta_get_mean (&share) / 2, 1e-6);
    }
}

static void
counts_and_chances_go_together (void)
{
  HcBeta share = { 6, 3 };
  g_autoptr (HcOdds) all = hc_odds_new_sure (24);
  g_autoptr (HcOdds) odds = hc_odds_thin (all, &share);
  guint high = hc_odds_get_count (odds, 0.9);

  g_assert_cmpfloat (1 - hc_odds_get_at_least (odds, high + 1), >=, 0.9);
  g_assert_cmpfloat (1 - hc_odds_get_at_least (odds, high), <, 0.9);
  g_assert_cmpfloat (hc_odds_get_at_least (odds, 0), ==, 1);
  g_assert_cmpfloat (hc_odds_get_at_least (odds, 25), ==, 0);
}

static void
results_narrow_a_share (void)
{
  HcBeta share;
  double before;

  hc_beta_fit (0.6, 0.9, &share);
  before = hc_beta_get_point (&share, 0.9) - hc_beta_get_point (&share, 0.1);
  hc_beta_learn (&share, 30, 30);
  g_assert_cmpfloat (hc_beta_get_point (&share, 0.9) - hc_beta_get_point (&share, 0.1), <, before);
  g_assert_cmpfloat (hc_beta_get_mean (&share), <, 0.65);
}

int
main (int argc, char *argv[])
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/odds/tails", tails_are_those_of_a_statistics_library);
  g_test_add_func ("/odds/fit", a_fitted_share_has_its_ends);
  g_test_add_func ("/odds/odd-ends", odd_ends_give_a_share_all_the_same);
  g_test_add_func ("/odds/sum", chances_come_to_one);
  g_test_add_func ("/odds/count", counts_and_chances_go_together);
  g_test_add_func ("/odds/learn", results_narrow_a_share);
  return g_test_run ();
}
