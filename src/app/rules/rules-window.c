/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Whose rules: every figure with its source, and the keeper's own figures. */
#include "config.h"

#include "app/rules/rules-window.h"

#include "app/application.h"
#include "app/fields/picker.h"
#include "app/needs/set-text.h"
#include "app/rules/figure-section.h"
#include "app/window/panel.h"

#include "base/ids.h"
#include "plan/edit-rules.h"

#include <glib/gi18n.h>

/* As many figures as are read without being under headings that are shut. */
#define FEW 40

struct _HcRulesWindow
{
  AdwWindow parent_instance;

  HcPicker *standards;
  GtkLabel *about;
  GtkLabel *faults;
  GtkLabel *read_only;
  GtkSearchEntry *search;
  GtkBox *figures;
  GtkWidget *none_found;

  HcChecker *checker;
  HcStandard *shown;
};

G_DEFINE_FINAL_TYPE (HcRulesWindow, hc_rules_window, ADW_TYPE_WINDOW)

static HcDocument *
document_of (HcRulesWindow *self)
{
  return hc_checker_get_document (self->checker);
}

static gboolean
is_read_only (HcRulesWindow *self)
{
  return hc_document_is_read_only (document_of (self));
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
set_own (GtkWidget *widget, const char *name, GVariant *parameter)
{
  HcRulesWindow *self = HC_RULES_WINDOW (widget);
  g_autofree char *id = hc_id_new ();
  const char *figure, *reason;
  double value;
  GError *error = NULL;
  HcPlan *plan;

  g_variant_get (parameter, "(&sd&s)", &figure, &value, &reason);
  plan = hc_plan_set_own_figure (hc_document_get_settled_plan (document_of (self)), id, figure,
                                 value, reason, &error);
  if (plan == NULL)
    say_fault (self, error);
  else
    apply (self, plan, _("Set My Own Figure"));
}

static void
unset_own (GtkWidget *widget, const char *name, GVariant *parameter)
{
  HcRulesWindow *self = HC_RULES_WINDOW (widget);
  HcPlan *plan = hc_plan_unset_own_figure (hc_document_get_settled_plan (document_of (self)),
                                           g_variant_get_string (parameter, NULL));

  apply (self, plan, _("Take My Own Figure Back"));
}

static HcFigureSection *
first_section (HcRulesWindow *self)
{
  return (HcFigureSection *) gtk_widget_get_first_child (GTK_WIDGET (self->figures));
}

static HcFigureSection *
next_section (HcFigureSection *section)
{
  return (HcFigureSection *) gtk_widget_get_next_sibling (GTK_WIDGET (section));
}

/* In the order of their headings; made when the first figure of it comes. */
static HcFigureSection *
section_headed (HcRulesWindow *self, const char *heading)
{
  HcFigureSection *before = NULL;
  GtkWidget *section;

  for (HcFigureSection *at = first_section (self); at != NULL; at = next_section (at))
    {
      int order = g_utf8_collate (hc_figure_section_get_heading (at), heading);

      if (order == 0)
        return at;
      if (order > 0)
        break;
      before = at;
    }
  section = hc_figure_section_new (heading, is_read_only (self));
  gtk_box_insert_child_after (self->figures, section, (GtkWidget *) before);
  return HC_FIGURE_SECTION (section);
}

static void
add_figure (HcRulesWindow *self, HcStandard *from, const HcLimit *limit, const HcDemand *demand)
{
  HcFigureEntry entry = { hc_checker_get_book (self->checker), from, limit, demand };

  hc_figure_section_add (section_headed (self, hc_figure_entry_get_heading (&entry)), &entry);
}

/* Of few figures left, none hides under its heading. */
static void
filter (HcRulesWindow *self)
{
  const char *text = gtk_editable_get_text (GTK_EDITABLE (self->search));
  guint n = 0;

  for (HcFigureSection *at = first_section (self); at != NULL; at = next_section (at))
    n += hc_figure_section_look_for (at, text);
  for (HcFigureSection *at = first_section (self); at != NULL; at = next_section (at))
    if (*text != '\0' && n <= FEW && gtk_widget_get_visible (GTK_WIDGET (at)))
      hc_figure_section_set_open (at, TRUE);
  gtk_widget_set_visible (self->none_found, n == 0);
}

/* Hands out the headings of those that were open. */
static GPtrArray *
empty_figures (HcRulesWindow *self)
{
  GPtrArray *open = g_ptr_array_new_with_free_func (g_free);
  HcFigureSection *section;

  while ((section = first_section (self)) != NULL)
    {
      if (hc_figure_section_is_open (section))
        g_ptr_array_add (open, g_strdup (hc_figure_section_get_heading (section)));
      gtk_box_remove (self->figures, GTK_WIDGET (section));
    }
  return open;
}

/* Those of the rules, and of the rules they fall back to. */
static void
fill_figures (HcRulesWindow *self)
{
  g_autoptr (GPtrArray) open = empty_figures (self);

  for (HcStandard *at = self->shown; at != NULL; at = hc_standard_get_fallback (at))
    {
      for (guint i = 0; i < hc_standard_get_n_demands (at); i++)
        add_figure (self, at, NULL, hc_standard_get_demand (at, i));
      for (guint i = 0; i < hc_standard_get_n_limits (at); i++)
        add_figure (self, at, hc_standard_get_limit (at, i), NULL);
    }
  filter (self);
  for (HcFigureSection *at = first_section (self); at != NULL; at = next_section (at))
    if (g_ptr_array_find_with_equal_func (open, hc_figure_section_get_heading (at), g_str_equal,
                                          NULL))
      hc_figure_section_set_open (at, TRUE);
}

static void
show_own_figures (HcRulesWindow *self)
{
  HcPlan *plan = hc_document_get_plan (document_of (self));

  for (HcFigureSection *at = first_section (self); at != NULL; at = next_section (at))
    hc_figure_section_show_own (at, plan);
}

static void
show_rules (HcRulesWindow *self)
{
  HcStandard *standard = standard_of (self);

  if (self->shown != standard)
    {
      self->shown = standard;
      hc_set_text (self->about, hc_standard_get_about (standard));
      hc_picker_set_id (self->standards, hc_standard_get_id (standard));
      fill_figures (self);
    }
  show_own_figures (self);
}

static void
choose (HcRulesWindow *self)
{
  apply (self,
         hc_plan_set_standard (hc_document_get_settled_plan (document_of (self)),
                               hc_picker_get_id (self->standards)),
         _("Choose Rules"));
}

static void
list_standards (HcRulesWindow *self)
{
  HcBook *book = hc_checker_get_book (self->checker);

  for (guint i = 0; i < hc_book_get_n_standards (book); i++)
    {
      HcStandard *standard = hc_book_get_standard_at (book, i);

      hc_picker_offer (self->standards, hc_standard_get_id (standard),
                       hc_standard_get_name (standard), hc_standard_get_about (standard));
    }
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

static void
forbid_changes (HcRulesWindow *self)
{
  gtk_widget_set_sensitive (GTK_WIDGET (self->standards), FALSE);
  hc_set_text (self->read_only, hc_say_read_only ());
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
  for (HcFigureSection *at = first_section (self); at != NULL; at = next_section (at))
    {
      HcFigureRow *row = hc_figure_section_find_row (at, figure);

      if (row == NULL)
        continue;
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

  g_type_ensure (HC_TYPE_PICKER);
  G_OBJECT_CLASS (klass)->dispose = hc_rules_window_dispose;
  gtk_widget_class_add_binding_action (widget_class, GDK_KEY_Escape, 0, "window.close", NULL);
  gtk_widget_class_install_action (widget_class, "rules.set-own", "(sds)", set_own);
  gtk_widget_class_install_action (widget_class, "rules.unset-own", "s", unset_own);
  gtk_widget_class_set_template_from_resource (widget_class,
                                               "/org/hencote/Hencote/rules-window.ui");
  gtk_widget_class_bind_template_child (widget_class, HcRulesWindow, standards);
  gtk_widget_class_bind_template_child (widget_class, HcRulesWindow, about);
  gtk_widget_class_bind_template_child (widget_class, HcRulesWindow, faults);
  gtk_widget_class_bind_template_child (widget_class, HcRulesWindow, read_only);
  gtk_widget_class_bind_template_child (widget_class, HcRulesWindow, search);
  gtk_widget_class_bind_template_child (widget_class, HcRulesWindow, figures);
  gtk_widget_class_bind_template_child (widget_class, HcRulesWindow, none_found);
  gtk_widget_class_bind_template_callback (widget_class, choose);
  gtk_widget_class_bind_template_callback (widget_class, filter);
}

static void
hc_rules_window_init (HcRulesWindow *self)
{
  gtk_widget_init_template (GTK_WIDGET (self));
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
  if (is_read_only (self))
    forbid_changes (self);
  show_rules (self);
  g_signal_connect_object (document_of (self), "notify::plan", G_CALLBACK (show_rules), self,
                           G_CONNECT_SWAPPED);
  gtk_window_present (GTK_WINDOW (self));
  if (figure != NULL)
    open_figure (self, figure);
}
