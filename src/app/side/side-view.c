/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The side with the wall it looks at, where it is cut, and zoom buttons. */
#include "config.h"

#include "app/side/side-view.h"

#include "app/canvas/zoom-buttons.h"
#include "app/fields/hand-on-focus.h"
#include "app/fields/length-field.h"
#include "app/side/side-walls.h"
#include "app/window/window.h"

#include <glib/gi18n.h>

#define ZOOM_STEP 1.25
#define NEAREST_MM 50.0
#define FARTHEST_MM 20000.0

struct _HcSideView
{
  HcPanel parent_instance;

  HcSide *side;
  GtkMenuButton *walls;
  GtkBox *cut;
  HcLengthField *distance;
  GSimpleAction *wall;
};

G_DEFINE_FINAL_TYPE (HcSideView, hc_side_view, HC_TYPE_PANEL)

HcSide *
hc_side_view_get_side (HcSideView *self)
{
  return self->side;
}

static HcHouse *
house_of (HcSideView *self)
{
  HcCheck *check = hc_panel_get_check (HC_PANEL (self));

  return check != NULL ? hc_check_get_house (check) : NULL;
}

static void
list_walls (GtkMenuButton *button, gpointer view)
{
  HcHouse *house = house_of (view);
  g_autoptr (GMenu) menu
      = house != NULL ? hc_side_walls_list (house, hc_panel_get_units (view)) : NULL;

  gtk_menu_button_set_menu_model (button, G_MENU_MODEL (menu));
}

static void
tell_sight (HcSideView *self)
{
  HcHouse *house = house_of (self);
  const char *wall = hc_side_get_wall (self->side);
  g_autofree char *name = NULL;

  if (house == NULL)
    return;
  name = hc_side_walls_name (house, wall);
  gtk_menu_button_set_label (self->walls, name);
  g_simple_action_set_state (self->wall, g_variant_new_string (wall != NULL ? wall : ""));
  hc_length_field_set_units (self->distance, hc_panel_get_units (HC_PANEL (self)));
  hc_length_field_set_length (self->distance, hc_side_get_distance (self->side));
}

static void
change_wall (GSimpleAction *action, GVariant *state, gpointer view)
{
  hc_side_look_at (HC_SIDE_VIEW (view)->side, g_variant_get_string (state, NULL));
}

static void
look_on (GSimpleAction *action, GVariant *parameter, gpointer view)
{
  hc_side_look_on (HC_SIDE_VIEW (view)->side, g_variant_get_int32 (parameter));
}

static void
distance_entered (HcSideView *self, double mm)
{
  hc_side_set_distance (self->side, mm);
}

/* Shown anew, it looks at what was chosen elsewhere meanwhile. */
static void
catch_up (HcSideView *self)
{
  HcDocument *document = hc_panel_get_document (HC_PANEL (self));
  GtkRoot *root = gtk_widget_get_root (GTK_WIDGET (self));
  g_autofree char *wall = HC_IS_WINDOW (root) ? hc_window_take_wall (HC_WINDOW (root)) : NULL;

  if (document == NULL)
    return;
  tell_sight (self);
  if (wall != NULL)
    hc_side_look_at (self->side, wall);
  else
    hc_side_show_parts (self->side, hc_document_get_selection (document));
}

static void
hc_side_view_checked (HcPanel *panel)
{
  tell_sight (HC_SIDE_VIEW (panel));
}

static void
zoom_in (GtkWidget *widget, const char *name, GVariant *parameter)
{
  hc_canvas_zoom (HC_CANVAS (HC_SIDE_VIEW (widget)->side), ZOOM_STEP);
}

static void
zoom_out (GtkWidget *widget, const char *name, GVariant *parameter)
{
  hc_canvas_zoom (HC_CANVAS (HC_SIDE_VIEW (widget)->side), 1 / ZOOM_STEP);
}

static void
zoom_fit (GtkWidget *widget, const char *name, GVariant *parameter)
{
  hc_canvas_fit (HC_CANVAS (HC_SIDE_VIEW (widget)->side));
}

static void
remove_selected (GtkWidget *widget, const char *name, GVariant *parameter)
{
  hc_canvas_remove_selected (HC_CANVAS (HC_SIDE_VIEW (widget)->side));
}

static void
show_parts (GtkWidget *widget, const char *name, GVariant *parameter)
{
  g_autofree const char **ids = g_variant_get_strv (parameter, NULL);

  hc_side_show_parts (HC_SIDE_VIEW (widget)->side, ids);
}

static gboolean
hc_side_view_grab_focus (GtkWidget *widget)
{
  return hc_hand_on_focus (widget, GTK_WIDGET (HC_SIDE_VIEW (widget)->side));
}

static void
add_actions (HcSideView *self)
{
  static const GActionEntry entries[] = {
    { "wall", NULL, "s", "''", change_wall },
    { "look-on", look_on, "i" },
  };
  g_autoptr (GSimpleActionGroup) group = g_simple_action_group_new ();

  g_action_map_add_action_entries (G_ACTION_MAP (group), entries, G_N_ELEMENTS (entries), self);
  self->wall
      = G_SIMPLE_ACTION (g_action_map_lookup_action (G_ACTION_MAP (group), "wall"));
  gtk_widget_insert_action_group (GTK_WIDGET (self), "sideview", G_ACTION_GROUP (group));
}

static void
hc_side_view_class_init (HcSideViewClass *klass)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  g_type_ensure (HC_TYPE_SIDE);
  g_type_ensure (HC_TYPE_ZOOM_BUTTONS);
  HC_PANEL_CLASS (klass)->checked = hc_side_view_checked;
  widget_class->grab_focus = hc_side_view_grab_focus;
  gtk_widget_class_install_action (widget_class, "view.zoom-in", NULL, zoom_in);
  gtk_widget_class_install_action (widget_class, "view.zoom-out", NULL, zoom_out);
  gtk_widget_class_install_action (widget_class, "view.zoom-fit", NULL, zoom_fit);
  gtk_widget_class_install_action (widget_class, "view.remove", NULL, remove_selected);
  gtk_widget_class_install_action (widget_class, "view.show-parts", "as", show_parts);
  gtk_widget_class_set_template_from_resource (widget_class, "/org/hencote/Hencote/side-view.ui");
  gtk_widget_class_bind_template_child (widget_class, HcSideView, side);
  gtk_widget_class_bind_template_child (widget_class, HcSideView, walls);
  gtk_widget_class_bind_template_child (widget_class, HcSideView, cut);
  gtk_widget_class_bind_template_callback (widget_class, tell_sight);
}

static void
hc_side_view_init (HcSideView *self)
{
  gtk_widget_init_template (GTK_WIDGET (self));
  add_actions (self);
  self->distance = HC_LENGTH_FIELD (hc_length_field_new (_("Cut from the wall")));
  hc_length_field_set_range (self->distance, NEAREST_MM, FARTHEST_MM);
  g_signal_connect_swapped (self->distance, "entered", G_CALLBACK (distance_entered), self);
  gtk_box_append (self->cut, GTK_WIDGET (self->distance));
  gtk_menu_button_set_create_popup_func (self->walls, list_walls, self, NULL);
  g_signal_connect (self, "notify::checker", G_CALLBACK (catch_up), NULL);
}
