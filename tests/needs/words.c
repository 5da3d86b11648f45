/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Every finding has its sentences, and numbers round the honest way. */
#include "config.h"

#include "house.h"
#include "words/figure-words.h"
#include "words/words.h"

#include <locale.h>

static void
read_codes (const char *path, GHashTable *codes)
{
  g_autoptr (GRegex) code = g_regex_new (
      "\"((?:floor|run|roost|nests|feed|water|warmth|way-out|litter|light|air|predators|company|reach|clearance)"
      "\\.[a-z-]+)\"",
      0, 0, NULL);
  g_autofree char *text = NULL;
  g_autoptr (GMatchInfo) match = NULL;

  g_assert_true (g_file_get_contents (path, &text, NULL, NULL));
  for (g_regex_match (code, text, 0, &match); g_match_info_matches (match);
       g_match_info_next (match, NULL))
    g_hash_table_add (codes, g_match_info_fetch (match, 1));
}

static GHashTable *
codes_in_source (void)
{
  static const char *const folders[] = { "judges", "clearance", "reach" };
  GHashTable *codes = g_hash_table_new_full (g_str_hash, g_str_equal, g_free, NULL);

  for (guint i = 0; i < G_N_ELEMENTS (folders); i++)
    {
      g_autofree char *folder = g_build_filename (g_test_get_dir (G_TEST_DIST), "..", "src",
                                                  "core", "needs", folders[i], NULL);
      g_autoptr (GDir) dir = g_dir_open (folder, 0, NULL);
      const char *name;

      g_assert_nonnull (dir);
      while ((name = g_dir_read_name (dir)) != NULL)
        if (g_str_has_suffix (name, ".c"))
          {
            g_autofree char *path = g_build_filename (folder, name, NULL);

            read_codes (path, codes);
          }
    }
  return codes;
}

static void
test_every_finding_has_a_sentence (void)
{
  g_autoptr (GHashTable) codes = codes_in_source ();
  GHashTableIter iter;
  gpointer code;

  g_assert_cmpuint (g_hash_table_size (codes), >, 50);
  g_hash_table_iter_init (&iter, codes);
  while (g_hash_table_iter_next (&iter, &code, NULL))
    if (!hc_words_has_finding (code))
      g_error ("no sentence for %s", (char *) code);
}

static void
assert_in_words (const HcFigure *figure)
{
  if (g_str_equal (hc_figure_words_measure (figure), figure->name))
    g_error ("no words for %s", figure->name);
}

static void
test_every_figure_says_what_it_measures (void)
{
  g_autoptr (GError) error = NULL;
  g_autoptr (HcBook) book = hc_book_load_default (&error);

  g_assert_no_error (error);
  for (guint i = 0; i < hc_book_get_n_standards (book); i++)
    {
      HcStandard *rules = hc_book_get_standard_at (book, i);

      for (guint j = 0; j < hc_standard_get_n_limits (rules); j++)
        assert_in_words (&hc_standard_get_limit (rules, j)->figure);
      for (guint j = 0; j < hc_standard_get_n_demands (rules); j++)
        assert_in_words (&hc_standard_get_demand (rules, j)->figure);
    }
}

static void
assert_limit_reads (HcFigureUnit unit, double bound, const char *expected)
{
  HcLimit limit = { .figure = { .unit = unit }, .stated = 1 << HC_LEVEL_TIGHT };
  g_autofree char *text = NULL;

  limit.levels[0] = bound;
  text = hc_figure_words_limit (&limit, HC_LEVEL_TIGHT);
  g_assert_cmpstr (text, ==, expected);
}

static void
test_figures_read_as_numbers_of_the_trade (void)
{
  assert_limit_reads (HC_FIGURE_DEGREES, 45, "45°");
  assert_limit_reads (HC_FIGURE_PPM, 20, "20 ppm");
  assert_limit_reads (HC_FIGURE_M3_PER_H_KG, 0.37, "0.37 m³/h/kg");
}

static void
test_figures_have_the_decimal_sign_of_the_language (void)
{
  if (setlocale (LC_NUMERIC, "de_DE.UTF-8") == NULL)
    {
      g_test_skip ("no German locale here");
      return;
    }
  assert_limit_reads (HC_FIGURE_M3_PER_H_KG, 0.37, "0,37 m³/h/kg");
  setlocale (LC_NUMERIC, "C");
}

static void
test_birds_come_before_measures (void)
{
  House house;
  g_autoptr (HcCheck) check = NULL;
  const HcFinding *finding;
  g_autofree char *text = NULL;
  g_autofree char *detail = NULL;
  g_autofree char *source = NULL;
  g_autofree char *todo = NULL;

  house_init (&house);
  house_add_pen (&house, "p", HC_PEN_INDOOR, 6000, 4000);
  house_add_roost (&house, "p", 3000, 1000, 1800, 800, 2);
  house_add_birds (&house, "medium_layer", "p", 24, 0, -1);
  check = house_check (&house, HC_CONDITION_DAY);
  finding = house_find (check, "roost.too-few-seats");
  text = hc_words_finding (check, finding, HC_UNITS_METRIC);
  detail = hc_words_finding_detail (finding, HC_UNITS_METRIC);
  source = hc_words_finding_source (finding);
  todo = hc_words_finding_todo (check, finding, HC_UNITS_METRIC);
  g_assert_cmpstr (text, ==, "4 hens have nowhere to sleep");
  g_assert_cmpstr (detail, ==, "3.6 m now; 4.32 m asked for.");
  g_assert_cmpstr (todo, ==, "Lengthen the bars, or add one more.");
  g_assert_true (g_str_has_prefix (source, "Home flock, cold country: "));
  house_clear (&house);
}

