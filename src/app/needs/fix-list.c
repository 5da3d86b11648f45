/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A button for each remedy: pointed at or with the focus on it, it is shown on
 * the floor; pressed, it is one step that can be undone. */
#include "config.h"

#include "app/needs/fix-list.h"

#include "app/needs/mend-task.h"
#include "app/needs/needs-panel.h"

#include "words/remedy-words.h"

#include <glib/gi18n.h>

struct _HcFixList
{
  GtkBox parent_instance;

  HcMendTask *task;
  HcPlan *asked;
  char *about;
};

G_DEFINE_FINAL_TYPE (HcFixList, hc_fix_list, GTK_TYPE_BOX)

static HcPanel *
panel_of (HcFixList *self)
{
  return HC_PANEL (gtk_widget_get_ancestor (GTK_WIDGET (self), HC_TYPE_PANEL));
}

static const HcRemedy *
remedy_of (GtkWidget *button)
{
  return g_object_get_data (G_OBJECT (button), "remedy");
}

static HcFixList *
list_of (GtkWidget *button)
{
  return HC_FIX_LIST (gtk_widget_get_ancestor (button, HC_TYPE_FIX_LIST));
}

/* What was found for another plan than the one shown is of no use. */
static gboolean
is_stale (HcFixList *self, HcDocument *document)
{
  return document == NULL
         || hc_document_get_settled_plan (document) != hc_mend_task_get_plan (self->task);
}

static void
try_out (GtkWidget *button)
{
  HcFixList *self = list_of (button);
  HcPanel *panel = panel_of (self);
  HcDocument *document = panel != NULL ? hc_panel_get_document (panel) : NULL;

  if (is_stale (self, document))
    return;
  hc_needs_panel_set_held (HC_NEEDS_PANEL (panel), TRUE);
  hc_document_preview (document, remedy_of (button)->plan);
}

static void
put_back (GtkWidget *button)
{
  HcFixList *self = list_of (button);
  HcPanel *panel = self != NULL ? panel_of (self) : NULL;
  HcDocument *document = panel != NULL ? hc_panel_get_document (panel) : NULL;

  if (document == NULL)
    return;
  if (hc_document_is_previewing (document))
    hc_document_cancel_preview (document);
  hc_needs_panel_set_held (HC_NEEDS_PANEL (panel), FALSE);
}

static void
apply (GtkWidget *button)
{
  HcFixList *self = list_of (button);
  HcPanel *panel = panel_of (self);
  g_autoptr (HcPlan) plan = hc_plan_ref (remedy_of (button)->plan);
  g_autofree char *label
      = hc_words_remedy (hc_mend_task_get_plan (self->task), remedy_of (button),
                         hc_panel_get_units (panel));

  put_back (button);
  if (!is_stale (self, hc_panel_get_document (panel)))
    hc_panel_apply (panel, g_steal_pointer (&plan), NULL, label, NULL);
}

static GtkWidget *
new_label (const char *text, const char *css_class)
{
  GtkWidget *label = gtk_label_new (text);

  gtk_label_set_wrap (GTK_LABEL (label), TRUE);
  gtk_label_set_wrap_mode (GTK_LABEL (label), PANGO_WRAP_WORD_CHAR);
  gtk_label_set_xalign (GTK_LABEL (label), 0);
  if (css_class != NULL)
    gtk_widget_add_css_class (label, css_class);
  return label;
}

static void
watch (GtkWidget *button)
{
  GtkEventController *motion = gtk_event_controller_motion_new ();
  GtkEventController *focus = gtk_event_controller_focus_new ();

  gtk_widget_add_controller (button, motion);
  gtk_widget_add_controller (button, focus);
  g_signal_connect_swapped (motion, "enter", G_CALLBACK (try_out), button);
  g_signal_connect_swapped (motion, "leave", G_CALLBACK (put_back), button);
  g_signal_connect_swapped (focus, "enter", G_CALLBACK (try_out), button);
  g_signal_connect_swapped (focus, "leave", G_CALLBACK (put_back), button);
}

