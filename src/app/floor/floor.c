/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The floor itself: its sheets and its tool. */
#include "config.h"

#include "app/floor/floor-handle.h"
#include "app/floor/floor-private.h"

G_DEFINE_FINAL_TYPE (HcFloor, hc_floor, HC_TYPE_CANVAS)

HcFloorTool
hc_floor_get_tool (HcFloor *self)
{
  return self->tool;
}

void
hc_floor_set_tool (HcFloor *self, HcFloorTool tool)
{
  self->tool = tool;
  self->canvas.draws = tool != HC_TOOL_CHOOSE;
  gtk_widget_set_cursor_from_name (GTK_WIDGET (self),
                                   tool == HC_TOOL_CHOOSE ? "default" : "crosshair");
}

static gboolean
hc_floor_stop (HcCanvas *canvas)
{
  HcFloor *self = HC_FLOOR (canvas);
  gboolean draws = self->tool != HC_TOOL_CHOOSE;

  hc_floor_set_tool (self, HC_TOOL_CHOOSE);
  return draws;
}

/* A pen's child is a box, and may lie over another pen. */
static HcCanvasItem *
hc_floor_look_under (HcCanvas *canvas, HcCanvasItem *item, HcPoint at)
{
  HcPen *pen;

  if (hc_canvas_item_get_kind (item) != HC_ITEM_PEN)
    return item;
  pen = hc_layout_find_pen_at (canvas->layout, at);
  return pen != NULL ? hc_canvas_get_item (canvas, hc_pen_get_id (pen)) : NULL;
}

static gboolean
is_wall (HcCanvasItem *item)
{
  return hc_canvas_item_get_kind (item) == HC_ITEM_HANDLE
         && hc_canvas_item_get_number (item) == HC_HANDLE_WALL;
}

/* The side looks at the wall that was gone to last. */
static void
hc_floor_focused (HcCanvas *canvas, HcCanvasItem *item)
{
  if (is_wall (item))
    gtk_widget_activate_action (GTK_WIDGET (canvas), "win.choose-wall", "s",
                                hc_canvas_item_get_id (item));
}

static void
hc_floor_plan_changed (HcPanel *panel)
{
  hc_floor_follow_plan (HC_FLOOR (panel));
}

static void
hc_floor_checked (HcPanel *panel)
{
  hc_floor_follow_check (HC_FLOOR (panel));
}

static void
hc_floor_dispose (GObject *object)
{
  g_clear_object (&HC_FLOOR (object)->settings);
  G_OBJECT_CLASS (hc_floor_parent_class)->dispose (object);
}

static void
hc_floor_class_init (HcFloorClass *klass)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);
  HcPanelClass *panel_class = HC_PANEL_CLASS (klass);
  HcCanvasClass *canvas_class = HC_CANVAS_CLASS (klass);

  G_OBJECT_CLASS (klass)->dispose = hc_floor_dispose;
  panel_class->plan_changed = hc_floor_plan_changed;
  panel_class->checked = hc_floor_checked;
  canvas_class->get_extents = hc_floor_get_extents;
  canvas_class->follow_handles = hc_floor_follow_handles;
  canvas_class->find_handle = hc_floor_find_handle;
  canvas_class->look_under = hc_floor_look_under;
  canvas_class->begin_drag = hc_floor_begin_drag;
  canvas_class->get_drag_plan = hc_floor_get_drag_plan;
  canvas_class->get_drag_label = hc_floor_get_drag_label;
  canvas_class->drag_ended = hc_floor_drag_ended;
  canvas_class->focused = hc_floor_focused;
  canvas_class->nudge = hc_floor_nudge;
  canvas_class->stop = hc_floor_stop;
  gtk_widget_class_set_css_name (widget_class, "floor");
  hc_floor_class_add_actions (widget_class);
}

static void
pressed_again (GtkGestureClick *gesture, int n_press, double x, double y, HcFloor *self)
{
  if (n_press == 2)
    gtk_widget_activate_action (GTK_WIDGET (self), "floor.change-corner", NULL);
}

static void
hc_floor_init (HcFloor *self)
{
  HcCanvas *canvas = &self->canvas;
  GtkGesture *click = gtk_gesture_click_new ();

  canvas->ground = hc_canvas_add_sheet (canvas, hc_floor_draw_ground, NULL);
  self->birds = hc_canvas_add_sheet (canvas, hc_floor_draw_birds, NULL);
  self->words = hc_canvas_add_sheet (canvas, hc_floor_draw_words, NULL);
  canvas->over = self->birds;
  canvas->marks = hc_canvas_add_sheet (canvas, hc_floor_draw_marks, hc_floor_get_marks_extents);
  self->settings = g_settings_new (HC_APPLICATION_ID);
  g_signal_connect_object (self->settings, "changed::show-birds",
                           G_CALLBACK (gtk_widget_queue_draw), self->birds, G_CONNECT_SWAPPED);
  g_signal_connect (click, "pressed", G_CALLBACK (pressed_again), self);
  gtk_widget_add_controller (GTK_WIDGET (self), GTK_EVENT_CONTROLLER (click));
  hc_floor_add_drop (self);
}
