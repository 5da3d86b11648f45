/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Kinds of bird and breeds: what is known of each. */
#include "config.h"

#include "shelf.h"

static const char *const kinds[] = { "bantam",    "light_layer", "medium_layer", "heavy_breed",
                                     "meat_fast", "meat_slow",   "duck",         "goose" };

static void
test_the_eight_kinds (void)
{
  g_assert_cmpuint (hc_book_get_n_kinds (shelf_book ()), ==, G_N_ELEMENTS (kinds));
  for (guint i = 0; i < G_N_ELEMENTS (kinds); i++)
    {
      const HcKind *kind = hc_book_get_kind_at (shelf_book (), i);

      g_assert_cmpstr (kind->id, ==, kinds[i]);
      g_assert_cmpuint (kind->order, ==, i);
      g_assert_true (kind == shelf_kind (kinds[i]));
    }
  g_assert_null (hc_book_get_kind (shelf_book (), "ostrich"));
  g_assert_null (hc_book_get_kind (shelf_book (), NULL));
}

static void
test_kinds_grow_bigger_than_they_hatch (void)
{
  for (guint i = 0; i < G_N_ELEMENTS (kinds); i++)
    {
      const HcKind *kind = shelf_kind (kinds[i]);
      double before = 0;

      for (double weeks = 0; weeks < 60; weeks += 0.25)
        {
          double now = hc_kind_get_mass_kg (kind, HC_SEX_UNKNOWN, weeks);

          g_assert_cmpfloat (now, >=, before);
          before = now;
        }
      g_assert_cmpfloat (hc_kind_get_mass_kg (kind, HC_SEX_FEMALE, 500), ==, kind->hen_kg);
      g_assert_cmpfloat (hc_kind_get_mass_kg (kind, HC_SEX_MALE, 500), ==, kind->cock_kg);
    }
}

static void
test_day_olds_weigh_alike (void)
{
  const HcKind *kind = shelf_kind ("heavy_breed");

  g_assert_cmpfloat (hc_kind_get_mass_kg (kind, HC_SEX_MALE, 0), ==,
                     hc_kind_get_mass_kg (kind, HC_SEX_FEMALE, 0));
  g_assert_cmpfloat (hc_kind_get_mass_kg (kind, HC_SEX_MALE, 20), >,
                     hc_kind_get_mass_kg (kind, HC_SEX_FEMALE, 20));
}

/* Modern objective of a fast meat cross, from memory: 0.99 kg at three weeks. */
static void
test_growth_is_straight_between_its_points (void)
{
  const HcKind *kind = shelf_kind ("meat_fast");

  g_assert_cmpfloat_with_epsilon (hc_kind_get_mass_kg (kind, HC_SEX_UNKNOWN, 3), 0.99, 1e-9);
  g_assert_cmpfloat_with_epsilon (hc_kind_get_mass_kg (kind, HC_SEX_UNKNOWN, 3.5),
                                  (0.99 + 1.57) / 2, 1e-9);
}

static void
test_masses_fit_their_class (void)
{
  /* Bird classes by hen's mass, kg, from the breed weight lists; meat birds and
   * waterfowl as raised. */
  static const double bounds[][2] = { { .3, 1.13 }, { 1.4, 3.0 }, { 1.9, 3.4 }, { 3.2, 5.5 },
                                      { 2, 4 },     { 2, 3.5 },   { .5, 5.9 },  { 4, 12 } };

  for (guint i = 0; i < hc_book_get_n_breeds (shelf_book ()); i++)
    {
      const HcBreed *breed = hc_book_get_breed_at (shelf_book (), i);
      const double *bound = bounds[breed->kind->order];

      g_assert_cmpfloat (breed->hen_kg, >=, bound[0]);
      g_assert_cmpfloat (breed->hen_kg, <=, bound[1]);
      g_assert_cmpfloat (breed->cock_kg, >=, breed->hen_kg);
    }
}