static void
add_remedy (HcFixList *self, HcRemedy *remedy)
{
  g_autofree char *label = hc_words_remedy (hc_mend_task_get_plan (self->task), remedy,
                                            hc_panel_get_units (panel_of (self)));
  g_autofree char *changes = hc_words_remedy_changes (remedy);
  g_autofree char *told = g_strdup_printf ("%s. %s", label, changes != NULL ? changes : "");
  GtkWidget *button = gtk_button_new ();
  GtkWidget *box = gtk_box_new (GTK_ORIENTATION_VERTICAL, 2);

  gtk_box_append (GTK_BOX (box), new_label (label, NULL));
  if (changes != NULL)
    gtk_box_append (GTK_BOX (box), new_label (changes, "caption"));
  gtk_button_set_child (GTK_BUTTON (button), box);
  gtk_widget_set_tooltip_text (button, hc_words_remedy_why (remedy));
  gtk_accessible_update_property (GTK_ACCESSIBLE (button), GTK_ACCESSIBLE_PROPERTY_LABEL, told, -1);
  g_object_set_data (G_OBJECT (button), "remedy", remedy);
  g_signal_connect (button, "clicked", G_CALLBACK (apply), NULL);
  watch (button);
  gtk_box_append (GTK_BOX (self), button);
}

static void
clear (HcFixList *self)
{
  GtkWidget *child;

  while ((child = gtk_widget_get_first_child (GTK_WIDGET (self))) != NULL)
    {
      if (GTK_IS_BUTTON (child))
        put_back (child);
      gtk_box_remove (GTK_BOX (self), child);
    }
}

static void
answered (HcFixList *self)
{
  GPtrArray *remedies = hc_mend_task_get_remedies (self->task);

  clear (self);
  if (panel_of (self) == NULL)
    return;
  for (guint i = 0; i < remedies->len; i++)
    add_remedy (self, remedies->pdata[i]);
  if (remedies->len == 0)
    gtk_box_append (GTK_BOX (self), new_label (hc_words_no_remedy (), NULL));
}

/**
 * hc_fix_list_ask: (skip)
 * @self: the list
 * @check: the plan judged
 * @need: the need that found it
 * @finding: what is to be fixed
 *
 * Looks for remedies, unless those for this plan are there or looked for.
 */
void
hc_fix_list_ask (HcFixList *self, const HcCheck *check, HcNeedId need,
                    const HcFinding *finding)
{
  HcPlan *plan = hc_check_get_plan (check);
  g_autofree char *about = g_strdup_printf ("%s %s %d", finding->code, finding->ids[0],
                                            (int) hc_check_get_condition (check));

  if (self->asked == plan && g_strcmp0 (self->about, about) == 0)
    return;
  clear (self);
  gtk_box_append (GTK_BOX (self), new_label (_("Trying what fits…"), "dim-label"));
  g_clear_pointer (&self->asked, hc_plan_unref);
  self->asked = hc_plan_ref (plan);
  g_free (self->about);
  self->about = g_steal_pointer (&about);
  hc_mend_task_ask (self->task, check, need, finding);
}

static void
hc_fix_list_finalize (GObject *object)
{
  HcFixList *self = HC_FIX_LIST (object);

  g_clear_pointer (&self->asked, hc_plan_unref);
  g_free (self->about);
  g_clear_object (&self->task);
  G_OBJECT_CLASS (hc_fix_list_parent_class)->finalize (object);
}

static void
hc_fix_list_class_init (HcFixListClass *klass)
{
  G_OBJECT_CLASS (klass)->finalize = hc_fix_list_finalize;
}

static void
hc_fix_list_init (HcFixList *self)
{
  gtk_orientable_set_orientation (GTK_ORIENTABLE (self), GTK_ORIENTATION_VERTICAL);
  gtk_box_set_spacing (GTK_BOX (self), 4);
  self->task = hc_mend_task_new ();
  g_signal_connect_object (self->task, "answered", G_CALLBACK (answered), self,
                           G_CONNECT_SWAPPED);
}

GtkWidget *
hc_fix_list_new (void)
{
  return g_object_new (HC_TYPE_FIX_LIST, NULL);
}
