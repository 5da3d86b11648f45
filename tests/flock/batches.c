/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The birds of a day, from the groups in a plan. */
#include "config.h"

#include "flock/flock.h"

#define HATCH_DAY 738000

typedef struct
{
  HcBook *book;
  HcParts *batches;
  double coldest_night_c;
} Fixture;

static void
set_up (Fixture *fixture, gconstpointer user_data)
{
  g_autoptr (GError) error = NULL;

  fixture->book = hc_book_load_default (&error);
  g_assert_no_error (error);
  fixture->batches = hc_parts_new ();
  fixture->coldest_night_c = -10;
}

static void
tear_down (Fixture *fixture, gconstpointer user_data)
{
  g_ptr_array_unref (fixture->batches);
  hc_book_unref (fixture->book);
}

static void
add_batch (Fixture *fixture, const char *kind, int females, int males, guint32 hatched)
{
  g_autofree char *id = g_strdup_printf ("b%u", fixture->batches->len);
  HcBatchValues values;

  hc_batch_values_init (&values);
  values.kind = (char *) kind;
  values.females = females;
  values.males = males;
  values.hatched = hatched;
  values.pen = (char *) "p";
  g_ptr_array_add (fixture->batches, hc_batch_new (id, &values));
}

static HcFlock *
flock_on (Fixture *fixture, guint32 day)
{
  g_autoptr (HcPlan) empty = hc_plan_new_empty ("u", "t");
  HcPlanValues values = *hc_plan_get (empty);
  HcSiteValues place = *hc_plan_get_site (empty);
  g_autoptr (HcSite) site = NULL;
  g_autoptr (HcPlan) plan = NULL;

  place.coldest_night_c = fixture->coldest_night_c;
  site = hc_site_new (NULL, &place);
  values.site = site;
  values.batches = fixture->batches;
  plan = hc_plan_new ("u", &values);
  return hc_flock_on (plan, fixture->book, day);
}

static const HcBody *
only_body (const HcFlock *flock)
{
  g_assert_cmpuint (hc_flock_get_n_bodies (flock), ==, 1);
  return hc_flock_get_body (flock, 0);
}

static void
test_grown_birds_share_a_body (Fixture *fixture, gconstpointer user_data)
{
  g_autoptr (HcFlock) flock = NULL;

  add_batch (fixture, "medium_layer", 6, 1, 0);
  add_batch (fixture, "medium_layer", 3, 0, HATCH_DAY);
  flock = flock_on (fixture, HATCH_DAY + 7 * 60);
  g_assert_cmpuint (hc_flock_get_n_bodies (flock), ==, 2);
  g_assert_cmpuint (hc_flock_get_n_rows (flock), ==, 3);
  g_assert_cmpint (hc_flock_get_total (flock), ==, 10);
  g_assert_true (hc_flock_get_body (flock, 0)->at_lay);
  g_assert_false (hc_flock_get_body (flock, 1)->at_lay);
}

static void
test_eggs_are_not_birds (Fixture *fixture, gconstpointer user_data)
{
  g_autoptr (HcFlock) before = NULL;
  g_autoptr (HcFlock) after = NULL;

  add_batch (fixture, "light_layer", 15, 0, HATCH_DAY);
  before = flock_on (fixture, HATCH_DAY - 1);
  after = flock_on (fixture, HATCH_DAY);
  g_assert_cmpint (hc_flock_get_total (before), ==, 0);
  g_assert_cmpint (hc_flock_get_total (after), ==, 15);
}

/* Eight weeks of heat in a cold country, six where nights stay above 10 °C:
 * common practice, and Colorado State Extension 2.502 for the six. */
