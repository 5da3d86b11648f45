/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The floor with its zoom buttons and the properties of what is selected. */
#include "config.h"

#include "app/floor/floor-view.h"

#include "app/canvas/zoom-buttons.h"
#include "app/fields/hand-on-focus.h"

#define ZOOM_STEP 1.25

struct _HcFloorView
{
  HcPanel parent_instance;

  HcFloor *floor;
};

G_DEFINE_FINAL_TYPE (HcFloorView, hc_floor_view, HC_TYPE_PANEL)

/**
 * hc_floor_view_get_floor:
 * @self: the view
 *
 * Returns: (transfer none): the floor in it
 */
HcFloor *
hc_floor_view_get_floor (HcFloorView *self)
{
  g_return_val_if_fail (HC_IS_FLOOR_VIEW (self), NULL);
  return self->floor;
}

static void
zoom_in (GtkWidget *widget, const char *name, GVariant *parameter)
{
  hc_canvas_zoom (HC_CANVAS (HC_FLOOR_VIEW (widget)->floor), ZOOM_STEP);
}

static void
zoom_out (GtkWidget *widget, const char *name, GVariant *parameter)
{
  hc_canvas_zoom (HC_CANVAS (HC_FLOOR_VIEW (widget)->floor), 1 / ZOOM_STEP);
}

static void
zoom_fit (GtkWidget *widget, const char *name, GVariant *parameter)
{
  hc_canvas_fit (HC_CANVAS (HC_FLOOR_VIEW (widget)->floor));
}

/* Buttons elsewhere act on what is selected on the floor. */
static void
act_on_floor (GtkWidget *widget, const char *name, GVariant *parameter)
{
  g_autofree char *action = g_strconcat ("floor.", name + strlen ("view."), NULL);

  gtk_widget_activate_action (GTK_WIDGET (HC_FLOOR_VIEW (widget)->floor), action, NULL);
}

static gboolean
hc_floor_view_grab_focus (GtkWidget *widget)
{
  return hc_hand_on_focus (widget, GTK_WIDGET (HC_FLOOR_VIEW (widget)->floor));
}

static void
hc_floor_view_class_init (HcFloorViewClass *klass)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  g_type_ensure (HC_TYPE_FLOOR);
  g_type_ensure (HC_TYPE_ZOOM_BUTTONS);
  widget_class->grab_focus = hc_floor_view_grab_focus;
  gtk_widget_class_install_action (widget_class, "view.zoom-in", NULL, zoom_in);
  gtk_widget_class_install_action (widget_class, "view.zoom-out", NULL, zoom_out);
  gtk_widget_class_install_action (widget_class, "view.zoom-fit", NULL, zoom_fit);
  gtk_widget_class_install_action (widget_class, "view.duplicate", NULL, act_on_floor);
  gtk_widget_class_install_action (widget_class, "view.remove", NULL, act_on_floor);
  gtk_widget_class_set_template_from_resource (widget_class, "/org/hencote/Hencote/floor-view.ui");
  gtk_widget_class_bind_template_child (widget_class, HcFloorView, floor);
}

static void
hc_floor_view_init (HcFloorView *self)
{
  gtk_widget_init_template (GTK_WIDGET (self));
}
