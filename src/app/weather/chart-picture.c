/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The chart of nights on the screen. */
#include "config.h"

#include "app/weather/chart-picture.h"

#define HIGH_PX 280

struct _HcChartPicture
{
  HcPicture parent_instance;

  HcAirChart chart;
};

G_DEFINE_FINAL_TYPE (HcChartPicture, hc_chart_picture, HC_TYPE_PICTURE)

/**
 * hc_chart_picture_show: (skip)
 * @self: the picture
 * @chart: what to show; its points are held
 */
void
hc_chart_picture_show (HcChartPicture *self, const HcAirChart *chart)
{
  const GArray *before = self->chart.points;

  self->chart = *chart;
  self->chart.points = g_array_ref ((GArray *) chart->points);
  if (before != NULL)
    g_array_unref ((GArray *) before);
  gtk_widget_queue_draw (GTK_WIDGET (self));
}

/**
 * hc_chart_picture_mark: (skip)
 * @self: the picture
 * @open: how far the vents stand open now, 0 to 1
 */
void
hc_chart_picture_mark (HcChartPicture *self, double open)
{
  if (self->chart.now_open == open)
    return;
  self->chart.now_open = open;
  gtk_widget_queue_draw (GTK_WIDGET (self));
}

static void
hc_chart_picture_draw (HcPicture *picture, HcInk *ink, double width, double height)
{
  HcChartPicture *self = HC_CHART_PICTURE (picture);

  if (self->chart.points == NULL)
    return;
  cairo_translate (ink->cr, -width / 2, -height / 2);
  hc_draw_air_chart (ink, &self->chart, width, height);
}

static void
hc_chart_picture_measure (GtkWidget *widget, GtkOrientation orientation, int for_size,
                          int *least, int *usual, int *least_baseline, int *usual_baseline)
{
  *least = *usual = orientation == GTK_ORIENTATION_VERTICAL ? HIGH_PX : 0;
}

static void
hc_chart_picture_finalize (GObject *object)
{
  HcChartPicture *self = HC_CHART_PICTURE (object);

  if (self->chart.points != NULL)
    g_array_unref ((GArray *) self->chart.points);
  G_OBJECT_CLASS (hc_chart_picture_parent_class)->finalize (object);
}

static void
hc_chart_picture_class_init (HcChartPictureClass *klass)
{
  G_OBJECT_CLASS (klass)->finalize = hc_chart_picture_finalize;
  GTK_WIDGET_CLASS (klass)->measure = hc_chart_picture_measure;
  HC_PICTURE_CLASS (klass)->draw = hc_chart_picture_draw;
  gtk_widget_class_set_accessible_role (GTK_WIDGET_CLASS (klass), GTK_ACCESSIBLE_ROLE_IMG);
}

static void
hc_chart_picture_init (HcChartPicture *self)
{
}
