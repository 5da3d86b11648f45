/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The house from the side with the air of a night in it: the house is drawn once, the
 * air whenever it changes. */
#include "config.h"

#include "app/weather/air-picture.h"

#include "drawing/side-air.h"
#include "drawing/side-drawing.h"

#define LEAST_HIGH_PX 220
#define USUAL_HIGH_PX 320
#define CORNER_PX 9

struct _HcAirPicture
{
  HcPicture parent_instance;

  HcCheck *check;
  HcHouseNight *night;
  guint space;
  HcSideCut cut;
  gboolean has_cut;
  cairo_surface_t *house;
  const HcPalette *house_palette;
  double house_width, house_height;
};

G_DEFINE_FINAL_TYPE (HcAirPicture, hc_air_picture, HC_TYPE_PICTURE)

static void
forget_house (HcAirPicture *self)
{
  g_clear_pointer (&self->house, cairo_surface_destroy);
}

/**
 * hc_air_picture_show_house: (skip)
 * @self: the picture
 * @check: a plan judged by night
 * @night: (transfer none): its night, which must stay until another is shown
 * @space: the space that is looked at
 */
void
hc_air_picture_show_house (HcAirPicture *self, HcCheck *check, HcHouseNight *night,
                          guint space)
{
  HcCheck *before = self->check;

  self->check = hc_check_ref (check);
  g_clear_pointer (&before, hc_check_unref);
  self->night = night;
  self->space = space;
  self->has_cut = hc_side_air_find_cut (night, space, &self->cut);
  forget_house (self);
  gtk_widget_queue_draw (GTK_WIDGET (self));
}

/**
 * hc_air_picture_show_air: (skip)
 * @self: the picture, whose night has changed
 */
void
hc_air_picture_show_air (HcAirPicture *self)
{
  gtk_widget_queue_draw (GTK_WIDGET (self));
}

static HcBox
get_box (const HcAirPicture *self)
{
  return hc_side_air_get_bounds (self->night, &self->cut, self->space);
}

/* Puts @ink into millimetres of the house. */
static void
enter_house (HcInk *ink, HcBox box, double width, double height)
{
  ink->scale = MIN (width / box.width_mm, height / box.depth_mm);
  cairo_scale (ink->cr, ink->scale, ink->scale);
  cairo_translate (ink->cr, -hc_box_centre (box).x_mm, -hc_box_centre (box).y_mm);
}

static void
draw_house (HcAirPicture *self, const HcInk *onto, double width, double height)
{
  int factor = gtk_widget_get_scale_factor (GTK_WIDGET (self));
  HcInk ink = *onto;
  g_autoptr (HcSideScene) scene
      = hc_side_scene_new (hc_check_get_house (self->check), NULL, &self->cut);

  self->house = cairo_image_surface_create (CAIRO_FORMAT_ARGB32, (int) (width * factor),
                                            (int) (height * factor));
  self->house_palette = onto->palette;
  self->house_width = width;
  self->house_height = height;
  cairo_surface_set_device_scale (self->house, factor, factor);
  ink.cr = cairo_create (self->house);
  ink.scale = 1;
  hc_ink_rounded (&ink, 0, 0, width, height, CORNER_PX);
  hc_ink_fill (&ink, HC_PAINT_PAPER);
  cairo_translate (ink.cr, width / 2, height / 2);
  enter_house (&ink, get_box (self), width, height);
  hc_draw_side (&ink, self->check, scene);
  cairo_destroy (ink.cr);
}

static void
hc_air_picture_draw (HcPicture *picture, HcInk *ink, double width, double height)
{
  HcAirPicture *self = HC_AIR_PICTURE (picture);

  if (self->check == NULL || !self->has_cut || width < 1 || height < 1)
    return;
  if (self->house_palette != ink->palette || self->house_width != width
      || self->house_height != height)
    forget_house (self);
  if (self->house == NULL)
    draw_house (self, ink, width, height);
  cairo_set_source_surface (ink->cr, self->house, -width / 2, -height / 2);
  cairo_paint (ink->cr);
  enter_house (ink, get_box (self), width, height);
  hc_draw_side_air (ink, self->night, &self->cut, self->space);
}

static void
hc_air_picture_measure (GtkWidget *widget, GtkOrientation orientation, int for_size, int *least,
                        int *usual, int *least_baseline, int *usual_baseline)
{
  *least = orientation == GTK_ORIENTATION_VERTICAL ? LEAST_HIGH_PX : 0;
  *usual = orientation == GTK_ORIENTATION_VERTICAL ? USUAL_HIGH_PX : 0;
}

static void
hc_air_picture_finalize (GObject *object)
{
  HcAirPicture *self = HC_AIR_PICTURE (object);

  forget_house (self);
  g_clear_pointer (&self->check, hc_check_unref);
  G_OBJECT_CLASS (hc_air_picture_parent_class)->finalize (object);
}

static void
hc_air_picture_class_init (HcAirPictureClass *klass)
{
  G_OBJECT_CLASS (klass)->finalize = hc_air_picture_finalize;
  GTK_WIDGET_CLASS (klass)->measure = hc_air_picture_measure;
  HC_PICTURE_CLASS (klass)->draw = hc_air_picture_draw;
  gtk_widget_class_set_accessible_role (GTK_WIDGET_CLASS (klass), GTK_ACCESSIBLE_ROLE_IMG);
}

static void
hc_air_picture_init (HcAirPicture *self)
{
}
