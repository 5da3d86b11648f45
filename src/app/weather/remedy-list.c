/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Ways to mend what is wrong, to look at and to do. */
#include "config.h"

#include "app/weather/remedy-list.h"

#include "mend/remedy.h"
#include "words/remedy-words.h"

#include <glib/gi18n.h>

struct _HcRemedyList
{
  GtkBox parent_instance;

  HcPanel *panel;
  HcPlan *plan;
  GPtrArray *remedies;
  GtkToggleButton *trying;
};

G_DEFINE_FINAL_TYPE (HcRemedyList, hc_remedy_list, GTK_TYPE_BOX)

static HcDocument *
document_of (HcRemedyList *self)
{
  return self->panel != NULL ? hc_panel_get_document (self->panel) : NULL;
}

static const HcRemedy *
remedy_of (GtkWidget *button)
{
  return g_object_get_data (G_OBJECT (button), "remedy");
}

/**
 * hc_remedy_list_stop_trying: (skip)
 * @self: the list
 *
 * The plan is seen again as it is.
 */
void
hc_remedy_list_stop_trying (HcRemedyList *self)
{
  GtkToggleButton *trying = g_steal_pointer (&self->trying);

  if (trying != NULL)
    gtk_toggle_button_set_active (trying, FALSE);
}

static void
try_toggled (GtkToggleButton *button, HcRemedyList *self)
{
  HcDocument *document = document_of (self);

  if (document == NULL)
    return;
  if (gtk_toggle_button_get_active (button))
    {
      hc_remedy_list_stop_trying (self);
      self->trying = button;
      hc_document_preview (document, remedy_of (GTK_WIDGET (button))->plan);
    }
  else if (hc_document_is_previewing (document))
    {
      self->trying = NULL;
      hc_document_cancel_preview (document);
    }
}

static void
do_clicked (GtkWidget *button, HcRemedyList *self)
{
  g_autoptr (HcPlan) plan = hc_plan_ref (remedy_of (button)->plan);

  hc_remedy_list_stop_trying (self);
  if (document_of (self) != NULL)
    hc_panel_apply (self->panel, g_steal_pointer (&plan), NULL, _("Mend the Air"), NULL);
}

static GtkWidget *
make_label (const char *text, const char *css_class)
{
  GtkWidget *label = gtk_label_new (text);

  gtk_label_set_xalign (GTK_LABEL (label), 0);
  gtk_label_set_wrap (GTK_LABEL (label), TRUE);
  gtk_widget_add_css_class (label, css_class);
  return label;
}

static GtkWidget *
make_button (HcRemedyList *self, GType type, const char *text, const HcRemedy *remedy,
             const char *signal, GCallback callback)
{
  GtkWidget *button = g_object_new (type, "label", text, NULL);

  gtk_widget_add_css_class (button, "hc-small");
  g_object_set_data (G_OBJECT (button), "remedy", (gpointer) remedy);
  g_signal_connect (button, signal, callback, self);
  return button;
}

/* Two buttons alike in every row: what each does is told with the row's words. */
static void
describe (GtkWidget *button, const char *label)
{
  gtk_accessible_update_property (GTK_ACCESSIBLE (button), GTK_ACCESSIBLE_PROPERTY_DESCRIPTION,
                                  label, -1);
}

static void
add_row (HcRemedyList *self, const HcRemedy *remedy, HcUnits units)
{
  g_autofree char *label = hc_words_remedy (self->plan, remedy, units);
  g_autofree char *gain = hc_words_remedy_gain (remedy);
  g_autofree char *why = g_strdup_printf ("%s %s", hc_words_remedy_why (remedy), gain);
  GtkWidget *row = gtk_box_new (GTK_ORIENTATION_VERTICAL, 4);
  GtkWidget *buttons = gtk_box_new (GTK_ORIENTATION_HORIZONTAL, 6);
  GtkWidget *try_it = make_button (self, GTK_TYPE_TOGGLE_BUTTON, _("See It First"), remedy,
                                   "toggled", G_CALLBACK (try_toggled));
  GtkWidget *do_it = make_button (self, GTK_TYPE_BUTTON, _("Do It"), remedy, "clicked",
                                  G_CALLBACK (do_clicked));

  describe (try_it, label);
  describe (do_it, label);
  gtk_box_append (GTK_BOX (buttons), try_it);
  gtk_box_append (GTK_BOX (buttons), do_it);
  gtk_box_append (GTK_BOX (row), make_label (label, "hc-todo"));
  gtk_box_append (GTK_BOX (row), make_label (why, "dim-label"));
  gtk_box_append (GTK_BOX (row), buttons);
  gtk_widget_add_css_class (row, "hc-finding");
  gtk_box_append (GTK_BOX (self), row);
}

static void
clear_rows (HcRemedyList *self)
{
  GtkWidget *row;

  self->trying = NULL;
  while ((row = gtk_widget_get_first_child (GTK_WIDGET (self))) != NULL)
    gtk_box_remove (GTK_BOX (self), row);
}

/**
 * hc_remedy_list_show: (skip)
 * @self: the list
 * @panel: the part of the window it is in
 * @plan: the plan the remedies are for
 * @remedies: (element-type HcRemedy): them
 */
void
hc_remedy_list_show (HcRemedyList *self, HcPanel *panel, HcPlan *plan, GPtrArray *remedies)
{
  HcUnits units = (HcUnits) hc_plan_get_site (plan)->units;
  HcPlan *plan_before = self->plan;
  GPtrArray *before = self->remedies;

  hc_remedy_list_stop_trying (self);
  clear_rows (self);
  self->panel = panel;
  self->plan = hc_plan_ref (plan);
  self->remedies = g_ptr_array_ref (remedies);
  g_clear_pointer (&plan_before, hc_plan_unref);
  g_clear_pointer (&before, g_ptr_array_unref);
  for (guint i = 0; i < remedies->len; i++)
    add_row (self, remedies->pdata[i], units);
}

static void
hc_remedy_list_finalize (GObject *object)
{
  HcRemedyList *self = HC_REMEDY_LIST (object);

  g_clear_pointer (&self->plan, hc_plan_unref);
  g_clear_pointer (&self->remedies, g_ptr_array_unref);
  G_OBJECT_CLASS (hc_remedy_list_parent_class)->finalize (object);
}

static void
hc_remedy_list_class_init (HcRemedyListClass *klass)
{
  G_OBJECT_CLASS (klass)->finalize = hc_remedy_list_finalize;
}

static void
hc_remedy_list_init (HcRemedyList *self)
{
  gtk_orientable_set_orientation (GTK_ORIENTABLE (self), GTK_ORIENTATION_VERTICAL);
}
