/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * One sheet of the floor. */
#include "config.h"

#include "app/floor/floor-sheet.h"

#include "app/floor/floor.h"

struct _HcFloorSheet
{
  GtkWidget parent_instance;

  HcFloorSheetDraw draw;
  HcFloorSheetExtents extents;
  gpointer floor;
};

G_DEFINE_FINAL_TYPE (HcFloorSheet, hc_floor_sheet, GTK_TYPE_WIDGET)

static void
hc_floor_sheet_snapshot (GtkWidget *widget, GtkSnapshot *snapshot)
{
  HcFloorSheet *self = HC_FLOOR_SHEET (widget);
  const HcSight *sight = hc_floor_get_sight (self->floor);
  graphene_rect_t bounds;
  HcInk ink = { 0 };

  graphene_rect_init (&bounds, 0, 0, (float) gtk_widget_get_width (widget),
                      (float) gtk_widget_get_height (widget));
  if (self->extents != NULL && !self->extents (self->floor, &bounds))
    return;
  ink.cr = gtk_snapshot_append_cairo (snapshot, &bounds);
  cairo_translate (ink.cr, sight->x_px, sight->y_px);
  cairo_scale (ink.cr, sight->scale, sight->scale);
  ink.palette = hc_floor_get_palette (self->floor);
  ink.scale = sight->scale;
  self->draw (&ink, self->floor);
  cairo_destroy (ink.cr);
}

static void
hc_floor_sheet_class_init (HcFloorSheetClass *klass)
{
  GTK_WIDGET_CLASS (klass)->snapshot = hc_floor_sheet_snapshot;
  gtk_widget_class_set_accessible_role (GTK_WIDGET_CLASS (klass),
                                        GTK_ACCESSIBLE_ROLE_PRESENTATION);
}

static void
hc_floor_sheet_init (HcFloorSheet *self)
{
  gtk_widget_set_can_target (GTK_WIDGET (self), FALSE);
}

GtkWidget *
hc_floor_sheet_new (HcFloorSheetDraw draw, HcFloorSheetExtents extents, gpointer floor)
{
  HcFloorSheet *self = g_object_new (HC_TYPE_FLOOR_SHEET, NULL);

  self->draw = draw;
  self->extents = extents;
  self->floor = floor;
  return GTK_WIDGET (self);
}
