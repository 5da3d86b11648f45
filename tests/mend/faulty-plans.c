/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Ten plans with faults put into them on purpose: just those are told of as too
 * little, and following first remedies ends where nothing is. */
#include "config.h"

#include "files/store.h"
#include "mend/mend.h"

#define MOST_STEPS 20

static HcBook *book;

/* What is wrong with each, written down before it was judged. */
typedef struct
{
  const char *plan;
  const char *faults[4];
} Faulty;

static const Faulty plans[] = {
  { "door-left-open", { "predators.left-open keeper-door" } },
  { "too-few-boxes", { "nests.too-few indoors" } },
  { "nowhere-to-sleep", { "roost.none indoors" } },
  { "short-of-feeders", { "feed.too-little indoors" } },
  { "no-water", { "water.none indoors" } },
  { "dug-under", { "predators.under indoors" } },
  { "bare-floor", { "litter.none indoors" } },
  { "narrow-pop-hole", { "way-out.none indoors" } },
  { "three-holes",
    { "predators.torn window-south", "predators.bare vent-south",
      "predators.latch keeper-door" } },
  { "in-each-other", { "clearance.overlap feeder-1" } },
};

static HcPlan *
load (const char *name)
{
  g_autofree char *file_name = g_strconcat (name, ".hencote", NULL);
  g_autoptr (GError) error = NULL;
  g_autoptr (GFile) file = g_file_new_for_path (
      g_test_get_filename (G_TEST_DIST, "data", "faulty", file_name, NULL));
  g_autoptr (HcPlanFile) read = hc_plan_store_load (file, NULL, &error);

  g_assert_no_error (error);
  return hc_plan_ref (read->plan);
}

static HcCheck *
check_of (HcCheckCache *cache, HcPlan *plan)
{
  g_autoptr (HcFlock) flock = hc_flock_on (plan, book, hc_plan_get_day (plan));

  return hc_check_plan (cache, plan, book, HC_CONDITION_DAY, flock);
}

static GHashTable *
list_faults (const HcCheck *check)
{
  GHashTable *found = g_hash_table_new_full (g_str_hash, g_str_equal, g_free, NULL);

  for (guint need = 0; need < HC_N_NEEDS; need++)
    for (guint i = 0; i < hc_check_get_n_findings (check, need); i++)
      {
        const HcFinding *finding = hc_check_get_finding (check, need, i);

        if (finding->level == HC_LEVEL_SHORT)
          g_hash_table_add (found, g_strdup_printf ("%s %s", finding->code, finding->ids[0]));
      }
  return found;
}

static void
test_its_faults_are_found_and_no_others (gconstpointer data)
{
  const Faulty *faulty = data;
  g_autoptr (HcPlan) plan = load (faulty->plan);
  g_autoptr (HcCheckCache) cache = hc_check_cache_new ();
  g_autoptr (HcCheck) check = check_of (cache, plan);
  g_autoptr (GHashTable) found = list_faults (check);
  guint n = 0;

  for (; faulty->faults[n] != NULL; n++)
    {
      g_test_message ("%s", faulty->faults[n]);
      g_assert_true (g_hash_table_contains (found, faulty->faults[n]));
    }
  g_assert_cmpuint (g_hash_table_size (found), ==, n);
}

static HcPlan *
take_step (HcCheckCache *cache, HcPlan *plan)
{
  g_autoptr (HcCheck) check = check_of (cache, plan);

  for (guint need = 0; need < HC_N_NEEDS; need++)
    for (guint i = 0; i < hc_check_get_n_findings (check, need); i++)
      {
        const HcFinding *finding = hc_check_get_finding (check, need, i);
        g_autoptr (GPtrArray) remedies = NULL;

        if (finding->level > HC_LEVEL_SHORT)
          continue;
        remedies = hc_mend_finding (cache, book, check, need, finding);
        if (remedies->len > 0)
          return hc_plan_ref (((HcRemedy *) remedies->pdata[0])->plan);
      }
  return NULL;
}

static void
test_first_remedies_lead_out_of_it (gconstpointer data)
{
  const Faulty *faulty = data;
  g_autoptr (HcPlan) plan = load (faulty->plan);
  g_autoptr (HcCheckCache) cache = hc_check_cache_new ();
  g_autoptr (HcCheck) check = NULL;
  guint steps = 0;

  for (HcPlan *next = take_step (cache, plan); next != NULL; next = take_step (cache, plan))
    {
      hc_plan_unref (plan);
      plan = next;
      g_assert_cmpuint (++steps, <=, MOST_STEPS);
    }
  check = check_of (cache, plan);
  g_assert_cmpint (hc_check_get_level (check), >, HC_LEVEL_SHORT);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  book = hc_book_load_default (NULL);
  for (guint i = 0; i < G_N_ELEMENTS (plans); i++)
    {
      g_autofree char *found = g_strconcat ("/faulty-plans/", plans[i].plan, "/found", NULL);
      g_autofree char *mended = g_strconcat ("/faulty-plans/", plans[i].plan, "/mended", NULL);

      g_test_add_data_func (found, &plans[i], test_its_faults_are_found_and_no_others);
      g_test_add_data_func (mended, &plans[i], test_first_remedies_lead_out_of_it);
    }
  return g_test_run ();
}