static void
test_there_are_breeds_of_every_kind (void)
{
  guint of_kind[G_N_ELEMENTS (kinds)] = { 0 };
  guint n = hc_book_get_n_breeds (shelf_book ());

  g_assert_cmpuint (n, >=, 60);
  for (guint i = 0; i < n; i++)
    of_kind[hc_book_get_breed_at (shelf_book (), i)->kind->order]++;
  for (guint i = 0; i < G_N_ELEMENTS (kinds); i++)
    g_assert_cmpuint (of_kind[i], >, 0);
}

static void
test_breeds_are_told_apart (void)
{
  g_autoptr (GHashTable) ids = g_hash_table_new (g_str_hash, g_str_equal);
  g_autoptr (GHashTable) names = g_hash_table_new (g_str_hash, g_str_equal);

  for (guint i = 0; i < hc_book_get_n_breeds (shelf_book ()); i++)
    {
      const HcBreed *breed = hc_book_get_breed_at (shelf_book (), i);

      g_assert_true (g_hash_table_add (ids, (gpointer) breed->id));
      g_assert_true (g_hash_table_add (names, (gpointer) breed->name));
      g_assert_true (hc_book_get_breed (shelf_book (), breed->id) == breed);
      g_assert_true ((breed->evidence == HC_EVIDENCE_PUBLISHED) == (breed->source != NULL));
    }
}

static void
test_layers_lay_and_meat_birds_do_not (void)
{
  for (guint i = 0; i < hc_book_get_n_breeds (shelf_book ()); i++)
    {
      const HcBreed *breed = hc_book_get_breed_at (shelf_book (), i);

      g_assert_true ((breed->eggs_per_year > 0) == !breed->kind->raised_for_meat);
      g_assert_true ((breed->egg_colour != NULL) == (breed->eggs_per_year > 0));
      g_assert_true ((breed->comb == HC_COMB_NONE)
                     == (breed->kind->species != HC_SPECIES_CHICKEN));
    }
}

static void
test_habits_of_waterfowl_and_meat_birds (void)
{
  const HcKind *duck = shelf_kind ("duck");
  const HcKind *broiler = shelf_kind ("meat_fast");

  g_assert_true (duck->head_deep_water);
  g_assert_true (duck->nests_on_floor);
  g_assert_false (duck->nipples_alone);
  g_assert_false (duck->flies_up);
  g_assert_cmpint (duck->perching, ==, HC_PERCHING_NEVER);
  g_assert_cmpint (broiler->perching, ==, HC_PERCHING_NEVER);
  g_assert_cmpint (broiler->parting_week, ==, 7);
  g_assert_cmpint (broiler->at_lay_week, ==, 0);
  g_assert_cmpint (shelf_kind ("meat_slow")->parting_week, ==, 14);
  g_assert_cmpint (shelf_kind ("meat_slow")->perching, ==, HC_PERCHING_OPTIONAL);
}

static void
test_names_count (void)
{
  const HcKind *kind = shelf_kind ("heavy_breed");

  g_assert_cmpstr (hc_kind_get_name (kind, 1), ==, "heavy hen");
  g_assert_cmpstr (hc_kind_get_name (kind, 4), ==, "heavy hens");
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/birds/the-eight-kinds", test_the_eight_kinds);
  g_test_add_func ("/birds/kinds-grow-bigger-than-they-hatch",
                   test_kinds_grow_bigger_than_they_hatch);
  g_test_add_func ("/birds/day-olds-weigh-alike", test_day_olds_weigh_alike);
  g_test_add_func ("/birds/growth-is-straight-between-its-points",
                   test_growth_is_straight_between_its_points);
  g_test_add_func ("/birds/masses-fit-their-class", test_masses_fit_their_class);
  g_test_add_func ("/birds/there-are-breeds-of-every-kind", test_there_are_breeds_of_every_kind);
  g_test_add_func ("/birds/breeds-are-told-apart", test_breeds_are_told_apart);
  g_test_add_func ("/birds/layers-lay-and-meat-birds-do-not",
                   test_layers_lay_and_meat_birds_do_not);
  g_test_add_func ("/birds/habits-of-waterfowl-and-meat-birds",
                   test_habits_of_waterfowl_and_meat_birds);
  g_test_add_func ("/birds/names-count", test_names_count);
  return g_test_run ();
}
