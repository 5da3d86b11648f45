/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The weather view of the demo plan: its sentence, its slider, and what it keeps. */
#include "config.h"

#include "app/weather/remedy-list.h"
#include "app/weather/weather-view.h"
#include "panel-test.h"

/* The window asks the checker once a frame; here nobody else does. */
static void
wait_for (PanelFixture *fixture, const char *text)
{
  while (!says (fixture->panel, text))
    {
      g_main_context_iteration (NULL, TRUE);
      hc_checker_update (fixture->checker);
    }
}

static GtkRange *
get_slider (PanelFixture *fixture)
{
  return GTK_RANGE (find_widget (fixture->panel, GTK_TYPE_SCALE, 0));
}

static void
test_it_opens_on_a_sentence (PanelFixture *fixture, gconstpointer type)
{
  gtk_window_present (GTK_WINDOW (fixture->window));
  wait_for (fixture, "At the roost it is");
  g_assert_true (says (fixture->panel, "nothing to mend"));
  g_assert_true (says (fixture->panel, "over ice"));
  wait_for (fixture, "chicks under heat");
  g_assert_true (says (fixture->panel, "indicative"));
}

/* Shut, the house sweats: the sentence says so at once, remedies follow. */
static void
test_figures_follow_the_slider (PanelFixture *fixture, gconstpointer type)
{
  gtk_window_present (GTK_WINDOW (fixture->window));
  wait_for (fixture, "nothing to mend");
  gtk_range_set_value (get_slider (fixture), 0);
  g_assert_true (says (fixture->panel, "something can be mended"));
  g_assert_true (says (fixture->panel, "sweat"));
  wait_for (fixture, "Insulate the roof");
  g_assert_cmpuint (count_shown (find_widget (fixture->panel, HC_TYPE_REMEDY_LIST, 0),
                                 GTK_TYPE_TOGGLE_BUTTON),
                    >=, 2);
}

static void
test_a_move_is_one_step_to_undo (PanelFixture *fixture, gconstpointer type)
{
  HcPlan *before = hc_document_get_plan (fixture->document);

  gtk_window_present (GTK_WINDOW (fixture->window));
  wait_for (fixture, "nothing to mend");
  for (int open = 20; open >= 0; open -= 5)
    gtk_range_set_value (get_slider (fixture), open);
  g_assert_true (hc_document_get_plan (fixture->document) == before);
  while (hc_document_get_plan (fixture->document) == before)
    g_main_context_iteration (NULL, TRUE);
  g_assert_true (hc_document_undo (fixture->document));
  g_assert_true (hc_document_get_plan (fixture->document) == before);
  g_assert_false (hc_document_undo (fixture->document));
}

/* Who turns to another view at once loses nothing. */
static void
test_what_was_moved_is_kept_out_of_sight (PanelFixture *fixture, gconstpointer type)
{
  HcPlan *before = hc_document_get_plan (fixture->document);

  gtk_window_present (GTK_WINDOW (fixture->window));
  wait_for (fixture, "nothing to mend");
  gtk_range_set_value (get_slider (fixture), 0);
  gtk_widget_set_visible (fixture->panel, FALSE);
  g_assert_true (hc_document_get_plan (fixture->document) != before);
}

/* A remedy is seen on the plan, and is gone again when nobody looks. */
static void
test_trying_changes_nothing (PanelFixture *fixture, gconstpointer type)
{
  GtkWidget *try_it;
  HcPlan *settled;

  gtk_window_present (GTK_WINDOW (fixture->window));
  wait_for (fixture, "nothing to mend");
  gtk_range_set_value (get_slider (fixture), 0);
  wait_for (fixture, "Insulate the roof");
  settled = hc_document_get_plan (fixture->document);
  try_it = find_widget (find_widget (fixture->panel, HC_TYPE_REMEDY_LIST, 0),
                        GTK_TYPE_TOGGLE_BUTTON, 0);
  gtk_toggle_button_set_active (GTK_TOGGLE_BUTTON (try_it), TRUE);
  g_assert_true (hc_document_is_previewing (fixture->document));
  gtk_widget_set_visible (fixture->panel, FALSE);
  g_assert_false (hc_document_is_previewing (fixture->document));
  g_assert_true (hc_document_get_plan (fixture->document) == settled);
}

#define TEST(path, function) \
  g_test_add ("/weather-view/" path, PanelFixture, hc_weather_view_get_type, panel_set_up, \
              function, panel_tear_down)

int
main (int argc, char **argv)
{
  gtk_test_init (&argc, &argv, NULL);
  adw_init ();
  TEST ("sentence", test_it_opens_on_a_sentence);
  TEST ("slider", test_figures_follow_the_slider);
  TEST ("undo", test_a_move_is_one_step_to_undo);
  TEST ("kept", test_what_was_moved_is_kept_out_of_sight);
  TEST ("trying", test_trying_changes_nothing);
  return g_test_run ();
}
