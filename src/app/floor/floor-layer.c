/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * One layer of the floor. */
#include "config.h"

#include "app/floor/floor-layer.h"

#include "app/floor/floor.h"

struct _HcFloorLayer
{
  GtkWidget parent_instance;

  HcFloorLayerDraw draw;
  gpointer floor;
};

G_DEFINE_FINAL_TYPE (HcFloorLayer, hc_floor_layer, GTK_TYPE_WIDGET)

static void
hc_floor_layer_snapshot (GtkWidget *widget, GtkSnapshot *snapshot)
{
  HcFloorLayer *self = HC_FLOOR_LAYER (widget);
  const HcView *view = hc_floor_get_view (self->floor);
  graphene_rect_t bounds;
  HcInk ink = { 0 };

  graphene_rect_init (&bounds, 0, 0, (float) gtk_widget_get_width (widget),
                      (float) gtk_widget_get_height (widget));
  ink.cr = gtk_snapshot_append_cairo (snapshot, &bounds);
  cairo_translate (ink.cr, view->x_px, view->y_px);
  cairo_scale (ink.cr, view->scale, view->scale);
  ink.palette = hc_floor_get_palette (self->floor);
  ink.scale = view->scale;
  self->draw (&ink, self->floor);
  cairo_destroy (ink.cr);
}

static void
hc_floor_layer_class_init (HcFloorLayerClass *klass)
{
  GTK_WIDGET_CLASS (klass)->snapshot = hc_floor_layer_snapshot;
  gtk_widget_class_set_accessible_role (GTK_WIDGET_CLASS (klass),
                                        GTK_ACCESSIBLE_ROLE_PRESENTATION);
}

static void
hc_floor_layer_init (HcFloorLayer *self)
{
  gtk_widget_set_can_target (GTK_WIDGET (self), FALSE);
}

GtkWidget *
hc_floor_layer_new (HcFloorLayerDraw draw, gpointer floor)
{
  HcFloorLayer *self = g_object_new (HC_TYPE_FLOOR_LAYER, NULL);

  self->draw = draw;
  self->floor = floor;
  return GTK_WIDGET (self);
}
