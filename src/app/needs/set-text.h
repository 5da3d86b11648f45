/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Labels that touch the screen only when their text changes. */
#pragma once

#include <gtk/gtk.h>

G_BEGIN_DECLS

/* Hides the label while there is no text. */
static inline void
hc_set_text (GtkLabel *label, const char *text)
{
  gboolean any = text != NULL && *text != '\0';

  if (any && !g_str_equal (gtk_label_get_text (label), text))
    gtk_label_set_text (label, text);
  gtk_widget_set_visible (GTK_WIDGET (label), any);
}

G_END_DECLS
