/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Names of buttons without the underscore of their access key. */
#include "config.h"

#include "app/fields/plain-names.h"

/**
 * hc_name_plainly:
 * @widget: a widget, with all its children
 *
 * Buttons with an access key tell a screen reader both the label as it was
 * given, underscore and all, and what is read on them. Only the latter stays.
 */
void
hc_name_plainly (GtkWidget *widget)
{
  GtkWidget *child = gtk_widget_get_first_child (widget);

  if (GTK_IS_BUTTON (widget) && gtk_button_get_use_underline (GTK_BUTTON (widget)))
    gtk_accessible_reset_property (GTK_ACCESSIBLE (widget), GTK_ACCESSIBLE_PROPERTY_LABEL);
  for (; child != NULL; child = gtk_widget_get_next_sibling (child))
    hc_name_plainly (child);
}
