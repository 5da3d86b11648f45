/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Whatever a plan file may hold is answered in whole sentences and sound
 * numbers, by all rules, in all conditions. */
#include "config.h"

#include "absurd-plans.h"
#include "base/shape-ops.h"
#include "plan/soundness.h"
#include "words/words.h"

#include <math.h>

/* Plans of anything that are tried; a failure names its seed. */
#define N_SEEDS 40
/* Findings of one need that a keeper is shown. */
#define MOST_FINDINGS 100

/* What is put to the questions. */
typedef struct
{
  HcPlan *plan;
  HcBook *book;
  HcFlock *flock;
  HcCheckCache *cache;
} Trial;

static const HcCondition conditions[]
    = { HC_CONDITION_DAY, HC_CONDITION_NIGHT, HC_CONDITION_SHUT_IN };

static void
trial_init (Trial *trial, const House *house, const char *standard)
{
  House ruled = *house;
  g_autoptr (GError) error = NULL;

  if (standard != NULL)
    ruled.rules.standard = (char *) standard;
  trial->plan = house_make_plan (&ruled);
  hc_plan_is_sound (trial->plan, &error);
  g_assert_no_error (error);
  trial->book = hc_book_ref (house->book);
  trial->flock = hc_flock_on (trial->plan, trial->book, hc_plan_get_day (trial->plan));
  trial->cache = hc_check_cache_new ();
}

static void
trial_clear (Trial *trial)
{
  hc_check_cache_free (trial->cache);
  hc_flock_unref (trial->flock);
  hc_book_unref (trial->book);
  hc_plan_unref (trial->plan);
}

/* Takes over @text, which a keeper reads. */
static void
assert_reads_well (char *text)
{
  static const char *const slips
      = "\\b(nan|inf|null)\\b|(?<![\\d.])-0(\\.0+)?(?![\\d.])|[{}]|\\(null\\)";

  if (text != NULL && g_regex_match_simple (slips, text, G_REGEX_CASELESS, 0))
    g_error ("a keeper reads: %s", text);
  g_free (text);
}

static void
assert_finding (const Trial *trial, const HcCheck *check, const HcFinding *finding)
{
  g_assert_true (isfinite (finding->measured));
  g_assert_true (isfinite (finding->required));
  g_assert_cmpint (finding->birds, >=, 0);
  g_assert_cmpint (finding->birds, <=, hc_flock_get_total (trial->flock));
  g_assert_cmpint (finding->level, <, HC_LEVEL_PLENTY);
  for (HcUnits units = HC_UNITS_METRIC; units <= HC_UNITS_FEET; units++)
    {
      assert_reads_well (hc_words_finding (check, finding, units));
      assert_reads_well (hc_words_finding_detail (finding, units));
      assert_reads_well (hc_words_finding_todo (check, finding, units));
    }
  assert_reads_well (hc_words_finding_source (finding));
  for (char **id = finding->ids; *id != NULL; id++)
    g_assert_cmpint (hc_check_get_part_level (check, *id), <=, finding->level);
}

/* A level is what it says: nobody left over there, somebody one above. */
static void
assert_counts (const HcCheck *check, HcNeedId need)
{
  gint64 most = hc_check_get_birds (check, need);

  g_assert_cmpint (most, >=, 0);
  for (HcLevel aim = HC_LEVEL_TIGHT; aim <= HC_LEVEL_PLENTY; aim++)
    {
      gint64 served = hc_check_get_served (check, need, aim);

      g_assert_cmpint (served, >=, 0);
      g_assert_cmpint (served, <=, most);
      if (hc_need_get (need)->sort == HC_NEED_COUNTING && hc_check_applies (check, need))
        g_assert_cmpint (hc_check_get_need_level (check, need) >= aim, ==,
                         served == hc_check_get_birds (check, need));
      most = served;
    }
}

static void
assert_allotments (const HcCheck *check, HcNeedId need)
{
  for (guint i = 0; i < hc_check_get_n_allotments (check, need); i++)
    {
      HcAllotment *allotment = hc_check_get_allotment (check, need, i);
      gint64 seated = 0;

      for (guint seat = 0; seat < hc_allotment_get_n_seats (allotment); seat++)
        {
          g_assert_cmpint (hc_allotment_get_seat (allotment, seat)->count, >, 0);
          seated += hc_allotment_get_seat (allotment, seat)->count;
        }
      g_assert_cmpint (seated, <=, hc_check_get_birds (check, need));
    }
}

