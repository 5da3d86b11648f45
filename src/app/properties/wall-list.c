/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The walls of the pen selected. */
#include "config.h"

#include "app/properties/wall-list.h"

#include "app/fields/length-field.h"
#include "app/fields/picker.h"
#include "app/properties/choices.h"

#include "plan/edit-wall.h"

#include <glib/gi18n.h>

struct _HcWallList
{
  GtkBox parent_instance;

  HcPanel *panel;
  char *pen;
  char **walls;
};

G_DEFINE_FINAL_TYPE (HcWallList, hc_wall_list, GTK_TYPE_BOX)

static const char *const kinds[] = { N_("Solid"), N_("Mesh"), N_("Fence"), NULL };

static HcPlan *
plan_of (HcWallList *self)
{
  return hc_document_get_settled_plan (hc_panel_get_document (self->panel));
}

static const char *
wall_of (GtkWidget *field)
{
  return g_object_get_data (G_OBJECT (field), "wall");
}

static void
length_entered (HcWallList *self, double mm, HcLengthField *field)
{
  const char *wall = wall_of (GTK_WIDGET (field));
  GError *error = NULL;
  HcPlan *plan = hc_plan_set_wall_length (plan_of (self), wall, self->pen, mm, &error);

  hc_panel_apply (self->panel, plan, error, _("Set a Wall's Length"), wall);
}

static void
kind_entered (HcWallList *self, HcPicker *picker)
{
  const char *wall = wall_of (GTK_WIDGET (picker));
  HcPlan *plan = plan_of (self);
  HcWall *found = hc_layout_get_wall (hc_plan_get_layout (plan), wall);
  HcWallValues values;
  GError *error = NULL;

  if (found == NULL)
    return;
  values = *hc_wall_get (found);
  values.kind = (int) hc_picker_get_picked (picker);
  plan = hc_plan_set_wall (plan, wall, &values, &error);
  hc_panel_apply (self->panel, plan, error, _("Set Kind of Wall"), wall);
}

static void
mesh_entered (HcWallList *self, HcPicker *picker)
{
  const char *wall = wall_of (GTK_WIDGET (picker));
  HcPlan *plan = plan_of (self);
  HcWall *found = hc_layout_get_wall (hc_plan_get_layout (plan), wall);
  HcWallValues values;
  GError *error = NULL;

  if (found == NULL)
    return;
  values = *hc_wall_get (found);
  values.mesh = (char *) hc_picker_get_id (picker);
  plan = hc_plan_set_wall (plan, wall, &values, &error);
  hc_panel_apply (self->panel, plan, error, _("Set Mesh of Wall"), wall);
}

static GtkWidget *
new_mesh (HcWallList *self, guint number, const char *wall)
{
  /* Translators: the number of a wall, counted round its pen */
  g_autofree char *told = g_strdup_printf (_("Mesh of wall %u"), number);
  GtkWidget *mesh = hc_picker_new (told);

  hc_picker_offer (HC_PICKER (mesh), "", _("None"), NULL);
  hc_choices_offer_book (HC_PICKER (mesh), hc_panel_get_book (self->panel), HC_CHOICES_MESH);
  gtk_widget_set_halign (mesh, GTK_ALIGN_END);
  g_object_set_data_full (G_OBJECT (mesh), "wall", g_strdup (wall), g_free);
  g_signal_connect_swapped (mesh, "picked", G_CALLBACK (mesh_entered), self);
  return mesh;
}

