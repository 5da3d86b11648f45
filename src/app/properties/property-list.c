/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The fields of one part. */
#include "config.h"

#include "app/properties/property-list.h"

#include <glib/gi18n.h>

struct _HcPropertyList
{
  GtkBox parent_instance;

  const HcPartClass *klass;
  HcPanel *panel;
};

G_DEFINE_FINAL_TYPE (HcPropertyList, hc_property_list, GTK_TYPE_BOX)

enum
{
  ENTERED,
  N_SIGNALS
};

static guint signals[N_SIGNALS];

/* The focus leaves a field as its page is left, when there is no plan to set. */
static void
field_entered (HcPropertyList *self, HcPropertyField *field)
{
  if (hc_panel_get_checker (self->panel) == NULL)
    return;
  g_signal_emit (self, signals[ENTERED], 0, field);
}

static void
clear (HcPropertyList *self)
{
  GtkWidget *child;

  while ((child = gtk_widget_get_first_child (GTK_WIDGET (self))) != NULL)
    gtk_box_remove (GTK_BOX (self), child);
}

/**
 * hc_property_list_set_class: (skip)
 * @self: the list
 * @klass: (nullable): the class of the part it is to show
 * @panel: the part of the window it is in, which tells book and units
 */
void
hc_property_list_set_class (HcPropertyList *self, const HcPartClass *klass, HcPanel *panel)
{
  guint n = 0;
  const HcProperty *properties;

  if (self->klass == klass && self->panel == panel)
    return;
  self->klass = klass;
  self->panel = panel;
  clear (self);
  properties = klass != NULL ? hc_properties_of (klass, &n) : NULL;
  for (guint i = 0; i < n; i++)
    {
      HcPropertyField *field = hc_property_field_new (
          &properties[i], hc_property_find_member (klass, properties[i].member),
          hc_panel_get_book (panel));

      g_signal_connect_swapped (field, "entered", G_CALLBACK (field_entered), self);
      gtk_box_append (GTK_BOX (self), GTK_WIDGET (field));
    }
}

/**
 * hc_property_list_show: (skip)
 * @self: the list
 * @values: the values of the part it shows
 */
void
hc_property_list_show (HcPropertyList *self, gconstpointer values)
{
  GtkWidget *child = gtk_widget_get_first_child (GTK_WIDGET (self));
  HcBook *book = hc_panel_get_book (self->panel);

  for (; child != NULL; child = gtk_widget_get_next_sibling (child))
    {
      HcPropertyField *field = HC_PROPERTY_FIELD (child);
      const HcProperty *property = hc_property_field_get_property_row (field);

      gtk_widget_set_visible (child, property->suits == NULL || property->suits (values, book));
      if (property->choices == HC_CHOICES_PEN || property->choices == HC_CHOICES_BUILDING)
        hc_property_field_offer_plan (field, hc_panel_get_plan (self->panel));
      hc_property_field_show (field, values, hc_panel_get_units (self->panel));
    }
}

/**
 * hc_property_list_store: (skip)
 * @self: the list
 * @field: the field in which another value was set
 * @part: the part as it is
 *
 * Returns: (transfer full): the part's values with the one in @field, good as
 *   long as both; free with g_free()
 */
gpointer
hc_property_list_store (HcPropertyList *self, HcPropertyField *field, gconstpointer part)
{
  gpointer values = g_memdup2 (hc_part_get_values (part), self->klass->values_size);

  hc_property_field_store (field, values);
  return values;
}

/**
 * hc_property_list_get_step: (skip)
 * @field: the field in which another value was set
 *
 * Returns: (transfer full): what that step is called in the undo menu
 */
char *
hc_property_list_get_step (HcPropertyField *field)
{
  /* Translators: a step in the undo menu; %s is what is set, such as "Height" */
  return g_strdup_printf (_("Set %s"), _(hc_property_field_get_property_row (field)->label));
}

static void
hc_property_list_class_init (HcPropertyListClass *klass)
{
  signals[ENTERED]
      = g_signal_new ("entered", G_TYPE_FROM_CLASS (klass), G_SIGNAL_RUN_LAST, 0, NULL, NULL,
                      NULL, G_TYPE_NONE, 1, HC_TYPE_PROPERTY_FIELD);
}

static void
hc_property_list_init (HcPropertyList *self)
{
  gtk_orientable_set_orientation (GTK_ORIENTABLE (self), GTK_ORIENTATION_VERTICAL);
  gtk_box_set_spacing (GTK_BOX (self), 6);
}
