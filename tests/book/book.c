/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The book as a whole: every bird has its figures, every figure its grounds. */
#include "config.h"

#include "shelf.h"

#include <string.h>

#define LAYERS "bantam light_layer medium_layer heavy_breed"
#define CHICKENS LAYERS " meat_fast meat_slow"
#define ALL CHICKENS " duck goose"

typedef struct
{
  const char *name;
  const char *kinds;
  int weeks_from;
} Wanted;

/* What the needs look up for a kind, from a week on without a gap. */
static const Wanted wanted_demands[] = {
  { "floor.area", ALL, 1 },
  { "run.area", ALL, 9 },
  { "roost.seat", LAYERS " meat_slow", 9 },
  { "nests.boxes", LAYERS " duck goose", 1 },
  { "nests.group-area", LAYERS, 1 },
  { "feed.long-edge", ALL, 1 },
  { "feed.round-edge", ALL, 1 },
  { "water.long-edge", ALL, 1 },
  { "water.round-edge", ALL, 1 },
  { "water.nipples", CHICKENS, 1 },
};

static const Wanted wanted_limits[] = {
  { "roost.bar-height", LAYERS " meat_slow", 1 },
  { "climb.short-hop-rise", LAYERS " meat_slow", 1 },
  { "climb.long-hop-drop", LAYERS " meat_slow", 1 },
  { "climb.drop-to-floor", LAYERS " meat_slow", 1 },
  { "climb.landing-strip", LAYERS " meat_slow", 1 },
  { "climb.ramp-slope", ALL, 1 },
  { "climb.ramp-width", ALL, 1 },
  { "nests.box-width", LAYERS " duck goose", 1 },
  { "nests.box-depth", LAYERS " duck goose", 1 },
  { "nests.height", LAYERS " duck goose", 1 },
  { "water.depth", "duck goose", 1 },
  { "way-out.pop-hole-width", ALL, 1 },
  { "way-out.pop-hole-height", ALL, 1 },
  { "company.females-per-male", LAYERS " meat_slow duck goose", 1 },
};

static gboolean
has (HcStandard *standard, gboolean limit, const char *name, const HcKind *kind, int week)
{
  if (limit)
    return hc_standard_find_limit (standard, name, kind, week, HC_CONDITION_DAY) != NULL;
  return hc_standard_find_demand (standard, name, kind, week, HC_CONDITION_DAY) != NULL;
}

static void
check_wanted (const Wanted *wanted, gboolean limit)
{
  g_auto (GStrv) kinds = g_strsplit (wanted->kinds, " ", -1);

  for (guint i = 0; i < hc_book_get_n_standards (shelf_book ()); i++)
    for (char **kind = kinds; *kind != NULL; kind++)
      for (int week = wanted->weeks_from; week < 60; week++)
        if (!has (hc_book_get_standard_at (shelf_book (), i), limit, wanted->name,
                  shelf_kind (*kind), week))
          {
            g_test_message ("%s of %s in week %d", wanted->name, *kind, week);
            g_test_fail ();
          }
}

static void
test_every_kind_has_its_figures (void)
{
  for (guint i = 0; i < G_N_ELEMENTS (wanted_demands); i++)
    check_wanted (&wanted_demands[i], FALSE);
  for (guint i = 0; i < G_N_ELEMENTS (wanted_limits); i++)
    check_wanted (&wanted_limits[i], TRUE);
}

static guint
n_applying_demands (HcStandard *standard, const char *name, const HcKind *kind, int week)
{
  guint n = 0;

  for (guint i = 0; i < hc_standard_get_n_demands (standard); i++)
    {
      const HcFigure *figure = &hc_standard_get_demand (standard, i)->figure;

      n += g_str_equal (figure->name, name)
           && hc_figure_applies (figure, kind, week, HC_CONDITION_DAY);
    }
  return n;
}

/* The first figure rules: a second one for the same birds would never be seen. */
static void
test_no_demand_hides_another (void)
{
  for (guint i = 0; i < hc_book_get_n_standards (shelf_book ()); i++)
    for (guint kind = 0; kind < hc_book_get_n_kinds (shelf_book ()); kind++)
      for (int week = 1; week < 30; week++)
        for (guint j = 0; j < G_N_ELEMENTS (wanted_demands); j++)
          g_assert_cmpuint (
              n_applying_demands (hc_book_get_standard_at (shelf_book (), i),
                                  wanted_demands[j].name,
                                  hc_book_get_kind_at (shelf_book (), kind), week),
              <=, 1);
}

static void
check_grounds (HcStandard *standard, const HcFigure *figure, GHashTable *used)
{
  g_assert_cmpstr (figure->standard, ==, hc_standard_get_id (standard));
  g_assert_true (hc_standard_find_figure (standard, figure->id) == figure);
  if (figure->evidence == HC_EVIDENCE_PUBLISHED)
    g_assert_nonnull (figure->source);
  if (figure->source != NULL)
    g_hash_table_add (used, (gpointer) figure->source);
}

