/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Buttons that look closer, farther, and at the whole. */
#include "config.h"

#include "app/canvas/zoom-buttons.h"

struct _HcZoomButtons
{
  AdwBin parent_instance;
};

G_DEFINE_FINAL_TYPE (HcZoomButtons, hc_zoom_buttons, ADW_TYPE_BIN)

static void
hc_zoom_buttons_class_init (HcZoomButtonsClass *klass)
{
  gtk_widget_class_set_template_from_resource (GTK_WIDGET_CLASS (klass),
                                               "/org/hencote/Hencote/zoom-buttons.ui");
}

static void
hc_zoom_buttons_init (HcZoomButtons *self)
{
  gtk_widget_init_template (GTK_WIDGET (self));
}
