/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The pointer on a canvas: choosing, dragging, panning, zooming. */
#include "config.h"

#include "app/canvas/canvas.h"

#define ZOOM_STEP 1.15
#define PAN_STEP_PX 60.0

/**
 * hc_canvas_item_at: (skip)
 * @self: a canvas
 * @x_px: a place on it
 * @y_px: a place on it
 *
 * Returns: (nullable) (transfer none): the topmost thing there
 */
HcCanvasItem *
hc_canvas_item_at (HcCanvas *self, double x_px, double y_px)
{
  GtkWidget *picked = gtk_widget_pick (GTK_WIDGET (self), x_px, y_px, GTK_PICK_DEFAULT);
  HcPoint at = hc_sight_to_mm (&self->sight, x_px, y_px);

  if (picked == NULL || !HC_IS_CANVAS_ITEM (picked))
    return NULL;
  return HC_CANVAS_GET_CLASS (self)->look_under (self, HC_CANVAS_ITEM (picked), at);
}

/* What takes the focus is selected alone, so what was just taken out of the
 * selection does not get it. */
static void
focus_on (HcCanvas *self, HcCanvasItem *item)
{
  HcDocument *document = hc_panel_get_document (HC_PANEL (self));
  gboolean takes_it = item != NULL
                      && (hc_canvas_item_get_kind (item) == HC_ITEM_HANDLE
                          || hc_document_is_selected (document, hc_canvas_item_get_id (item)));

  gtk_widget_grab_focus (takes_it ? GTK_WIDGET (item) : GTK_WIDGET (self));
}

static void
pressed (GtkGestureDrag *gesture, double x, double y, HcCanvas *self)
{
  GdkModifierType state
      = gtk_event_controller_get_current_event_state (GTK_EVENT_CONTROLLER (gesture));
  HcCanvasItem *item = hc_canvas_item_at (self, x, y);
  HcDocument *document = hc_panel_get_document (HC_PANEL (self));
  gboolean handle = item != NULL && hc_canvas_item_get_kind (item) == HC_ITEM_HANDLE;
  gboolean add = (state & (GDK_SHIFT_MASK | GDK_CONTROL_MASK)) != 0;

  if (document == NULL)
    return;
  if (!handle && !self->draws
      && (add || item == NULL || !hc_document_is_selected (document, hc_canvas_item_get_id (item))))
    hc_canvas_choose (self, item, add);
  focus_on (self, item);
  g_clear_pointer (&self->drag, hc_drag_free);
  self->drag = hc_canvas_new_drag (self, item, hc_sight_to_mm (&self->sight, x, y));
  if (add && self->drag->kind == HC_DRAG_PAN)
    self->drag->kind = HC_DRAG_BAND;
}

static void
pan_to (HcCanvas *self, double by_x, double by_y)
{
  HcSight sight = hc_sight_panned (&self->drag->sight, by_x, by_y);

  hc_canvas_set_sight (self, &sight);
}

static void
preview (HcCanvas *self)
{
  g_autoptr (GError) error = NULL;
  g_autoptr (HcPlan) plan = HC_CANVAS_GET_CLASS (self)->get_drag_plan (self, self->drag, &error);

  gtk_widget_queue_draw (self->marks);
  if (plan != NULL)
    hc_document_preview (hc_panel_get_document (HC_PANEL (self)), plan);
}

static void
moved (GtkGestureDrag *gesture, double by_x, double by_y, HcCanvas *self)
{
  GdkModifierType state
      = gtk_event_controller_get_current_event_state (GTK_EVENT_CONTROLLER (gesture));
  HcDrag *drag = self->drag;
  double x, y;

  if (drag == NULL || !gtk_gesture_drag_get_start_point (gesture, &x, &y))
    return;
  if (!drag->claimed)
    {
      if (!gtk_drag_check_threshold (GTK_WIDGET (self), 0, 0, (int) by_x, (int) by_y))
        return;
      drag->claimed = TRUE;
      gtk_gesture_set_state (GTK_GESTURE (gesture), GTK_EVENT_SEQUENCE_CLAIMED);
    }
  drag->to = hc_sight_to_mm (&drag->sight, x + by_x, y + by_y);
  drag->free = (state & GDK_CONTROL_MASK) != 0;
  drag->even = (state & GDK_SHIFT_MASK) != 0;
  if (drag->kind == HC_DRAG_PAN)
    pan_to (self, by_x, by_y);
  else if (drag->kind == HC_DRAG_BAND)
    gtk_widget_queue_draw (self->marks);
  else
    preview (self);
}

static gboolean
in_band (const HcDrag *drag, HcPoint at)
{
  HcPoint ends[2] = { drag->from, drag->to };

  return hc_box_contains_point (hc_box_around (ends, 2), at);
}

static void
choose_band (HcCanvas *self)
{
  g_autoptr (GStrvBuilder) builder = g_strv_builder_new ();
  g_auto (GStrv) ids = NULL;
  GHashTableIter at;
  gpointer id, item;

  g_hash_table_iter_init (&at, self->items);
  while (g_hash_table_iter_next (&at, &id, &item))
    if (hc_canvas_item_get_kind (item) == HC_ITEM_FITTING
        && in_band (self->drag, hc_canvas_item_get_frame (item)->centre))
      g_strv_builder_add (builder, id);
  ids = g_strv_builder_end (builder);
  hc_document_select (hc_panel_get_document (HC_PANEL (self)), (const char *const *) ids);
}

