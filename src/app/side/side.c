/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The side view itself: its sheets and its keys. */
#include "config.h"

#include "app/side/side-private.h"

#define CUT_STEP_MM 100.0

G_DEFINE_FINAL_TYPE (HcSide, hc_side, HC_TYPE_CANVAS)

static void
hc_side_checked (HcPanel *panel)
{
  hc_side_follow_check (HC_SIDE (panel));
}

static void
look_on (GtkWidget *widget, const char *name, GVariant *parameter)
{
  hc_side_look_on (HC_SIDE (widget), g_variant_get_int32 (parameter));
}

static void
cut_nearer (GtkWidget *widget, const char *name, GVariant *parameter)
{
  HcSide *self = HC_SIDE (widget);

  hc_side_set_distance (self, hc_side_get_distance (self)
                                  - g_variant_get_int32 (parameter) * CUT_STEP_MM);
}

static void
remove_selected (GtkWidget *widget, const char *name, GVariant *parameter)
{
  hc_canvas_remove_selected (HC_CANVAS (widget));
}

static void
hc_side_dispose (GObject *object)
{
  HcSide *self = HC_SIDE (object);

  g_clear_object (&self->settings);
  g_clear_pointer (&self->scene, hc_side_scene_free);
  g_clear_pointer (&self->places, g_array_unref);
  g_clear_pointer (&self->start, hc_house_unref);
  g_clear_pointer (&self->wall, g_free);
  G_OBJECT_CLASS (hc_side_parent_class)->dispose (object);
}

static void
add_keys (GtkWidgetClass *klass)
{
  gtk_widget_class_install_action (klass, "side.look-on", "i", look_on);
  gtk_widget_class_install_action (klass, "side.cut-nearer", "i", cut_nearer);
  gtk_widget_class_install_action (klass, "side.remove", NULL, remove_selected);
  gtk_widget_class_add_binding_action (klass, GDK_KEY_Page_Down, 0, "side.look-on", "i", 1);
  gtk_widget_class_add_binding_action (klass, GDK_KEY_Page_Up, 0, "side.look-on", "i", -1);
  gtk_widget_class_add_binding_action (klass, GDK_KEY_bracketright, 0, "side.cut-nearer", "i", 1);
  gtk_widget_class_add_binding_action (klass, GDK_KEY_bracketleft, 0, "side.cut-nearer", "i", -1);
  gtk_widget_class_add_binding_action (klass, GDK_KEY_Delete, 0, "side.remove", NULL);
  gtk_widget_class_add_binding_action (klass, GDK_KEY_BackSpace, 0, "side.remove", NULL);
  gtk_widget_class_add_binding_action (klass, GDK_KEY_Return, 0, "win.describe", NULL);
  gtk_widget_class_add_binding_action (klass, GDK_KEY_KP_Enter, 0, "win.describe", NULL);
}

static void
hc_side_class_init (HcSideClass *klass)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);
  HcCanvasClass *canvas_class = HC_CANVAS_CLASS (klass);

  G_OBJECT_CLASS (klass)->dispose = hc_side_dispose;
  HC_PANEL_CLASS (klass)->checked = hc_side_checked;
  canvas_class->get_extents = hc_side_get_extents;
  canvas_class->follow_handles = hc_side_follow_handles;
  canvas_class->find_handle = hc_side_find_handle;
  canvas_class->begin_drag = hc_side_begin_drag;
  canvas_class->get_drag_plan = hc_side_get_drag_plan;
  canvas_class->get_drag_label = hc_side_get_drag_label;
  canvas_class->drag_ended = hc_side_drag_ended;
  canvas_class->tell_item = hc_side_tell_item;
  canvas_class->nudge = hc_side_nudge;
  g_signal_new ("looked", G_TYPE_FROM_CLASS (klass), G_SIGNAL_RUN_FIRST, 0, NULL, NULL, NULL,
                G_TYPE_NONE, 0);
  gtk_widget_class_set_css_name (widget_class, "side");
  add_keys (widget_class);
}

static void
hc_side_init (HcSide *self)
{
  HcCanvas *canvas = &self->canvas;

  canvas->ground = hc_canvas_add_sheet (canvas, hc_side_draw_picture, NULL);
  canvas->marks = hc_canvas_add_sheet (canvas, hc_side_draw_marks, NULL);
  canvas->over = canvas->marks;
  self->settings = g_settings_new (HC_APPLICATION_ID);
  g_signal_connect_object (self->settings, "changed::show-birds",
                           G_CALLBACK (gtk_widget_queue_draw), canvas->ground,
                           G_CONNECT_SWAPPED);
}
