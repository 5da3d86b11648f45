/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Whose rules: every figure with its source, and the keeper's own figures. */
#include "config.h"

#include "app/rules/rules-window.h"

#include "app/application.h"
#include "app/needs/set-text.h"
#include "app/rules/figure-row.h"

#include "base/ids.h"
#include "plan/edit-rules.h"

#include <glib/gi18n.h>

struct _HcRulesWindow
{
  AdwWindow parent_instance;

  GtkDropDown *standards;
  GtkLabel *about;
  GtkLabel *faults;
  GtkSearchEntry *search;
  GtkListBox *figures;

  HcChecker *checker;
  HcStandard *shown;
};

G_DEFINE_FINAL_TYPE (HcRulesWindow, hc_rules_window, ADW_TYPE_WINDOW)

static HcDocument *
document_of (HcRulesWindow *self)
{
  return hc_checker_get_document (self->checker);
}

static HcStandard *
standard_of (HcRulesWindow *self)
{
  HcBook *book = hc_checker_get_book (self->checker);
  HcPlan *plan = hc_document_get_plan (document_of (self));
  HcStandard *standard = hc_book_get_standard (book, hc_plan_get_rules (plan)->standard);

  return standard != NULL ? standard : hc_book_get_standard (book, HC_BOOK_DEFAULT_STANDARD);
}

static void
say_fault (HcRulesWindow *self, GError *error)
{
  hc_set_text (self->faults, error->message);
  g_error_free (error);
}

static void
apply (HcRulesWindow *self, HcPlan *plan, const char *label)
{
  hc_document_apply (document_of (self), plan, label, NULL);
  hc_plan_unref (plan);
}

static void
set_own (HcRulesWindow *self, double value, const char *reason, HcFigureRow *row)
{
  g_autofree char *id = hc_id_new ();
  GError *error = NULL;
  HcPlan *plan = hc_plan_set_own_figure (hc_document_get_settled_plan (document_of (self)), id,
                                         hc_figure_row_get_figure (row), value, reason, &error);

  if (plan == NULL)
    say_fault (self, error);
  else
    apply (self, plan, _("Set My Own Figure"));
}

static void
unset_own (HcRulesWindow *self, HcFigureRow *row)
{
  HcPlan *plan = hc_plan_unset_own_figure (hc_document_get_settled_plan (document_of (self)),
                                           hc_figure_row_get_figure (row));

  apply (self, plan, _("Take My Own Figure Back"));
}

static void
add_figure (HcRulesWindow *self, HcStandard *from, const HcLimit *limit, const HcDemand *demand)
{
  GtkWidget *row
      = hc_figure_row_new (hc_checker_get_book (self->checker), from, limit, demand);

  g_signal_connect_object (row, "set", G_CALLBACK (set_own), self, G_CONNECT_SWAPPED);
  g_signal_connect_object (row, "unset", G_CALLBACK (unset_own), self, G_CONNECT_SWAPPED);
  gtk_list_box_append (self->figures, row);
}

static void
empty_figures (HcRulesWindow *self)
{
  GtkListBoxRow *row;

  while ((row = gtk_list_box_get_row_at_index (self->figures, 0)) != NULL)
    gtk_list_box_remove (self->figures, GTK_WIDGET (row));
}

static int
compare_figures (GtkListBoxRow *a, GtkListBoxRow *b, gpointer data)
{
  return g_utf8_collate (hc_figure_row_get_heading (HC_FIGURE_ROW (a)),
                         hc_figure_row_get_heading (HC_FIGURE_ROW (b)));
}

static void
head_need (GtkListBoxRow *row, GtkListBoxRow *before, gpointer data)
{
  GtkWidget *heading;

  if (before != NULL && compare_figures (row, before, NULL) == 0)
    {
      gtk_list_box_row_set_header (row, NULL);
      return;
    }
  heading = gtk_label_new (hc_figure_row_get_heading (HC_FIGURE_ROW (row)));
  gtk_label_set_xalign (GTK_LABEL (heading), 0);
  gtk_widget_add_css_class (heading, "hc-group");
  gtk_list_box_row_set_header (row, heading);
}

/* Those of the rules, and of the rules they fall back to; put in order once all
 * are there, not one after another. */
static void
fill_figures (HcRulesWindow *self)
{
  empty_figures (self);
  gtk_list_box_set_sort_func (self->figures, NULL, NULL, NULL);
  gtk_list_box_set_header_func (self->figures, NULL, NULL, NULL);
  for (HcStandard *at = self->shown; at != NULL; at = hc_standard_get_fallback (at))
    {
      for (guint i = 0; i < hc_standard_get_n_demands (at); i++)
        add_figure (self, at, NULL, hc_standard_get_demand (at, i));
      for (guint i = 0; i < hc_standard_get_n_limits (at); i++)
        add_figure (self, at, hc_standard_get_limit (at, i), NULL);
    }
  gtk_list_box_set_sort_func (self->figures, compare_figures, NULL, NULL);
  gtk_list_box_set_header_func (self->figures, head_need, NULL, NULL);
}

static guint
index_of (HcRulesWindow *self, HcStandard *standard)
{
  HcBook *book = hc_checker_get_book (self->checker);
  guint at = 0;

  while (at < hc_book_get_n_standards (book) && hc_book_get_standard_at (book, at) != standard)
    at++;
  return at;
}

