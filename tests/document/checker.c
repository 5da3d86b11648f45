/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The checker answers for the newest plan, once, and counts aside. */
#include "config.h"

#include "document/checker.h"
#include "plan/edit-fitting.h"

#include "../sample/two-pens.h"

typedef struct
{
  HcDocument *document;
  HcBook *book;
  HcChecker *checker;
  guint checked;
  guint counted;
} Fixture;

static void
count (guint *times)
{
  (*times)++;
}

static void
set_up (Fixture *fixture, gconstpointer data)
{
  g_autoptr (HcPlan) plan = two_pens_new ();
  g_autoptr (GError) error = NULL;

  fixture->document = hc_document_new (plan);
  fixture->book = hc_book_load_default (&error);
  g_assert_no_error (error);
  fixture->checker = hc_checker_new (fixture->document, fixture->book);
  g_signal_connect_swapped (fixture->checker, "checked", G_CALLBACK (count), &fixture->checked);
  g_signal_connect_swapped (fixture->checker, "counted", G_CALLBACK (count), &fixture->counted);
}

static void
tear_down (Fixture *fixture, gconstpointer data)
{
  g_assert_finalize_object (fixture->checker);
  g_assert_finalize_object (fixture->document);
  hc_book_unref (fixture->book);
}

static void
move_feeder (Fixture *fixture)
{
  static const char *const feeder[] = { "feeder", NULL };
  g_autoptr (HcPlan) after = hc_plan_move_fittings (hc_document_get_plan (fixture->document),
                                                    feeder, hc_point (10, 0), NULL);

  hc_document_apply (fixture->document, after, "Move", NULL);
}

static void
wait_for_count (Fixture *fixture, guint times)
{
  while (fixture->counted < times)
    g_main_context_iteration (NULL, TRUE);
}

static void
test_checks_once_a_plan (Fixture *fixture, gconstpointer data)
{
  g_assert_true (hc_checker_update (fixture->checker));
  g_assert_false (hc_checker_update (fixture->checker));
  g_assert_cmpuint (fixture->checked, ==, 1);
  move_feeder (fixture);
  move_feeder (fixture);
  g_assert_true (hc_checker_update (fixture->checker));
  g_assert_cmpuint (fixture->checked, ==, 2);
  g_assert_true (hc_check_get_plan (hc_checker_get_check (fixture->checker, HC_CONDITION_NIGHT))
                 == hc_document_get_plan (fixture->document));
}

static void
test_judges_the_preview (Fixture *fixture, gconstpointer data)
{
  static const char *const feeder[] = { "feeder", NULL };
  HcPlan *start = hc_document_get_plan (fixture->document);
  g_autoptr (HcPlan) dragged = hc_plan_move_fittings (start, feeder, hc_point (50, 0), NULL);

  hc_document_preview (fixture->document, dragged);
  hc_checker_update (fixture->checker);
  g_assert_true (hc_check_get_plan (hc_checker_get_check (fixture->checker, HC_CONDITION_DAY))
                 == dragged);
}

static void
test_condition_is_told_once (Fixture *fixture, gconstpointer data)
{
  hc_checker_update (fixture->checker);
  hc_checker_set_condition (fixture->checker, HC_CONDITION_NIGHT);
  hc_checker_set_condition (fixture->checker, HC_CONDITION_NIGHT);
  g_assert_cmpuint (fixture->checked, ==, 2);
  g_assert_cmpint (hc_checker_get_condition (fixture->checker), ==, HC_CONDITION_NIGHT);
}

static void
test_worker_counts_as_this_thread_does (Fixture *fixture, gconstpointer data)
{
  g_autoptr (HcCheckCache) cache = hc_check_cache_new ();
  HcPlan *plan = hc_document_get_plan (fixture->document);
  g_autoptr (HcFlock) flock = hc_flock_on (plan, fixture->book, hc_plan_get_day (plan));
  HcHeadline here;

  g_assert_null (hc_checker_get_headline (fixture->checker));
  hc_checker_update (fixture->checker);
  wait_for_count (fixture, 1);
  hc_headline_work_out (cache, plan, fixture->book, flock, &here);
  g_assert_cmpint (hc_checker_get_headline (fixture->checker)->good, ==, here.good);
  g_assert_cmpint (hc_checker_get_headline (fixture->checker)->least, ==, here.least);
  g_assert_cmpint (hc_checker_get_headline (fixture->checker)->birds, ==, 9);
}

static void
test_only_the_newest_plan_is_counted (Fixture *fixture, gconstpointer data)
{
  for (guint i = 0; i < 5; i++)
    {
      move_feeder (fixture);
      hc_checker_update (fixture->checker);
    }
  wait_for_count (fixture, 1);
  while (g_main_context_iteration (NULL, FALSE))
    ;
  g_assert_cmpuint (fixture->counted, ==, 1);
}

#define ADD(name, test) g_test_add ("/checker/" name, Fixture, NULL, set_up, test, tear_down)

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  ADD ("once-a-plan", test_checks_once_a_plan);
  ADD ("judges-the-preview", test_judges_the_preview);
  ADD ("condition-is-told-once", test_condition_is_told_once);
  ADD ("worker-counts-alike", test_worker_counts_as_this_thread_does);
  ADD ("only-the-newest", test_only_the_newest_plan_is_counted);
  return g_test_run ();
}