static void
test_chicks_come_off_heat (Fixture *fixture, gconstpointer user_data)
{
  static const struct
  {
    double coldest_night_c;
    guint days;
    gboolean under_heat;
  } rows[] = { { -10, 0, TRUE },   { -10, 55, TRUE }, { -10, 56, FALSE },
               { 12, 41, TRUE },   { 12, 42, FALSE }, { 10, 42, TRUE } };

  add_batch (fixture, "light_layer", 15, 0, HATCH_DAY);
  for (guint i = 0; i < G_N_ELEMENTS (rows); i++)
    {
      g_autoptr (HcFlock) flock = NULL;

      fixture->coldest_night_c = rows[i].coldest_night_c;
      flock = flock_on (fixture, HATCH_DAY + rows[i].days);
      g_assert_cmpint (only_body (flock)->under_heat, ==, rows[i].under_heat);
    }
}

/* Chickens begin to roost at about eight weeks: India Agronet, poultry house
 * equipment. */
static void
test_pullets_begin_to_roost (Fixture *fixture, gconstpointer user_data)
{
  g_autoptr (HcFlock) chicks = NULL;
  g_autoptr (HcFlock) pullets = NULL;

  add_batch (fixture, "light_layer", 15, 0, HATCH_DAY);
  chicks = flock_on (fixture, HATCH_DAY + 7 * 5);
  pullets = flock_on (fixture, HATCH_DAY + 7 * 10);
  g_assert_false (only_body (chicks)->roosts);
  g_assert_true (only_body (pullets)->roosts);
  g_assert_cmpfloat (only_body (chicks)->mass_kg, <, only_body (pullets)->mass_kg);
  g_assert_cmpfloat (hc_body_get_length_mm (only_body (chicks)), <,
                     hc_body_get_length_mm (only_body (pullets)));
}

static void
test_a_body_is_in_the_week_after_the_ones_it_lived (Fixture *fixture, gconstpointer user_data)
{
  g_autoptr (HcFlock) day_olds = NULL;
  g_autoptr (HcFlock) hens = NULL;

  add_batch (fixture, "light_layer", 15, 0, HATCH_DAY);
  day_olds = flock_on (fixture, HATCH_DAY);
  hens = flock_on (fixture, HATCH_DAY + 7 * 52);
  g_assert_cmpint (hc_body_get_week (only_body (day_olds)), ==, 1);
  g_assert_cmpint (hc_body_get_week (only_body (hens)), ==, HC_WEEK_GROWN);
}

/* More ages than a mask has room for are put together; no bird is lost. */
static void
test_many_ages_fit_the_table (Fixture *fixture, gconstpointer user_data)
{
  static const char *const kinds[] = { "bantam", "light_layer", "medium_layer", "heavy_breed",
                                       "meat_slow", "duck", "goose" };
  g_autoptr (HcFlock) flock = NULL;

  for (guint kind = 0; kind < G_N_ELEMENTS (kinds); kind++)
    for (guint week = 0; week < 17; week++)
      add_batch (fixture, kinds[kind], 2, 1, HATCH_DAY - 7 * week);
  flock = flock_on (fixture, HATCH_DAY);
  g_assert_cmpint (hc_flock_get_total (flock), ==, G_N_ELEMENTS (kinds) * 17 * 3);
  g_assert_cmpuint (hc_flock_get_n_bodies (flock), <=, HC_MOST_BODIES);
  g_assert_cmpuint (hc_flock_get_n_bodies (flock), >, 2 * G_N_ELEMENTS (kinds));
}

int
main (int argc, char **argv)
{
  static const struct
  {
    const char *path;
    void (*test) (Fixture *fixture, gconstpointer user_data);
  } tests[] = {
    { "/batches/grown-birds-share-a-body", test_grown_birds_share_a_body },
    { "/batches/eggs-are-not-birds", test_eggs_are_not_birds },
    { "/batches/off-heat", test_chicks_come_off_heat },
    { "/batches/begin-to-roost", test_pullets_begin_to_roost },
    { "/batches/week-of-life", test_a_body_is_in_the_week_after_the_ones_it_lived },
    { "/batches/many-ages", test_many_ages_fit_the_table },
  };

  g_test_init (&argc, &argv, NULL);
  for (guint i = 0; i < G_N_ELEMENTS (tests); i++)
    g_test_add (tests[i].path, Fixture, NULL, set_up, tests[i].test, tear_down);
  return g_test_run ();
}