static void
say_why_not (HcCanvas *self)
{
  g_autoptr (GError) error = NULL;
  g_autoptr (HcPlan) plan = HC_CANVAS_GET_CLASS (self)->get_drag_plan (self, self->drag, &error);

  if (plan == NULL)
    hc_panel_say (HC_PANEL (self), error->message);
}

static void
released (GtkGestureDrag *gesture, double by_x, double by_y, HcCanvas *self)
{
  HcCanvasClass *klass = HC_CANVAS_GET_CLASS (self);
  g_autoptr (HcDrag) drag = NULL;
  HcDocument *document = hc_panel_get_document (HC_PANEL (self));

  if (self->drag == NULL)
    return;
  if (self->drag->claimed)
    {
      if (self->drag->kind == HC_DRAG_BAND)
        choose_band (self);
      else if (self->drag->kind != HC_DRAG_PAN)
        say_why_not (self);
      if (hc_document_is_previewing (document))
        hc_document_commit_preview (document, klass->get_drag_label (self, self->drag));
    }
  drag = g_steal_pointer (&self->drag);
  klass->drag_ended (self, drag);
  gtk_widget_queue_draw (self->marks);
}

static void
cancelled (GtkGesture *gesture, GdkEventSequence *sequence, HcCanvas *self)
{
  hc_canvas_cancel_drag (self);
}

static void
panning_began (GtkGestureDrag *gesture, double x, double y, HcCanvas *self)
{
  g_clear_pointer (&self->drag, hc_drag_free);
  self->drag = hc_canvas_new_drag (self, NULL, hc_sight_to_mm (&self->sight, x, y));
  self->drag->kind = HC_DRAG_PAN;
}

static gboolean
scrolled (GtkEventControllerScroll *controller, double by_x, double by_y, HcCanvas *self)
{
  GdkModifierType state
      = gtk_event_controller_get_current_event_state (GTK_EVENT_CONTROLLER (controller));
  HcSight sight;

  if (state & GDK_CONTROL_MASK || !(state & GDK_SHIFT_MASK))
    sight = hc_sight_zoomed (&self->sight, by_y > 0 ? 1 / ZOOM_STEP : ZOOM_STEP, self->pointer_x,
                           self->pointer_y);
  else
    sight = hc_sight_panned (&self->sight, -(by_x + by_y) * PAN_STEP_PX, 0);
  hc_canvas_set_sight (self, &sight);
  return GDK_EVENT_STOP;
}

static void
pointer_moved (GtkEventControllerMotion *controller, double x, double y, HcCanvas *self)
{
  self->pointer_x = x;
  self->pointer_y = y;
}

static void
pinch_began (GtkGesture *gesture, GdkEventSequence *sequence, HcCanvas *self)
{
  self->pinch_from = self->sight;
}

static void
pinched (GtkGestureZoom *gesture, double factor, HcCanvas *self)
{
  double x, y;
  HcSight sight;

  if (!gtk_gesture_get_bounding_box_center (GTK_GESTURE (gesture), &x, &y))
    return;
  sight = hc_sight_zoomed (&self->pinch_from, factor, x, y);
  hc_canvas_set_sight (self, &sight);
}

static void
add_drag (HcCanvas *self, guint button, GCallback began)
{
  GtkGesture *drag = gtk_gesture_drag_new ();

  gtk_gesture_single_set_button (GTK_GESTURE_SINGLE (drag), button);
  g_signal_connect (drag, "drag-begin", began, self);
  g_signal_connect (drag, "drag-update", G_CALLBACK (moved), self);
  g_signal_connect (drag, "drag-end", G_CALLBACK (released), self);
  g_signal_connect (drag, "cancel", G_CALLBACK (cancelled), self);
  gtk_widget_add_controller (GTK_WIDGET (self), GTK_EVENT_CONTROLLER (drag));
}

/**
 * hc_canvas_add_gestures: (skip)
 * @self: a canvas
 */
void
hc_canvas_add_gestures (HcCanvas *self)
{
  GtkEventController *scroll
      = gtk_event_controller_scroll_new (GTK_EVENT_CONTROLLER_SCROLL_BOTH_AXES
                                         | GTK_EVENT_CONTROLLER_SCROLL_DISCRETE);
  GtkEventController *motion = gtk_event_controller_motion_new ();
  GtkGesture *zoom = gtk_gesture_zoom_new ();

  add_drag (self, GDK_BUTTON_PRIMARY, G_CALLBACK (pressed));
  add_drag (self, GDK_BUTTON_MIDDLE, G_CALLBACK (panning_began));
  g_signal_connect (scroll, "scroll", G_CALLBACK (scrolled), self);
  gtk_widget_add_controller (GTK_WIDGET (self), scroll);
  g_signal_connect (motion, "motion", G_CALLBACK (pointer_moved), self);
  gtk_widget_add_controller (GTK_WIDGET (self), motion);
  g_signal_connect (zoom, "begin", G_CALLBACK (pinch_began), self);
  g_signal_connect (zoom, "scale-changed", G_CALLBACK (pinched), self);
  gtk_widget_add_controller (GTK_WIDGET (self), GTK_EVENT_CONTROLLER (zoom));
}
