/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The needs are listed once each, follow the plan, and keep what is open. */
#include "config.h"

#include "app/needs/finding-card.h"
#include "app/needs/ladder-task.h"
#include "app/needs/need-row.h"
#include "app/needs/needs-panel.h"
#include "panel-test.h"

#include "plan/edit-flock.h"

static HcCheck *
check_of (PanelFixture *fixture)
{
  return hc_checker_get_check (fixture->checker, hc_checker_get_condition (fixture->checker));
}

static HcNeedRow *
row_of (PanelFixture *fixture, HcNeedId need)
{
  GtkWidget *row;

  for (guint i = 0; (row = find_widget (fixture->panel, HC_TYPE_NEED_ROW, i)) != NULL; i++)
    if (hc_need_row_get_need (HC_NEED_ROW (row)) == need)
      return HC_NEED_ROW (row);
  g_assert_not_reached ();
}

static void
only_what_applies_is_shown (PanelFixture *fixture, gconstpointer data)
{
  for (guint need = 0; need < HC_N_NEEDS; need++)
    g_assert_cmpint (gtk_widget_get_visible (GTK_WIDGET (row_of (fixture, (HcNeedId) need))), ==,
                     hc_check_applies (check_of (fixture), (HcNeedId) need));
}

static void
the_worst_comes_first (PanelFixture *fixture, gconstpointer data)
{
  HcLevel before = HC_LEVEL_SHORT;
  GtkWidget *row;

  for (guint i = 0; (row = find_widget (fixture->panel, HC_TYPE_NEED_ROW, i)) != NULL; i++)
    if (gtk_widget_get_visible (row))
      {
        HcLevel level = MIN (hc_need_row_get_level (HC_NEED_ROW (row)), HC_LEVEL_GOOD);

        g_assert_cmpint (level, >=, before);
        before = level;
      }
}

static void
opened_it_shows_each_finding (PanelFixture *fixture, gconstpointer data)
{
  HcNeedRow *row = row_of (fixture, HC_NEED_NESTS);
  GtkWidget *header = find_widget (GTK_WIDGET (row), GTK_TYPE_TOGGLE_BUTTON, 0);
  guint findings = hc_check_get_n_findings (check_of (fixture), HC_NEED_NESTS);

  g_assert_cmpuint (findings, >, 0);
  gtk_toggle_button_set_active (GTK_TOGGLE_BUTTON (header), TRUE);
  g_assert_cmpuint (count_shown (GTK_WIDGET (row), HC_TYPE_FINDING_CARD), ==, findings);
}

static void
take_all_birds_out (PanelFixture *fixture)
{
  HcParts *batches = hc_plan_get (hc_document_get_plan (fixture->document))->batches;

  while (batches->len > 0)
    {
      g_autoptr (HcPlan) plan = hc_plan_remove_batch (hc_document_get_plan (fixture->document),
                                                      hc_part_get_id (batches->pdata[0]));

      hc_document_apply (fixture->document, plan, "Take Birds Out", NULL);
      batches = hc_plan_get (hc_document_get_plan (fixture->document))->batches;
    }
  hc_checker_update (fixture->checker);
}

static void
what_is_open_stays_open (PanelFixture *fixture, gconstpointer data)
{
  HcNeedRow *row = row_of (fixture, HC_NEED_NESTS);
  GtkWidget *header = find_widget (GTK_WIDGET (row), GTK_TYPE_TOGGLE_BUTTON, 0);

  gtk_toggle_button_set_active (GTK_TOGGLE_BUTTON (header), TRUE);
  take_all_birds_out (fixture);
  g_assert_false (gtk_widget_get_visible (GTK_WIDGET (row)));
  while (hc_document_undo (fixture->document))
    ;
  hc_checker_update (fixture->checker);
  g_assert_true (gtk_widget_get_visible (GTK_WIDGET (row)));
  g_assert_true (gtk_toggle_button_get_active (GTK_TOGGLE_BUTTON (header)));
}

static void
note_answer (gboolean *answered)
{
  *answered = TRUE;
}

/* Two questions at once: one answer, to the later one. */
static void
the_latest_question_wins (PanelFixture *fixture, gconstpointer data)
{
  g_autoptr (HcLadderTask) task = hc_ladder_task_new ();
  HcLadderAsked asked = { hc_document_get_plan (fixture->document), fixture->book,
                          HC_LADDER_THIS_MIX, hc_book_get_kind_at (fixture->book, 0)->id,
                          HC_CONDITION_DAY, HC_LEVEL_GOOD };
  g_autoptr (HcCheckCache) cache = hc_check_cache_new ();
  g_autoptr (HcFlock) flock = hc_check_get_flock (check_of (fixture));
  g_autoptr (HcLadder) expected = NULL;
  gboolean answered = FALSE;

  hc_flock_ref (flock);
  expected = hc_ladder_climb (cache, asked.plan, asked.book, flock, HC_LADDER_THIS_MIX, NULL,
                              HC_CONDITION_SHUT_IN, HC_LEVEL_TIGHT);
  g_signal_connect_swapped (task, "answered", G_CALLBACK (note_answer), &answered);
  hc_ladder_task_ask (task, &asked);
  asked.condition = HC_CONDITION_SHUT_IN;
  asked.aim = HC_LEVEL_TIGHT;
  hc_ladder_task_ask (task, &asked);
  while (!answered)
    g_main_context_iteration (NULL, TRUE);
  g_assert_cmpint (hc_ladder_get_most (hc_ladder_task_get_ladder (task)), ==,
                   hc_ladder_get_most (expected));
}

int
main (int argc, char **argv)
{
  gtk_test_init (&argc, &argv, NULL);
  adw_init ();
#define ADD(name)                                                                     \
  g_test_add ("/app/needs/" #name, PanelFixture, hc_needs_panel_get_type, panel_set_up, \
              name, panel_tear_down)
  ADD (only_what_applies_is_shown);
  ADD (the_worst_comes_first);
  ADD (opened_it_shows_each_finding);
  ADD (what_is_open_stays_open);
  ADD (the_latest_question_wins);
  return g_test_run ();
}