static void
test_offers_round_down_and_asks_round_up (void)
{
  g_autofree char *there = hc_words_offered (1234.9, "mm", HC_UNITS_METRIC);
  g_autofree char *wanted = hc_words_asked (1234.1, "mm", HC_UNITS_METRIC);
  g_autofree char *floor = hc_words_offered (1239000, "mm2", HC_UNITS_METRIC);
  g_autofree char *exact = hc_words_asked (1200.0000001, "mm", HC_UNITS_METRIC);
  g_autofree char *rounded_there = hc_length_format (1234, HC_UNITS_METRIC);
  g_autofree char *rounded_wanted = hc_length_format (1235, HC_UNITS_METRIC);
  g_autofree char *rounded_floor = hc_area_format (1.23e6, HC_UNITS_METRIC);
  g_autofree char *rounded_exact = hc_length_format (1200, HC_UNITS_METRIC);

  g_assert_cmpstr (there, ==, rounded_there);
  g_assert_cmpstr (wanted, ==, rounded_wanted);
  g_assert_cmpstr (floor, ==, rounded_floor);
  g_assert_cmpstr (exact, ==, rounded_exact);
}

static void
test_the_headline_says_what_runs_out (void)
{
  HcHeadline headline = { 27, 35, HC_NEED_NESTS, HC_CONDITION_DAY, 24, { FALSE } };
  g_autofree char *text = hc_words_headline (&headline, HC_UNITS_METRIC);
  g_autofree char *mend = NULL;

  g_assert_cmpstr (text, ==, "27 in comfort, 35 at most; nest boxes run out first");
  headline.mend_first[HC_NEED_AIR] = TRUE;
  mend = hc_words_headline (&headline, HC_UNITS_METRIC);
  g_assert_true (g_str_has_suffix (mend, ". Fix now: Air"));
}

static void
test_a_rung_says_what_would_lift_it (void)
{
  HcRung rung = { HC_NEED_NESTS, 27, "nests.too-few", 2, "boxes", 31 };
  g_autofree char *text = hc_words_rung (&rung, HC_UNITS_METRIC);

  g_assert_cmpstr (text, ==, "Nest boxes: 27 birds; 2 more nest boxes would carry 31");
}

static void
test_what_lifts_a_rung_to_nothing_serves_the_others (void)
{
  HcRung rung = { HC_NEED_FEED, -1, "feed.too-little", 840, "mm", 0 };
  g_autofree char *text = hc_words_rung (&rung, HC_UNITS_METRIC);

  g_assert_cmpstr (text, ==,
                   "Feeders: too little already; 84 cm more of feeder edge would be enough for "
                   "the other birds");
}

static void
test_a_fitting_is_told_by_what_and_where (void)
{
  House house;
  g_autoptr (HcPlan) plan = NULL;
  HcFitting *fitting;
  HcPen *pen;
  g_autofree char *what = NULL;
  g_autofree char *where = NULL;

  house_init (&house);
  house_add_pen (&house, "p", HC_PEN_INDOOR, 6000, 4000);
  house_add_roost (&house, "p", 3000, 700, 2400, 800, 2);
  plan = house_make_plan (&house);
  fitting = hc_layout_get_fitting (hc_plan_get_layout (plan), "f0", &pen);
  what = hc_words_fitting (fitting, HC_UNITS_METRIC);
  where = hc_words_fitting_place (hc_plan_get_layout (plan), fitting, HC_UNITS_METRIC);
  g_assert_cmpstr (what, ==, "Roost, 2.4 m, 2 bars");
  g_assert_cmpstr (where, ==, "30 cm from the north wall of Pen");
  house_clear (&house);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/words/every-finding-has-a-sentence", test_every_finding_has_a_sentence);
  g_test_add_func ("/words/every-figure-says-what-it-measures",
                   test_every_figure_says_what_it_measures);
  g_test_add_func ("/words/figures-read-as-numbers-of-the-trade",
                   test_figures_read_as_numbers_of_the_trade);
  g_test_add_func ("/words/figures-have-the-decimal-sign-of-the-language",
                   test_figures_have_the_decimal_sign_of_the_language);
  g_test_add_func ("/words/birds-come-before-measures", test_birds_come_before_measures);
  g_test_add_func ("/words/offers-round-down-and-asks-round-up",
                   test_offers_round_down_and_asks_round_up);
  g_test_add_func ("/words/the-headline-says-what-runs-out",
                   test_the_headline_says_what_runs_out);
  g_test_add_func ("/words/a-rung-says-what-would-lift-it", test_a_rung_says_what_would_lift_it);
  g_test_add_func ("/words/what-lifts-a-rung-to-nothing-serves-the-others",
                   test_what_lifts_a_rung_to_nothing_serves_the_others);
  g_test_add_func ("/words/a-fitting-is-told-by-what-and-where",
                   test_a_fitting_is_told_by_what_and_where);
  return g_test_run ();
}