static void
show_own_figures (HcRulesWindow *self)
{
  HcPlan *plan = hc_document_get_plan (document_of (self));
  GtkListBoxRow *row;

  for (int i = 0; (row = gtk_list_box_get_row_at_index (self->figures, i)) != NULL; i++)
    {
      const char *figure = hc_figure_row_get_figure (HC_FIGURE_ROW (row));

      hc_figure_row_show_own (HC_FIGURE_ROW (row), hc_plan_find_own_figure (plan, figure));
    }
}

static void
show_rules (HcRulesWindow *self)
{
  HcStandard *standard = standard_of (self);

  if (self->shown != standard)
    {
      self->shown = standard;
      hc_set_text (self->about, hc_standard_get_about (standard));
      gtk_drop_down_set_selected (self->standards, index_of (self, standard));
      fill_figures (self);
    }
  show_own_figures (self);
}

static void
choose (HcRulesWindow *self)
{
  guint at = gtk_drop_down_get_selected (self->standards);
  HcStandard *standard;

  if (self->shown == NULL || at == GTK_INVALID_LIST_POSITION)
    return;
  standard = hc_book_get_standard_at (hc_checker_get_book (self->checker), at);
  if (standard != self->shown)
    apply (self,
           hc_plan_set_standard (hc_document_get_settled_plan (document_of (self)),
                                 hc_standard_get_id (standard)),
           _("Choose Rules"));
}

static gboolean
is_looked_for (GtkListBoxRow *row, gpointer data)
{
  const char *text = gtk_editable_get_text (GTK_EDITABLE (HC_RULES_WINDOW (data)->search));

  return *text == '\0' || hc_figure_row_matches (HC_FIGURE_ROW (row), text);
}

static void
filter (HcRulesWindow *self)
{
  gtk_list_box_invalidate_filter (self->figures);
}

static void
list_standards (HcRulesWindow *self)
{
  HcBook *book = hc_checker_get_book (self->checker);
  g_autoptr (GtkStringList) names = gtk_string_list_new (NULL);

  for (guint i = 0; i < hc_book_get_n_standards (book); i++)
    gtk_string_list_append (names, hc_standard_get_name (hc_book_get_standard_at (book, i)));
  gtk_drop_down_set_model (self->standards, G_LIST_MODEL (names));
}

static void
tell_left_out (HcRulesWindow *self)
{
  GApplication *application = g_application_get_default ();
  g_autofree char *sentences
      = HC_IS_APPLICATION (application)
            ? hc_application_list_rules_left_out (HC_APPLICATION (application))
            : NULL;

  hc_set_text (self->faults, sentences);
}

/* Only a row that has its place can be scrolled to. */
static gboolean
open_once_laid_out (GtkWidget *row, GdkFrameClock *clock, gpointer data)
{
  if (gtk_widget_get_height (row) == 0)
    return G_SOURCE_CONTINUE;
  hc_figure_row_open (HC_FIGURE_ROW (row));
  return G_SOURCE_REMOVE;
}

static void
open_figure (HcRulesWindow *self, const char *figure)
{
  GtkListBoxRow *row;

  for (int i = 0; (row = gtk_list_box_get_row_at_index (self->figures, i)) != NULL; i++)
    if (g_str_equal (hc_figure_row_get_figure (HC_FIGURE_ROW (row)), figure))
      {
        gtk_widget_add_tick_callback (GTK_WIDGET (row), open_once_laid_out, NULL, NULL);
        return;
      }
}

static void
hc_rules_window_dispose (GObject *object)
{
  g_clear_object (&HC_RULES_WINDOW (object)->checker);
  G_OBJECT_CLASS (hc_rules_window_parent_class)->dispose (object);
}

static void
hc_rules_window_class_init (HcRulesWindowClass *klass)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  G_OBJECT_CLASS (klass)->dispose = hc_rules_window_dispose;
  gtk_widget_class_add_binding_action (widget_class, GDK_KEY_Escape, 0, "window.close", NULL);
  gtk_widget_class_set_template_from_resource (widget_class,
                                               "/org/hencote/Hencote/rules-window.ui");
  gtk_widget_class_bind_template_child (widget_class, HcRulesWindow, standards);
  gtk_widget_class_bind_template_child (widget_class, HcRulesWindow, about);
  gtk_widget_class_bind_template_child (widget_class, HcRulesWindow, faults);
  gtk_widget_class_bind_template_child (widget_class, HcRulesWindow, search);
  gtk_widget_class_bind_template_child (widget_class, HcRulesWindow, figures);
  gtk_widget_class_bind_template_callback (widget_class, choose);
  gtk_widget_class_bind_template_callback (widget_class, filter);
}

static void
hc_rules_window_init (HcRulesWindow *self)
{
  gtk_widget_init_template (GTK_WIDGET (self));
  gtk_list_box_set_filter_func (self->figures, is_looked_for, self, NULL);
}

/**
 * hc_rules_window_present:
 * @parent: the plan's window
 * @checker: the plan's checker
 * @figure: (nullable): id of the figure to show
 */
void
hc_rules_window_present (GtkWindow *parent, HcChecker *checker, const char *figure)
{
  HcRulesWindow *self = g_object_new (HC_TYPE_RULES_WINDOW, "transient-for", parent, NULL);

  self->checker = g_object_ref (checker);
  list_standards (self);
  tell_left_out (self);
  show_rules (self);
  g_signal_connect_object (document_of (self), "notify::plan", G_CALLBACK (show_rules), self,
                           G_CONNECT_SWAPPED);
  gtk_window_present (GTK_WINDOW (self));
  if (figure != NULL)
    open_figure (self, figure);
}