static void
test_every_source_is_used (void)
{
  for (guint i = 0; i < hc_book_get_n_standards (shelf_book ()); i++)
    {
      HcStandard *standard = hc_book_get_standard_at (shelf_book (), i);
      g_autoptr (GHashTable) used = g_hash_table_new (NULL, NULL);

      for (guint j = 0; j < hc_standard_get_n_limits (standard); j++)
        check_grounds (standard, &hc_standard_get_limit (standard, j)->figure, used);
      for (guint j = 0; j < hc_standard_get_n_demands (standard); j++)
        check_grounds (standard, &hc_standard_get_demand (standard, j)->figure, used);
      for (guint j = 0; j < hc_standard_get_n_sources (standard); j++)
        g_assert_true (g_hash_table_contains (used, hc_standard_get_source (standard, j)));
    }
}

static void
check_clause (const HcClause *clause)
{
  const double coefficients[]
      = { clause->fixed,       clause->each,      clause->birds_per, clause->per_kg,
          clause->kg_per,      clause->share,     clause->step,      clause->step_from,
          clause->step_amount };
  double sum = 0;

  for (guint i = 0; i < G_N_ELEMENTS (coefficients); i++)
    {
      g_assert_cmpfloat (coefficients[i], >=, 0);
      sum += coefficients[i];
    }
  g_assert_cmpfloat (sum, >, 0);
}

static void
test_no_clause_asks_for_less_than_nothing (void)
{
  for (guint i = 0; i < hc_book_get_n_standards (shelf_book ()); i++)
    {
      HcStandard *standard = hc_book_get_standard_at (shelf_book (), i);

      for (guint j = 0; j < hc_standard_get_n_demands (standard); j++)
        {
          const HcDemand *demand = hc_standard_get_demand (standard, j);

          for (guint level = 0; level < HC_N_ASKED_LEVELS; level++)
            for (guint k = 0; k < demand->n_clauses[level]; k++)
              check_clause (&demand->clauses[level][k]);
        }
    }
}

static void
test_levels_are_ever_stricter (void)
{
  HcBasis basis = { 30e6, 12e6, 22e3 };
  HcStandard *home = shelf_standard ("home-cold");

  for (guint i = 0; i < hc_standard_get_n_demands (home); i++)
    for (int birds = 1; birds <= 200; birds++)
      {
        const HcDemand *demand = hc_standard_get_demand (home, i);
        double least = hc_demand_required (demand, HC_LEVEL_TIGHT, birds, 2 * birds, &basis);
        double good = hc_demand_required (demand, HC_LEVEL_GOOD, birds, 2 * birds, &basis);
        double plenty = hc_demand_required (demand, HC_LEVEL_PLENTY, birds, 2 * birds, &basis);

        g_assert_cmpfloat (least, <=, good + 1e-6);
        g_assert_cmpfloat (good, <=, plenty + 1e-6);
      }
}

static void
test_the_five_standards (void)
{
  static const char *const ids[] = { "home-cold", "eu-laying-hens", "eu-organic",
                                     "eu-meat-chickens", "de-ordinance" };

  g_assert_cmpuint (hc_book_get_n_standards (shelf_book ()), ==, G_N_ELEMENTS (ids));
  for (guint i = 0; i < G_N_ELEMENTS (ids); i++)
    g_assert_cmpstr (hc_standard_get_id (shelf_standard (ids[i])), ==, ids[i]);
  g_assert_true (hc_book_get_standard_at (shelf_book (), 0) == shelf_standard ("home-cold"));
  g_assert_null (hc_book_get_standard (shelf_book (), "no-such"));
}

static void
test_a_standard_outlives_its_book (void)
{
  HcBook *book = hc_book_load_default (NULL);
  g_autoptr (HcStandard) law = hc_standard_ref (hc_book_get_standard (book, "eu-organic"));

  hc_book_unref (book);
  g_assert_cmpstr (hc_standard_get_id (law), ==, "eu-organic");
  g_assert_nonnull (hc_standard_find_limit (law, "reach.headroom", NULL, 1, HC_CONDITION_DAY));
}

static gpointer
look_around (gpointer data)
{
  g_autoptr (HcBook) book = data;

  for (int i = 0; i < 1000; i++)
    g_assert_nonnull (hc_standard_find_limit (hc_book_get_standard (book, "de-ordinance"),
                                              "roost.headroom", NULL, 1, HC_CONDITION_DAY));
  return NULL;
}

static void
test_threads_share_a_book (void)
{
  GThread *threads[4];

  for (guint i = 0; i < G_N_ELEMENTS (threads); i++)
    threads[i] = g_thread_new ("reader", look_around, hc_book_ref (shelf_book ()));
  for (guint i = 0; i < G_N_ELEMENTS (threads); i++)
    g_thread_join (threads[i]);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/book/every-kind-has-its-figures", test_every_kind_has_its_figures);
  g_test_add_func ("/book/no-demand-hides-another", test_no_demand_hides_another);
  g_test_add_func ("/book/every-source-is-used", test_every_source_is_used);
  g_test_add_func ("/book/no-clause-asks-for-less-than-nothing",
                   test_no_clause_asks_for_less_than_nothing);
  g_test_add_func ("/book/levels-are-ever-stricter", test_levels_are_ever_stricter);
  g_test_add_func ("/book/the-five-standards", test_the_five_standards);
  g_test_add_func ("/book/a-standard-outlives-its-book", test_a_standard_outlives_its_book);
  g_test_add_func ("/book/threads-share-a-book", test_threads_share_a_book);
  return g_test_run ();
}
