/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The strip says how many, and whose rules. */
#include "config.h"

#include "app/window/strip.h"
#include "panel-test.h"

#include "plan/edit-rules.h"
#include "words/words.h"

static void
says_the_headline_once_counted (PanelFixture *fixture, gconstpointer data)
{
  g_autofree char *sentence = NULL;

  while (hc_checker_get_headline (fixture->checker) == NULL)
    g_main_context_iteration (NULL, TRUE);
  sentence = hc_words_headline (hc_checker_get_headline (fixture->checker), HC_UNITS_METRIC);
  g_assert_true (says (fixture->panel, sentence));
}

static void
says_whose_rules_follow_the_plan (PanelFixture *fixture, gconstpointer data)
{
  HcStandard *other = hc_book_get_standard_at (fixture->book, 1);
  g_autoptr (HcPlan) plan = hc_plan_set_standard (hc_document_get_plan (fixture->document),
                                                  hc_standard_get_id (other));

  g_assert_false (says (fixture->panel, hc_standard_get_name (other)));
  hc_document_apply (fixture->document, plan, "Choose Rules", NULL);
  g_assert_true (says (fixture->panel, hc_standard_get_name (other)));
}

static void
has_a_button_for_each_condition (PanelFixture *fixture, gconstpointer data)
{
  g_assert_cmpuint (count_shown (fixture->panel, GTK_TYPE_TOGGLE_BUTTON), ==,
                    HC_CONDITION_SHUT_IN + 1);
}

int
main (int argc, char **argv)
{
  gtk_test_init (&argc, &argv, NULL);
  adw_init ();
#define ADD(name)                                                                      \
  g_test_add ("/app/strip/" #name, PanelFixture, hc_strip_get_type, panel_set_up, name, \
              panel_tear_down)
  ADD (says_the_headline_once_counted);
  ADD (says_whose_rules_follow_the_plan);
  ADD (has_a_button_for_each_condition);
  return g_test_run ();
}
