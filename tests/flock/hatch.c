/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * How many eggs to set, and what the keeper's own hatches teach. */
#include "config.h"

#include "flock/hatch.h"
#include "../sample/season-sample.h"

static void
shares_of (const SeasonSample *sample, const char *kind, HcHatchShares *shares)
{
  g_autoptr (HcPlan) plan = season_sample_plan (sample);

  hc_hatch_shares_of_kind (shares, plan, sample->book, hc_book_get_kind (sample->book, kind));
}

static double
mean_hatch (const HcHatchShares *shares)
{
  return hc_beta_get_mean (&shares->fertile) * hc_beta_get_mean (&shares->hatch);
}

static void
eggs_to_set_are_the_fewest_that_do (void)
{
  SeasonSample sample;
  HcHatchShares shares;
  guint eggs;
  g_autoptr (HcOdds) enough = NULL;
  g_autoptr (HcOdds) few = NULL;

  season_sample_init (&sample);
  shares_of (&sample, "medium_layer", &shares);
  eggs = hc_hatch_find_eggs (&shares, 8, HC_CLUTCH_FEMALES, 0.9);
  enough = hc_hatch_get_odds (&shares, eggs, HC_CLUTCH_FEMALES);
  few = hc_hatch_get_odds (&shares, eggs - 1, HC_CLUTCH_FEMALES);
  g_assert_cmpfloat (hc_odds_get_at_least (enough, 8), >=, 0.9);
  g_assert_cmpfloat (hc_odds_get_at_least (few, 8), <, 0.9);
  g_assert_cmpuint (hc_hatch_find_eggs (&shares, 100000, HC_CLUTCH_ALL, 0.9), ==, 0);
  season_sample_clear (&sample);
}

/* 60 to 70 % of the eggs set at home hatch: common practice, no source. */
static void
home_set_eggs_hatch_as_keepers_know (void)
{
  SeasonSample sample;
  HcHatchShares shares;

  season_sample_init (&sample);
  for (guint i = 0; i < hc_book_get_n_kinds (sample.book); i++)
    {
      const HcKind *kind = hc_book_get_kind_at (sample.book, i);

      if (kind->species != HC_SPECIES_CHICKEN)
        continue;
      shares_of (&sample, kind->id, &shares);
      g_assert_cmpfloat (mean_hatch (&shares), >, 0.58);
      g_assert_cmpfloat (mean_hatch (&shares), <, 0.70);
    }
  season_sample_clear (&sample);
}

static void
own_results_move_and_narrow_the_shares (void)
{
  SeasonSample sample;
  HcHatchShares before, after;

  season_sample_init (&sample);
  shares_of (&sample, "medium_layer", &before);
  season_sample_add_clutch (&sample, "e", "medium_layer", SAMPLE_DAY, 24);
  season_sample_add_result (&sample, "e", SAMPLE_DAY + 7, HC_RESULT_FERTILE, 12);
  season_sample_add_result (&sample, "e", SAMPLE_DAY + 21, HC_RESULT_HATCHED, 11);
  shares_of (&sample, "medium_layer", &after);
  g_assert_cmpint (after.eggs_seen, ==, 24);
  g_assert_cmpfloat_with_epsilon (after.fertile.a, before.fertile.a + 12, 1e-9);
  g_assert_cmpfloat_with_epsilon (after.fertile.b, before.fertile.b + 12, 1e-9);
  g_assert_cmpfloat_with_epsilon (after.hatch.a, before.hatch.a + 11, 1e-9);
  g_assert_cmpfloat_with_epsilon (after.hatch.b, before.hatch.b + 1, 1e-9);
  shares_of (&sample, "bantam", &after);
  g_assert_cmpint (after.eggs_seen, ==, 0);
  season_sample_clear (&sample);
}

static void
a_hatch_without_candling_teaches_both_shares (void)
{
  SeasonSample sample;
  HcHatchShares before, after;

  season_sample_init (&sample);
  shares_of (&sample, "medium_layer", &before);
  season_sample_add_clutch (&sample, "e", "medium_layer", SAMPLE_DAY, 20);
  season_sample_add_result (&sample, "e", SAMPLE_DAY + 21, HC_RESULT_HATCHED, 4);
  shares_of (&sample, "medium_layer", &after);
  g_assert_cmpfloat (hc_beta_get_mean (&after.fertile), <, hc_beta_get_mean (&before.fertile));
  g_assert_cmpfloat (hc_beta_get_mean (&after.hatch), <, hc_beta_get_mean (&before.hatch));
  g_assert_cmpfloat_with_epsilon (after.fertile.a + after.fertile.b,
                                  before.fertile.a + before.fertile.b + 20, 1e-9);
  season_sample_clear (&sample);
}

int
main (int argc, char *argv[])
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/hatch/eggs-to-set", eggs_to_set_are_the_fewest_that_do);
  g_test_add_func ("/hatch/practice", home_set_eggs_hatch_as_keepers_know);
  g_test_add_func ("/hatch/results", own_results_move_and_narrow_the_shares);
  g_test_add_func ("/hatch/no-candling", a_hatch_without_candling_teaches_both_shares);
  return g_test_run ();
}
