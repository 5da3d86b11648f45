/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The few properties of what is selected, in place. */
#include "config.h"

#include "app/properties/properties.h"

#include "app/properties/property-list.h"
#include "app/properties/wall-list.h"

#include "plan/edit-building.h"
#include "plan/edit-fitting.h"
#include "plan/edit-opening.h"
#include "plan/edit-pen.h"
#include "words/house-words.h"
#include "words/words.h"

#include <glib/gi18n.h>

struct _HcProperties
{
  HcPanel parent_instance;

  GtkLabel *heading;
  GtkWidget *details;
  HcPropertyList *fields;
  HcPropertyList *building;
  HcWallList *walls;

  char *shown;
  const HcPartClass *klass;
};

G_DEFINE_FINAL_TYPE (HcProperties, hc_properties, HC_TYPE_PANEL)

static gpointer
find_part (HcLayout *layout, const char *id)
{
  gpointer part = hc_layout_get_fitting (layout, id, NULL);

  if (part == NULL)
    part = hc_layout_get_opening (layout, id);
  return part != NULL ? part : hc_layout_get_pen (layout, id);
}

static const HcPartClass *
class_of (HcLayout *layout, const char *id)
{
  if (hc_layout_get_fitting (layout, id, NULL) != NULL)
    return &hc_fitting_class;
  return hc_layout_get_opening (layout, id) != NULL ? &hc_opening_class : &hc_pen_class;
}

static HcLayout *
layout_of (HcProperties *self)
{
  return hc_plan_get_layout (hc_panel_get_plan (HC_PANEL (self)));
}

static HcPlan *
set_pen (HcProperties *self, HcPlan *plan, const HcPenValues *values, GError **error)
{
  const HcPenValues *before
      = hc_pen_get (hc_layout_get_pen (hc_plan_get_layout (plan), self->shown));

  if (g_strcmp0 (before->building, values->building) != 0)
    return hc_plan_give_building (plan, self->shown, values->building, error);
  return hc_plan_set_pen (plan, self->shown, values, error);
}

static HcPlan *
set_part (HcProperties *self, HcPlan *plan, gconstpointer values, GError **error)
{
  if (self->klass == &hc_fitting_class)
    return hc_plan_set_fitting (plan, self->shown, values, error);
  if (self->klass == &hc_opening_class)
    return hc_plan_set_opening (plan, self->shown, values, error);
  return set_pen (self, plan, values, error);
}

/* Of the pen that is shown. */
static HcBuilding *
find_building (HcProperties *self, HcPlan *plan)
{
  HcPen *pen = self->klass == &hc_pen_class && self->shown != NULL
                   ? hc_layout_get_pen (hc_plan_get_layout (plan), self->shown)
                   : NULL;
  const char *id = pen != NULL ? hc_pen_get (pen)->building : NULL;

  return id != NULL ? hc_parts_find (hc_plan_get (plan)->buildings, id) : NULL;
}

static void
building_entered (HcProperties *self, HcPropertyField *field)
{
  HcPlan *plan = hc_document_get_settled_plan (hc_panel_get_document (HC_PANEL (self)));
  HcBuilding *before = find_building (self, plan);
  g_autofree gpointer values = NULL;
  g_autofree char *step = hc_property_list_get_step (field);
  g_autoptr (HcBuilding) building = NULL;

  if (before == NULL)
    return;
  values = hc_property_list_store (self->building, field, before);
  building = hc_building_with (before, values);
  hc_panel_apply (HC_PANEL (self), hc_plan_put_building (plan, building), NULL, step, NULL);
}

static void
show_building (HcProperties *self)
{
  HcBuilding *building = find_building (self, hc_panel_get_plan (HC_PANEL (self)));

  gtk_widget_set_visible (GTK_WIDGET (self->building), building != NULL);
  if (building == NULL)
    return;
  hc_property_list_set_class (self->building, &hc_building_class, HC_PANEL (self));
  hc_property_list_show (self->building, hc_building_get (building));
}

static void
field_entered (HcProperties *self, HcPropertyField *field)
{
  HcPlan *plan = hc_document_get_settled_plan (hc_panel_get_document (HC_PANEL (self)));
  gpointer part = find_part (hc_plan_get_layout (plan), self->shown);
  g_autofree gpointer values = NULL;
  g_autofree char *merge = NULL;
  g_autofree char *step = hc_property_list_get_step (field);
  GError *error = NULL;

  if (part == NULL)
    return;
  values = hc_property_list_store (self->fields, field, part);
  merge = g_strdup_printf ("%s %s", self->shown,
                           hc_property_field_get_property_row (field)->member);
  hc_panel_apply (HC_PANEL (self), set_part (self, plan, values, &error), error, step, merge);
}

