/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The picture of a thing to add: drawn as on the floor, as large as fits. */
#include "config.h"

#include "app/shelf/thing-picture.h"

#include "drawing/fitting-drawing.h"
#include "drawing/opening-drawing.h"

/* Wall to show an opening in. */
#define WALL_MM 100.0

struct _HcThingPicture
{
  HcPicture parent_instance;

  HcFitting *fitting;
  HcOpening *opening;
  HcPenKind pen;
};

G_DEFINE_FINAL_TYPE (HcThingPicture, hc_thing_picture, HC_TYPE_PICTURE)

static void
fit (HcInk *ink, double width, double height, double across_mm, double down_mm)
{
  ink->scale = MIN (width / across_mm, height / down_mm);
  cairo_scale (ink->cr, ink->scale, ink->scale);
}

/* Its leaf needs the room above the wall. */
static gboolean
opens_wide (const HcOpeningValues *values)
{
  return values->kind == HC_OPENING_KEEPER_DOOR || values->kind == HC_OPENING_EGG_DOOR;
}

static void
draw_opening (HcInk *ink, const HcOpeningValues *values, double width, double height)
{
  double wall = values->width_mm * 1.5;

  fit (ink, width, height, wall, opens_wide (values) ? values->width_mm * 1.2 : wall / 2);
  if (opens_wide (values))
    cairo_translate (ink->cr, 0, values->width_mm / 2);
  hc_ink_rectangle (ink, -wall / 2, -WALL_MM / 2, wall, WALL_MM);
  hc_ink_fill (ink, HC_PAINT_WALL);
  hc_draw_opening (ink, values, WALL_MM);
}

static void
draw_pen (HcInk *ink, HcPenKind kind, double width, double height)
{
  double w = width - 6, h = height - 6;

  hc_ink_rectangle (ink, -w / 2, -h / 2, w, h);
  hc_ink_fill (ink, kind == HC_PEN_RUN ? HC_PAINT_GRASS : HC_PAINT_EARTH);
  hc_ink_rectangle (ink, -w / 2, -h / 2, w, h);
  hc_ink_set (ink, kind == HC_PEN_RUN ? HC_PAINT_GRASS_DARK : HC_PAINT_WALL, 1);
  cairo_set_line_width (ink->cr, kind == HC_PEN_RUN ? 1.5 : 4);
  if (kind == HC_PEN_RUN)
    cairo_set_dash (ink->cr, (const double[]){ 3, 2 }, 2, 0);
  cairo_stroke (ink->cr);
  cairo_set_dash (ink->cr, NULL, 0, 0);
}

static void
hc_thing_picture_draw (HcPicture *picture, HcInk *ink, double width, double height)
{
  HcThingPicture *self = HC_THING_PICTURE (picture);

  if (self->fitting != NULL)
    {
      const HcFittingValues *values = hc_fitting_get (self->fitting);

      fit (ink, width, height, values->width_mm, values->depth_mm);
      hc_draw_fitting (ink, values);
    }
  else if (self->opening != NULL)
    draw_opening (ink, hc_opening_get (self->opening), width, height);
  else
    draw_pen (ink, self->pen, width, height);
}

void
hc_thing_picture_set_fitting (HcThingPicture *self, HcFitting *fitting)
{
  g_clear_pointer (&self->fitting, hc_fitting_unref);
  self->fitting = hc_fitting_ref (fitting);
  gtk_widget_queue_draw (GTK_WIDGET (self));
}

void
hc_thing_picture_set_opening (HcThingPicture *self, HcOpening *opening)
{
  g_clear_pointer (&self->opening, hc_opening_unref);
  self->opening = hc_opening_ref (opening);
  gtk_widget_queue_draw (GTK_WIDGET (self));
}

void
hc_thing_picture_set_pen (HcThingPicture *self, HcPenKind kind)
{
  self->pen = kind;
  gtk_widget_queue_draw (GTK_WIDGET (self));
}

/**
 * hc_fitting_paintable_new: (skip)
 * @fitting: a fitting
 * @scale: pixels for one millimetre
 *
 * Returns: (transfer full): what to carry under the pointer
 */
GdkPaintable *
hc_fitting_paintable_new (HcFitting *fitting, double scale)
{
  const HcFittingValues *values = hc_fitting_get (fitting);
  float width = (float) (values->width_mm * scale);
  float height = (float) (values->depth_mm * scale);
  GtkSnapshot *snapshot = gtk_snapshot_new ();
  HcInk ink = { 0 };

  ink.cr = gtk_snapshot_append_cairo (snapshot, &GRAPHENE_RECT_INIT (0, 0, width, height));
  ink.palette = hc_palette_of_screen ();
  ink.scale = scale;
  cairo_scale (ink.cr, scale, scale);
  cairo_translate (ink.cr, values->width_mm / 2, values->depth_mm / 2);
  hc_draw_fitting (&ink, values);
  cairo_destroy (ink.cr);
  return gtk_snapshot_free_to_paintable (snapshot, &GRAPHENE_SIZE_INIT (width, height));
}

static void
hc_thing_picture_finalize (GObject *object)
{
  HcThingPicture *self = HC_THING_PICTURE (object);

  g_clear_pointer (&self->fitting, hc_fitting_unref);
  g_clear_pointer (&self->opening, hc_opening_unref);
  G_OBJECT_CLASS (hc_thing_picture_parent_class)->finalize (object);
}

static void
hc_thing_picture_class_init (HcThingPictureClass *klass)
{
  G_OBJECT_CLASS (klass)->finalize = hc_thing_picture_finalize;
  HC_PICTURE_CLASS (klass)->draw = hc_thing_picture_draw;
}

static void
hc_thing_picture_init (HcThingPicture *self)
{
}