static void
assert_check (const Trial *trial, HcCondition condition)
{
  g_autoptr (HcCheck) check
      = hc_check_plan (trial->cache, trial->plan, trial->book, condition, trial->flock);

  for (HcNeedId need = 0; need < HC_N_NEEDS; need++)
    {
      guint n_findings = hc_check_get_n_findings (check, need);

      g_assert_cmpuint (n_findings, <=, MOST_FINDINGS);
      assert_counts (check, need);
      assert_allotments (check, need);
      for (guint i = 0; i < n_findings; i++)
        assert_finding (trial, check, hc_check_get_finding (check, need, i));
    }
}

static void
assert_headline (const Trial *trial)
{
  HcHeadline headline;

  hc_headline_work_out (trial->cache, trial->plan, trial->book, trial->flock, &headline);
  g_assert_cmpint (headline.good, >=, -1);
  g_assert_cmpint (headline.good, <=, headline.least);
  g_assert_cmpint (headline.birds, ==, hc_flock_get_total (trial->flock));
  assert_reads_well (hc_words_headline (&headline, HC_UNITS_METRIC));
  assert_reads_well (hc_words_headline (&headline, HC_UNITS_FEET));
}

static void
assert_ladder (const Trial *trial, HcLadderQuestion question, HcCondition condition)
{
  g_autoptr (HcLadder) ladder
      = hc_ladder_climb (trial->cache, trial->plan, trial->book, trial->flock, question,
                         "medium_layer", condition, HC_LEVEL_GOOD);

  g_assert_cmpint (hc_ladder_get_most (ladder), >=, -1);
  assert_reads_well (hc_words_more (ladder));
  for (guint i = 0; i < hc_ladder_get_n_rungs (ladder); i++)
    {
      const HcRung *rung = hc_ladder_get_rung (ladder, i);

      g_assert_true (isfinite (rung->lift));
      g_assert_cmpint (rung->most, >=, -1);
      g_assert_cmpint (rung->lift_to, >=, rung->most);
      assert_reads_well (hc_words_rung (rung, HC_UNITS_METRIC));
      assert_reads_well (hc_words_rung (rung, HC_UNITS_FEET));
    }
}

static void
assert_answers (const House *house, const char *standard)
{
  Trial trial;

  trial_init (&trial, house, standard);
  for (guint i = 0; i < G_N_ELEMENTS (conditions); i++)
    assert_check (&trial, conditions[i]);
  assert_headline (&trial);
  for (HcLadderQuestion question = 0; question <= HC_LADDER_ONE_KIND; question++)
    assert_ladder (&trial, question, HC_CONDITION_DAY);
  trial_clear (&trial);
}

static void
test_plan (gconstpointer data)
{
  const AbsurdPlan *absurd = data;
  House house;

  house_init (&house);
  absurd->build (&house);
  assert_answers (&house, NULL);
  for (guint i = 0; i < hc_book_get_n_standards (house.book); i++)
    assert_answers (&house, hc_standard_get_id (hc_book_get_standard_at (house.book, i)));
  house_clear (&house);
}

static void
test_anything (void)
{
  for (guint32 seed = 0; seed < N_SEEDS; seed++)
    {
      House house;

      g_test_message ("seed %u", seed);
      house_init (&house);
      absurd_build_anything (&house, seed);
      assert_answers (&house, NULL);
      house_clear (&house);
    }
}

static guint64
count_calls (void (*build) (House *house, guint n), guint n)
{
  House house;
  Trial trial;
  guint64 before;
  guint64 calls;

  house_init (&house);
  build (&house, n);
  trial_init (&trial, &house, NULL);
  before = hc_geometry_calls ();
  assert_check (&trial, HC_CONDITION_DAY);
  calls = hc_geometry_calls () - before;
  trial_clear (&trial);
  house_clear (&house);
  return calls;
}

/* Four times the things ask no more than n log n of the geometry. */
static void
assert_grows_slowly (void (*build) (House *house, guint n))
{
  guint64 few = count_calls (build, 100);
  guint64 many = count_calls (build, 400);

  g_test_message ("%u calls, %u calls", (guint) few, (guint) many);
  g_assert_cmpuint (many, <=, 6 * few);
}

static void
test_a_heap_costs_little_more (void)
{
  assert_grows_slowly (absurd_build_heap);
}

static void
test_bars_on_bars_cost_little_more (void)
{
  assert_grows_slowly (absurd_build_bars);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  for (guint i = 0; i < n_absurd_plans; i++)
    {
      g_autofree char *path = g_strconcat ("/absurd/", absurd_plans[i].name, NULL);

      g_test_add_data_func (path, &absurd_plans[i], test_plan);
    }
  g_test_add_func ("/absurd/anything-from-a-seed", test_anything);
  g_test_add_func ("/absurd/a-heap-costs-little-more", test_a_heap_costs_little_more);
  g_test_add_func ("/absurd/bars-on-bars-cost-little-more", test_bars_on_bars_cost_little_more);
  return g_test_run ();
}