static char *
heading_for (HcProperties *self, gpointer part)
{
  HcUnits units = hc_panel_get_units (HC_PANEL (self));

  if (self->klass == &hc_fitting_class)
    return hc_words_fitting (part, units);
  if (self->klass == &hc_opening_class)
    return hc_words_opening (part, units);
  return hc_words_pen (layout_of (self), part, units);
}

/* Several things have no fields, but can all be copied or removed. */
static gboolean
show_several (HcProperties *self)
{
  guint n = g_strv_length (
      (char **) hc_document_get_selection (hc_panel_get_document (HC_PANEL (self))));
  gboolean several = n > 1;
  g_autofree char *heading = NULL;

  gtk_widget_set_visible (self->details, !several);
  if (!several)
    return FALSE;
  heading = g_strdup_printf (ngettext ("%u thing selected", "%u things selected", n), n);
  gtk_label_set_text (self->heading, heading);
  gtk_widget_set_visible (GTK_WIDGET (self), TRUE);
  return TRUE;
}

static void
show_values (HcProperties *self)
{
  gpointer part = self->shown != NULL ? find_part (layout_of (self), self->shown) : NULL;
  g_autofree char *heading = NULL;

  if (show_several (self))
    return;
  gtk_widget_set_visible (GTK_WIDGET (self), part != NULL);
  if (part == NULL)
    return;
  heading = heading_for (self, part);
  gtk_label_set_text (self->heading, heading);
  hc_property_list_show (self->fields, hc_part_get_values (part));
  show_building (self);
  hc_wall_list_show (self->walls, HC_PANEL (self), self->klass == &hc_pen_class ? part : NULL);
}

static void
hc_properties_selection_changed (HcPanel *panel)
{
  HcProperties *self = HC_PROPERTIES (panel);
  const char *const *ids = hc_document_get_selection (hc_panel_get_document (panel));
  const char *only = ids[0] != NULL && ids[1] == NULL ? ids[0] : NULL;
  g_autofree char *before = g_steal_pointer (&self->shown);

  self->shown = g_strdup (only);
  if (only != NULL)
    {
      self->klass = class_of (layout_of (self), only);
      hc_property_list_set_class (self->fields, self->klass, panel);
    }
  show_values (self);
}

static void
hc_properties_plan_changed (HcPanel *panel)
{
  show_values (HC_PROPERTIES (panel));
}

/* The first field, not the buttons above it. */
static gboolean
hc_properties_grab_focus (GtkWidget *widget)
{
  HcProperties *self = HC_PROPERTIES (widget);

  return gtk_widget_get_focus_child (widget) == NULL
         && gtk_widget_child_focus (GTK_WIDGET (self->fields), GTK_DIR_TAB_FORWARD);
}

static gboolean
go_back_to_floor (GtkWidget *widget, GVariant *args, gpointer data)
{
  const char *const ids[] = { HC_PROPERTIES (widget)->shown, NULL };

  return gtk_widget_activate_action (widget, "win.show-parts", "^as", ids);
}

static void
hc_properties_finalize (GObject *object)
{
  g_free (HC_PROPERTIES (object)->shown);
  G_OBJECT_CLASS (hc_properties_parent_class)->finalize (object);
}

static void
hc_properties_class_init (HcPropertiesClass *klass)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  G_OBJECT_CLASS (klass)->finalize = hc_properties_finalize;
  widget_class->grab_focus = hc_properties_grab_focus;
  gtk_widget_class_add_binding (widget_class, GDK_KEY_Escape, 0, go_back_to_floor, NULL);
  HC_PANEL_CLASS (klass)->plan_changed = hc_properties_plan_changed;
  HC_PANEL_CLASS (klass)->selection_changed = hc_properties_selection_changed;
  g_type_ensure (HC_TYPE_PROPERTY_LIST);
  g_type_ensure (HC_TYPE_WALL_LIST);
  gtk_widget_class_set_template_from_resource (widget_class, "/org/hencote/Hencote/properties.ui");
  gtk_widget_class_bind_template_child (widget_class, HcProperties, heading);
  gtk_widget_class_bind_template_child (widget_class, HcProperties, details);
  gtk_widget_class_bind_template_child (widget_class, HcProperties, fields);
  gtk_widget_class_bind_template_child (widget_class, HcProperties, building);
  gtk_widget_class_bind_template_child (widget_class, HcProperties, walls);
  gtk_widget_class_bind_template_callback (widget_class, building_entered);
  gtk_widget_class_bind_template_callback (widget_class, field_entered);
}

static void
hc_properties_init (HcProperties *self)
{
  gtk_widget_init_template (GTK_WIDGET (self));
}
