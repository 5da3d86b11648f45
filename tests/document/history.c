/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The history knows the saved plan and keeps a bounded number of steps. */
#include "config.h"

#include "document/history.h"
#include "plan/edit-fitting.h"

#include "../sample/two-pens.h"

static void
step (HcHistory *history, const char *joins)
{
  static const char *const feeder[] = { "feeder", NULL };
  g_autoptr (HcPlan) after = hc_plan_move_fittings (hc_history_get_plan (history), feeder,
                                                    hc_point (1, 0), NULL);

  hc_history_add (history, after, "Move", joins);
}

static HcHistory *
start (void)
{
  g_autoptr (HcPlan) plan = two_pens_new ();

  return hc_history_new (plan);
}

static void
test_undone_to_the_saved_plan_is_saved (void)
{
  g_autoptr (HcHistory) history = start ();

  g_assert_true (hc_history_is_saved (history));
  step (history, NULL);
  g_assert_false (hc_history_is_saved (history));
  hc_history_mark_saved (history);
  step (history, NULL);
  hc_history_undo (history);
  g_assert_true (hc_history_is_saved (history));
  hc_history_undo (history);
  g_assert_false (hc_history_is_saved (history));
}

static void
test_saved_plan_is_not_joined (void)
{
  g_autoptr (HcHistory) history = start ();

  step (history, "nudge");
  hc_history_mark_saved (history);
  step (history, "nudge");
  g_assert_false (hc_history_is_saved (history));
  hc_history_undo (history);
  g_assert_true (hc_history_is_saved (history));
}

static void
test_a_new_step_where_the_saved_one_was_undone (void)
{
  g_autoptr (HcHistory) history = start ();

  step (history, NULL);
  hc_history_mark_saved (history);
  hc_history_undo (history);
  step (history, NULL);
  g_assert_false (hc_history_is_saved (history));
}

static void
test_a_draft_is_never_saved (void)
{
  g_autoptr (HcHistory) history = start ();

  hc_history_mark_unsaved (history);
  g_assert_false (hc_history_is_saved (history));
  step (history, NULL);
  hc_history_undo (history);
  g_assert_false (hc_history_is_saved (history));
}

static void
test_an_ended_step_joins_no_more (void)
{
  g_autoptr (HcHistory) history = start ();

  step (history, "nudge");
  hc_history_end_step (history);
  step (history, "nudge");
  g_assert_true (hc_history_undo (history));
  g_assert_true (hc_history_undo (history));
}

static void
test_the_oldest_steps_go (void)
{
  g_autoptr (HcHistory) history = start ();
  guint undone = 0;

  for (guint i = 0; i < HC_HISTORY_MOST_STEPS + 50; i++)
    step (history, NULL);
  while (hc_history_undo (history))
    undone++;
  g_assert_cmpuint (undone, ==, HC_HISTORY_MOST_STEPS);
  g_assert_null (hc_history_get_undo_label (history));
  g_assert_false (hc_history_is_saved (history));
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/history/undone-to-the-saved-plan", test_undone_to_the_saved_plan_is_saved);
  g_test_add_func ("/history/saved-plan-is-not-joined", test_saved_plan_is_not_joined);
  g_test_add_func ("/history/new-step-after-saved",
                   test_a_new_step_where_the_saved_one_was_undone);
  g_test_add_func ("/history/a-draft-is-never-saved", test_a_draft_is_never_saved);
  g_test_add_func ("/history/an-ended-step-joins-no-more", test_an_ended_step_joins_no_more);
  g_test_add_func ("/history/the-oldest-steps-go", test_the_oldest_steps_go);
  return g_test_run ();
}
