/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * One sheet of the canvas. */
#include "config.h"

#include "app/canvas/canvas-sheet.h"

#include "app/canvas/canvas.h"

struct _HcCanvasSheet
{
  GtkWidget parent_instance;

  HcCanvasSheetDraw draw;
  HcCanvasSheetExtents extents;
  gpointer canvas;
};

G_DEFINE_FINAL_TYPE (HcCanvasSheet, hc_canvas_sheet, GTK_TYPE_WIDGET)

static void
hc_canvas_sheet_snapshot (GtkWidget *widget, GtkSnapshot *snapshot)
{
  HcCanvasSheet *self = HC_CANVAS_SHEET (widget);
  const HcSight *sight = hc_canvas_get_sight (self->canvas);
  graphene_rect_t bounds;
  HcInk ink = { 0 };

  graphene_rect_init (&bounds, 0, 0, (float) gtk_widget_get_width (widget),
                      (float) gtk_widget_get_height (widget));
  if (self->extents != NULL && !self->extents (self->canvas, &bounds))
    return;
  ink.cr = gtk_snapshot_append_cairo (snapshot, &bounds);
  cairo_translate (ink.cr, sight->x_px, sight->y_px);
  cairo_scale (ink.cr, sight->scale, sight->scale);
  ink.palette = hc_canvas_get_palette (self->canvas);
  ink.scale = sight->scale;
  self->draw (&ink, self->canvas);
  cairo_destroy (ink.cr);
}

static void
hc_canvas_sheet_class_init (HcCanvasSheetClass *klass)
{
  GTK_WIDGET_CLASS (klass)->snapshot = hc_canvas_sheet_snapshot;
  gtk_widget_class_set_accessible_role (GTK_WIDGET_CLASS (klass),
                                        GTK_ACCESSIBLE_ROLE_PRESENTATION);
}

static void
hc_canvas_sheet_init (HcCanvasSheet *self)
{
  gtk_widget_set_can_target (GTK_WIDGET (self), FALSE);
}

GtkWidget *
hc_canvas_sheet_new (HcCanvasSheetDraw draw, HcCanvasSheetExtents extents, gpointer canvas)
{
  HcCanvasSheet *self = g_object_new (HC_TYPE_CANVAS_SHEET, NULL);

  self->draw = draw;
  self->extents = extents;
  self->canvas = canvas;
  return GTK_WIDGET (self);
}
