/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Buttons that show a value and open a choice: what a screen reader says. */
#include "config.h"

#include "app/fields/value-button.h"

#include <glib/gi18n.h>

/**
 * hc_name_value_button:
 * @widget: a menu button
 * @what: (nullable): what it sets, such as "Breed"
 * @value: (nullable): what is set
 *
 * The focus goes to the button inside, which by itself has no name, or only
 * that of its value.
 */
void
hc_name_value_button (GtkWidget *widget, const char *what, const char *value)
{
  GtkWidget *button = gtk_widget_get_first_child (widget);
  g_autofree char *name = NULL;

  if (what == NULL)
    return;
  /* Translators: what a field sets and its value, such as "Breed: Orpington" */
  name = value != NULL ? g_strdup_printf (_("%s: %s"), what, value) : g_strdup (what);
  gtk_accessible_reset_relation (GTK_ACCESSIBLE (button), GTK_ACCESSIBLE_RELATION_LABELLED_BY);
  gtk_accessible_update_property (GTK_ACCESSIBLE (button), GTK_ACCESSIBLE_PROPERTY_LABEL, name,
                                  -1);
}
