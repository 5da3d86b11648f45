/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A small drawing made with the colours of the floor. */
#include "config.h"

#include "app/fields/picture.h"

#include <adwaita.h>

G_DEFINE_ABSTRACT_TYPE (HcPicture, hc_picture, GTK_TYPE_WIDGET)

/**
 * hc_palette_of_screen: (skip)
 *
 * Returns: the colours that go with the light or dark style of the desktop
 */
const HcPalette *
hc_palette_of_screen (void)
{
  gboolean dark = adw_style_manager_get_dark (adw_style_manager_get_default ());

  return hc_palette_get (dark ? HC_PALETTE_DARK : HC_PALETTE_LIGHT);
}

static void
hc_picture_snapshot (GtkWidget *widget, GtkSnapshot *snapshot)
{
  double width = gtk_widget_get_width (widget);
  double height = gtk_widget_get_height (widget);
  graphene_rect_t bounds = GRAPHENE_RECT_INIT (0, 0, (float) width, (float) height);
  HcInk ink = { 0 };

  ink.cr = gtk_snapshot_append_cairo (snapshot, &bounds);
  ink.palette = hc_palette_of_screen ();
  ink.scale = 1;
  cairo_translate (ink.cr, width / 2, height / 2);
  HC_PICTURE_GET_CLASS (widget)->draw (HC_PICTURE (widget), &ink, width, height);
  cairo_destroy (ink.cr);
}

static void
hc_picture_class_init (HcPictureClass *klass)
{
  GTK_WIDGET_CLASS (klass)->snapshot = hc_picture_snapshot;
  gtk_widget_class_set_accessible_role (GTK_WIDGET_CLASS (klass),
                                        GTK_ACCESSIBLE_ROLE_PRESENTATION);
}

static void
hc_picture_init (HcPicture *self)
{
  g_signal_connect_object (adw_style_manager_get_default (), "notify::dark",
                           G_CALLBACK (gtk_widget_queue_draw), self, G_CONNECT_SWAPPED);
}