static void
add_row (HcWallList *self, guint number, const char *wall)
{
  /* Translators: the number of a wall, counted round its pen */
  g_autofree char *label = g_strdup_printf (_("Wall %u"), number);
  g_autofree char *told = g_strdup_printf (_("Kind of wall %u"), number);
  GtkWidget *row = gtk_box_new (GTK_ORIENTATION_HORIZONTAL, 6);
  GtkWidget *length = hc_length_field_new (label);
  GtkWidget *kind = hc_picker_new (told);

  hc_length_field_set_range (HC_LENGTH_FIELD (length), 50, 1e6);
  gtk_widget_set_hexpand (length, TRUE);
  hc_picker_offer_words (HC_PICKER (kind), kinds);
  gtk_widget_set_valign (kind, GTK_ALIGN_START);
  g_object_set_data_full (G_OBJECT (length), "wall", g_strdup (wall), g_free);
  g_object_set_data_full (G_OBJECT (kind), "wall", g_strdup (wall), g_free);
  g_signal_connect_swapped (length, "entered", G_CALLBACK (length_entered), self);
  g_signal_connect_swapped (kind, "picked", G_CALLBACK (kind_entered), self);
  gtk_box_append (GTK_BOX (row), length);
  gtk_box_append (GTK_BOX (row), kind);
  gtk_box_append (GTK_BOX (self), row);
  gtk_box_append (GTK_BOX (self), new_mesh (self, number, wall));
}

static void
show_mesh (GtkWidget *mesh, HcLayout *layout)
{
  const HcWallValues *wall = hc_wall_get (hc_layout_get_wall (layout, wall_of (mesh)));

  gtk_widget_set_visible (mesh, wall->kind != HC_WALL_SOLID);
  hc_picker_set_id (HC_PICKER (mesh), wall->mesh);
}

static void
show_row (HcWallList *self, GtkWidget *row, HcLayout *layout)
{
  GtkWidget *length = gtk_widget_get_first_child (row);
  HcWall *wall = hc_layout_get_wall (layout, wall_of (length));

  hc_length_field_set_units (HC_LENGTH_FIELD (length), hc_panel_get_units (self->panel));
  hc_length_field_set_length (HC_LENGTH_FIELD (length),
                              hc_layout_get_inside_length (layout, wall_of (length), self->pen));
  hc_picker_set_picked (HC_PICKER (gtk_widget_get_last_child (row)),
                          (guint) hc_wall_get (wall)->kind);
}

static void
set_walls (HcWallList *self, char **walls)
{
  GtkWidget *child;

  while ((child = gtk_widget_get_first_child (GTK_WIDGET (self))) != NULL)
    gtk_box_remove (GTK_BOX (self), child);
  g_strfreev (self->walls);
  self->walls = g_strdupv (walls);
  for (guint i = 0; walls[i] != NULL; i++)
    add_row (self, i + 1, walls[i]);
}

/**
 * hc_wall_list_show: (skip)
 * @self: the list
 * @panel: the part of the window it is in
 * @pen: (nullable): the pen selected
 */
void
hc_wall_list_show (HcWallList *self, HcPanel *panel, HcPen *pen)
{
  GtkWidget *row;

  gtk_widget_set_visible (GTK_WIDGET (self), pen != NULL);
  if (pen == NULL)
    return;
  self->panel = panel;
  g_free (self->pen);
  self->pen = g_strdup (hc_pen_get_id (pen));
  if (self->walls == NULL
      || !g_strv_equal ((const char *const *) self->walls,
                        (const char *const *) hc_pen_get (pen)->walls))
    set_walls (self, hc_pen_get (pen)->walls);
  row = gtk_widget_get_first_child (GTK_WIDGET (self));
  for (; row != NULL; row = gtk_widget_get_next_sibling (row))
    if (HC_IS_PICKER (row))
      show_mesh (row, hc_plan_get_layout (hc_panel_get_plan (panel)));
    else
      show_row (self, row, hc_plan_get_layout (hc_panel_get_plan (panel)));
}

static void
hc_wall_list_finalize (GObject *object)
{
  HcWallList *self = HC_WALL_LIST (object);

  g_free (self->pen);
  g_strfreev (self->walls);
  G_OBJECT_CLASS (hc_wall_list_parent_class)->finalize (object);
}

static void
hc_wall_list_class_init (HcWallListClass *klass)
{
  G_OBJECT_CLASS (klass)->finalize = hc_wall_list_finalize;
}

static void
hc_wall_list_init (HcWallList *self)
{
  gtk_orientable_set_orientation (GTK_ORIENTABLE (self), GTK_ORIENTATION_VERTICAL);
  gtk_box_set_spacing (GTK_BOX (self), 6);
}
