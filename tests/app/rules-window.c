/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The rules show every figure, and own figures are edits that undo. */
#include "config.h"

#include "app/fields/picker.h"
#include "app/rules/figure-section.h"
#include "app/rules/own-figure-editor.h"
#include "app/rules/rules-window.h"
#include "app/window/strip.h"
#include "panel-test.h"

#include "plan/edit-rules.h"

static GtkWidget *rules;

static void
open_sections (void)
{
  GtkWidget *section;

  for (guint i = 0; (section = find_widget (rules, HC_TYPE_FIGURE_SECTION, i)) != NULL; i++)
    hc_figure_section_set_open (HC_FIGURE_SECTION (section), TRUE);
}

static void
open_rules (PanelFixture *fixture, gconstpointer type)
{
  g_autoptr (GList) windows = NULL;

  panel_set_up (fixture, type);
  hc_rules_window_present (GTK_WINDOW (fixture->window), fixture->checker, NULL);
  windows = gtk_window_list_toplevels ();
  for (GList *at = windows; at != NULL; at = at->next)
    if (HC_IS_RULES_WINDOW (at->data))
      rules = at->data;
}

static void
close_rules (PanelFixture *fixture, gconstpointer type)
{
  gtk_window_destroy (GTK_WINDOW (rules));
  panel_tear_down (fixture, type);
}

static HcOwnFigure *
own_figure (PanelFixture *fixture, HcFigureRow *row)
{
  return hc_plan_find_own_figure (hc_document_get_plan (fixture->document),
                                  hc_figure_row_get_figure (row));
}

static HcFigureRow *
first_row (void)
{
  open_sections ();
  return HC_FIGURE_ROW (find_widget (rules, HC_TYPE_FIGURE_ROW, 0));
}

static void
lists_every_figure_of_the_rules (PanelFixture *fixture, gconstpointer data)
{
  HcStandard *standard = hc_book_get_standard (fixture->book, HC_BOOK_DEFAULT_STANDARD);

  open_sections ();
  g_assert_cmpuint (count_shown (rules, HC_TYPE_FIGURE_ROW), ==,
                    hc_standard_get_n_limits (standard) + hc_standard_get_n_demands (standard));
}

static void
rows_are_made_when_their_section_is_opened (PanelFixture *fixture, gconstpointer data)
{
  GtkWidget *section = find_widget (rules, HC_TYPE_FIGURE_SECTION, 0);

  g_assert_null (find_widget (rules, HC_TYPE_FIGURE_ROW, 0));
  hc_figure_section_set_open (HC_FIGURE_SECTION (section), TRUE);
  g_assert_nonnull (find_widget (section, HC_TYPE_FIGURE_ROW, 0));
}

static GtkWidget *
editor_of (HcFigureRow *row)
{
  hc_figure_row_open (row);
  return find_widget (GTK_WIDGET (row), HC_TYPE_OWN_FIGURE_EDITOR, 0);
}

static void
an_own_figure_is_set_and_undone (PanelFixture *fixture, gconstpointer data)
{
  HcFigureRow *row = first_row ();

  g_signal_emit_by_name (editor_of (row), "set", 2.5, "a windy place");
  g_assert_cmpfloat (hc_own_figure_get (own_figure (fixture, row))->value, ==, 2.5);
  g_assert_true (says (GTK_WIDGET (row), "a windy place"));
  hc_document_undo (fixture->document);
  g_assert_null (own_figure (fixture, row));
}

static void
an_own_figure_is_taken_back (PanelFixture *fixture, gconstpointer data)
{
  HcFigureRow *row = first_row ();

  g_signal_emit_by_name (editor_of (row), "set", 2.5, "a windy place");
  g_assert_true (gtk_widget_activate_action (editor_of (row), "own.unset", NULL));
  g_assert_null (own_figure (fixture, row));
}

static void
what_is_no_number_is_not_set (PanelFixture *fixture, gconstpointer data)
{
  HcFigureRow *row = first_row ();
  GtkWidget *editor = editor_of (row);
  GtkWidget *value = find_widget (editor, GTK_TYPE_ENTRY, 0);

  gtk_editable_set_text (GTK_EDITABLE (value), "lots");
  gtk_widget_activate_action (editor, "own.set", NULL);
  g_assert_null (own_figure (fixture, row));
  g_assert_true (gtk_widget_has_css_class (value, "error"));
  gtk_editable_set_text (GTK_EDITABLE (value), "2,5");
  gtk_widget_activate_action (editor, "own.set", NULL);
  g_assert_cmpfloat (hc_own_figure_get (own_figure (fixture, row))->value, ==, 2.5);
  g_assert_false (gtk_widget_has_css_class (value, "error"));
}

static void
choosing_rules_is_an_edit (PanelFixture *fixture, gconstpointer data)
{
  GtkWidget *standards = find_widget (rules, HC_TYPE_PICKER, 0);

  pick (standards, 1);
  g_assert_cmpstr (hc_plan_get_rules (hc_document_get_plan (fixture->document))->standard, ==,
                   hc_standard_get_id (hc_book_get_standard_at (fixture->book, 1)));
  hc_document_undo (fixture->document);
  g_assert_cmpuint (hc_picker_get_picked (HC_PICKER (standards)), ==, 0);
}

int
main (int argc, char **argv)
{
  gtk_test_init (&argc, &argv, NULL);
  adw_init ();
#define ADD(name)                                                                    \
  g_test_add ("/app/rules/" #name, PanelFixture, hc_strip_get_type, open_rules, name, \
              close_rules)
  ADD (lists_every_figure_of_the_rules);
  ADD (rows_are_made_when_their_section_is_opened);
  ADD (an_own_figure_is_set_and_undone);
  ADD (an_own_figure_is_taken_back);
  ADD (what_is_no_number_is_not_set);
  ADD (choosing_rules_is_an_edit);
  return g_test_run ();
}
