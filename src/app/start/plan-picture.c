/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A small picture of a plan's floor. */
#include "config.h"

#include "app/start/plan-picture.h"

#include "drawing/floor-drawing.h"

#include <adwaita.h>

#define MARGIN_PX 8.0

struct _HcPlanPicture
{
  GtkWidget parent_instance;

  HcPlan *plan;
};

G_DEFINE_FINAL_TYPE (HcPlanPicture, hc_plan_picture, GTK_TYPE_WIDGET)

/**
 * hc_plan_picture_set_plan:
 * @self: the picture
 * @plan: (nullable): what to show
 */
void
hc_plan_picture_set_plan (HcPlanPicture *self, HcPlan *plan)
{
  g_clear_pointer (&self->plan, hc_plan_unref);
  self->plan = plan != NULL ? hc_plan_ref (plan) : NULL;
  gtk_widget_queue_draw (GTK_WIDGET (self));
}

static void
hc_plan_picture_snapshot (GtkWidget *widget, GtkSnapshot *snapshot)
{
  HcPlanPicture *self = HC_PLAN_PICTURE (widget);
  gboolean dark = adw_style_manager_get_dark (adw_style_manager_get_default ());
  double width = gtk_widget_get_width (widget), height = gtk_widget_get_height (widget);
  HcInk ink = { 0 };
  HcBox box;

  if (self->plan == NULL)
    return;
  box = hc_floor_get_bounds (hc_plan_get_layout (self->plan));
  if (hc_box_is_empty (box))
    return;
  ink.scale = MIN ((width - 2 * MARGIN_PX) / box.width_mm, (height - 2 * MARGIN_PX) / box.depth_mm);
  ink.palette = hc_palette_get (dark ? HC_PALETTE_DARK : HC_PALETTE_LIGHT);
  ink.cr = gtk_snapshot_append_cairo (
      snapshot, &GRAPHENE_RECT_INIT (0, 0, (float) width, (float) height));
  cairo_translate (ink.cr, width / 2, height / 2);
  cairo_scale (ink.cr, ink.scale, ink.scale);
  cairo_translate (ink.cr, -hc_box_centre (box).x_mm, -hc_box_centre (box).y_mm);
  hc_draw_floor (&ink, self->plan, NULL, 0);
  cairo_destroy (ink.cr);
}

static void
hc_plan_picture_finalize (GObject *object)
{
  g_clear_pointer (&HC_PLAN_PICTURE (object)->plan, hc_plan_unref);
  G_OBJECT_CLASS (hc_plan_picture_parent_class)->finalize (object);
}

static void
hc_plan_picture_class_init (HcPlanPictureClass *klass)
{
  G_OBJECT_CLASS (klass)->finalize = hc_plan_picture_finalize;
  GTK_WIDGET_CLASS (klass)->snapshot = hc_plan_picture_snapshot;
  gtk_widget_class_set_accessible_role (GTK_WIDGET_CLASS (klass),
                                        GTK_ACCESSIBLE_ROLE_PRESENTATION);
}

static void
hc_plan_picture_init (HcPlanPicture *self)
{
}
