/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A small drawing made with the colours of the floor. */
#pragma once

#include "drawing/ink.h"

#include <gtk/gtk.h>

G_BEGIN_DECLS

#define HC_TYPE_PICTURE (hc_picture_get_type ())
G_DECLARE_DERIVABLE_TYPE (HcPicture, hc_picture, HC, PICTURE, GtkWidget)

/**
 * HcPictureClass:
 * @draw: draws on ink whose user space is pixels, the origin in the middle
 */
struct _HcPictureClass
{
  GtkWidgetClass parent_class;

  void (*draw) (HcPicture *self, HcInk *ink, double width, double height);
};

const HcPalette *hc_palette_of_screen (void);

G_END_DECLS
