/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The card of one group of birds. */
#include "config.h"

#include "app/flock/group-card.h"

#include "app/properties/property-list.h"

#include "plan/edit-flock.h"
#include "words/flock-words.h"

#include <glib/gi18n.h>

struct _HcGroupCard
{
  GtkBox parent_instance;

  HcPanel *panel;
  char *id;
  GtkLabel *heading;
  HcPropertyList *fields;
};

G_DEFINE_FINAL_TYPE (HcGroupCard, hc_group_card, GTK_TYPE_BOX)

static HcPlan *
plan_of (HcGroupCard *self)
{
  return hc_document_get_settled_plan (hc_panel_get_document (self->panel));
}

static void
field_entered (HcGroupCard *self, HcPropertyField *field)
{
  HcPlan *plan = plan_of (self);
  HcBatch *batch = hc_parts_find (hc_plan_get (plan)->batches, self->id);
  g_autofree gpointer values = NULL;
  g_autofree char *step = hc_property_list_get_step (field);
  g_autofree char *merge = NULL;
  GError *error = NULL;

  if (batch == NULL)
    return;
  values = hc_property_list_store (self->fields, field, batch);
  merge = g_strdup_printf ("%s %s", self->id, hc_property_field_get_property_row (field)->member);
  hc_panel_apply (self->panel, hc_plan_set_batch (plan, self->id, values, &error), error, step,
                  merge);
}

static void
remove_group (GtkWidget *widget, const char *name, GVariant *parameter)
{
  HcGroupCard *self = HC_GROUP_CARD (widget);

  hc_panel_apply (self->panel, hc_plan_remove_batch (plan_of (self), self->id), NULL,
                  _("Remove Birds"), NULL);
}

/**
 * hc_group_card_show: (skip)
 * @self: a card
 * @batch: the group it is to show
 */
void
hc_group_card_show (HcGroupCard *self, HcBatch *batch)
{
  g_autofree char *heading = hc_words_batch (hc_panel_get_book (self->panel), batch);

  g_free (self->id);
  self->id = g_strdup (hc_batch_get_id (batch));
  gtk_label_set_text (self->heading, heading);
  hc_property_list_set_class (self->fields, &hc_batch_class, self->panel);
  hc_property_list_show (self->fields, hc_batch_get (batch));
}

const char *
hc_group_card_get_id (HcGroupCard *self)
{
  return self->id;
}

static void
hc_group_card_finalize (GObject *object)
{
  g_free (HC_GROUP_CARD (object)->id);
  G_OBJECT_CLASS (hc_group_card_parent_class)->finalize (object);
}

static gboolean
hc_group_card_grab_focus (GtkWidget *widget)
{
  return gtk_widget_child_focus (GTK_WIDGET (HC_GROUP_CARD (widget)->fields),
                                 GTK_DIR_TAB_FORWARD);
}

static void
hc_group_card_class_init (HcGroupCardClass *klass)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  g_type_ensure (HC_TYPE_PROPERTY_LIST);
  G_OBJECT_CLASS (klass)->finalize = hc_group_card_finalize;
  widget_class->grab_focus = hc_group_card_grab_focus;
  gtk_widget_class_install_action (widget_class, "group.remove", NULL, remove_group);
  gtk_widget_class_set_template_from_resource (widget_class, "/org/hencote/Hencote/group-card.ui");
  gtk_widget_class_bind_template_child (widget_class, HcGroupCard, heading);
  gtk_widget_class_bind_template_child (widget_class, HcGroupCard, fields);
  gtk_widget_class_bind_template_callback (widget_class, field_entered);
}

static void
hc_group_card_init (HcGroupCard *self)
{
  gtk_widget_init_template (GTK_WIDGET (self));
}

GtkWidget *
hc_group_card_new (HcPanel *panel)
{
  HcGroupCard *self = g_object_new (HC_TYPE_GROUP_CARD, NULL);

  self->panel = panel;
  return GTK_WIDGET (self);
}
