/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Keys of every canvas: going from thing to thing, choosing, nudging, giving up. */
#include "config.h"

#include "app/canvas/canvas.h"

#define STEP_MM 10.0
#define BIG_STEP_MM 100.0
#define FINE_STEP_MM 1.0
#define PAN_STEP_PX 40.0

/**
 * hc_canvas_look_further: (skip)
 * @self: a canvas
 * @by: the step of an arrow key
 *
 * With nothing chosen, the arrows look further that way.
 */
void
hc_canvas_look_further (HcCanvas *self, HcPoint by)
{
  double step_px = PAN_STEP_PX / STEP_MM;
  HcSight sight = hc_sight_panned (&self->sight, -by.x_mm * step_px, -by.y_mm * step_px);

  hc_canvas_set_sight (self, &sight);
}

static HcCanvasItem *
focused_item (GtkWidget *widget)
{
  GtkWidget *focus = gtk_root_get_focus (gtk_widget_get_root (widget));

  return HC_IS_CANVAS_ITEM (focus) ? HC_CANVAS_ITEM (focus) : NULL;
}

static gboolean
nudge (GtkWidget *widget, GVariant *args, gpointer data)
{
  HcCanvas *self = HC_CANVAS (widget);
  HcCanvasItem *item = focused_item (widget);
  HcPoint by;

  g_variant_get (args, "(dd)", &by.x_mm, &by.y_mm);
  if (item != NULL && hc_canvas_item_get_kind (item) == HC_ITEM_HANDLE)
    hc_canvas_nudge_item (self, item, by);
  else if (*hc_canvas_get_selection (self) == NULL)
    hc_canvas_look_further (self, by);
  else
    HC_CANVAS_GET_CLASS (self)->nudge (self, item, by);
  return TRUE;
}

/* The focus goes on by itself; what is chosen stays chosen. */
static void
walk (GtkWidget *widget, const char *name, GVariant *parameter)
{
  HcCanvas *self = HC_CANVAS (widget);
  gboolean forward = g_variant_get_int32 (parameter) > 0;

  self->walking = TRUE;
  hc_canvas_focus (widget, forward ? GTK_DIR_TAB_FORWARD : GTK_DIR_TAB_BACKWARD);
  self->walking = FALSE;
}

/* What has the focus joins what is chosen, or leaves it. */
static void
choose_too (GtkWidget *widget, const char *name, GVariant *parameter)
{
  HcCanvasItem *item = focused_item (widget);

  if (item != NULL && hc_canvas_item_get_kind (item) != HC_ITEM_HANDLE)
    hc_canvas_choose (HC_CANVAS (widget), item, TRUE);
}

static void
select_all (GtkWidget *widget, const char *name, GVariant *parameter)
{
  HcCanvas *self = HC_CANVAS (widget);
  g_autoptr (GStrvBuilder) builder = g_strv_builder_new ();
  g_auto (GStrv) ids = NULL;
  GHashTableIter at;
  gpointer id, item;

  g_hash_table_iter_init (&at, self->items);
  while (g_hash_table_iter_next (&at, &id, &item))
    if (hc_canvas_item_get_kind (item) == HC_ITEM_FITTING)
      g_strv_builder_add (builder, id);
  ids = g_strv_builder_end (builder);
  hc_document_select (hc_panel_get_document (HC_PANEL (self)), (const char *const *) ids);
}

/* Ends what is going on: a drag, something of the canvas's own, the selection. */
static void
give_up (GtkWidget *widget, const char *name, GVariant *parameter)
{
  static const char *const none[] = { NULL };
  HcCanvas *self = HC_CANVAS (widget);

  if (self->drag != NULL)
    hc_canvas_cancel_drag (self);
  else if (!HC_CANVAS_GET_CLASS (self)->stop (self))
    {
      gtk_widget_grab_focus (widget);
      hc_document_select (hc_panel_get_document (HC_PANEL (self)), none);
    }
}

static void
bind_arrow (GtkWidgetClass *klass, guint key, guint keypad_key, double x, double y)
{
  static const struct
  {
    GdkModifierType modifiers;
    double step_mm;
  } steps[] = {
    { 0, STEP_MM },
    { GDK_SHIFT_MASK, BIG_STEP_MM },
    { GDK_ALT_MASK, FINE_STEP_MM },
  };

  for (guint i = 0; i < G_N_ELEMENTS (steps); i++)
    {
      gtk_widget_class_add_binding (klass, key, steps[i].modifiers, nudge, "(dd)",
                                    x * steps[i].step_mm, y * steps[i].step_mm);
      gtk_widget_class_add_binding (klass, keypad_key, steps[i].modifiers, nudge, "(dd)",
                                    x * steps[i].step_mm, y * steps[i].step_mm);
    }
}

/**
 * hc_canvas_class_add_actions: (skip)
 * @klass: the class of canvases
 */
void
hc_canvas_class_add_actions (GtkWidgetClass *klass)
{
  gtk_widget_class_install_action (klass, "canvas.select-all", NULL, select_all);
  gtk_widget_class_install_action (klass, "canvas.walk", "i", walk);
  gtk_widget_class_install_action (klass, "canvas.choose-too", NULL, choose_too);
  gtk_widget_class_install_action (klass, "canvas.give-up", NULL, give_up);

  gtk_widget_class_add_binding_action (klass, GDK_KEY_a, GDK_CONTROL_MASK, "canvas.select-all",
                                       NULL);
  gtk_widget_class_add_binding_action (klass, GDK_KEY_Tab, GDK_CONTROL_MASK, "canvas.walk", "i",
                                       1);
  gtk_widget_class_add_binding_action (klass, GDK_KEY_ISO_Left_Tab,
                                       GDK_CONTROL_MASK | GDK_SHIFT_MASK, "canvas.walk", "i",
                                       -1);
  gtk_widget_class_add_binding_action (klass, GDK_KEY_space, GDK_CONTROL_MASK,
                                       "canvas.choose-too", NULL);
  gtk_widget_class_add_binding_action (klass, GDK_KEY_Escape, 0, "canvas.give-up", NULL);
  bind_arrow (klass, GDK_KEY_Left, GDK_KEY_KP_Left, -1, 0);
  bind_arrow (klass, GDK_KEY_Right, GDK_KEY_KP_Right, 1, 0);
  bind_arrow (klass, GDK_KEY_Up, GDK_KEY_KP_Up, 0, -1);
  bind_arrow (klass, GDK_KEY_Down, GDK_KEY_KP_Down, 0, 1);
}
