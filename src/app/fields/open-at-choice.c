/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Lists to choose from that open where the choice stands. */
#include "config.h"

#include "app/fields/open-at-choice.h"

static GtkWidget *
find_within (GtkWidget *widget, GType type)
{
  GtkWidget *found = NULL;

  if (g_type_is_a (G_OBJECT_TYPE (widget), type))
    return widget;
  for (GtkWidget *child = gtk_widget_get_first_child (widget); child != NULL && found == NULL;
       child = gtk_widget_get_next_sibling (child))
    found = find_within (child, type);
  return found;
}

static void
go_to_choice (GtkWidget *popover, GtkDropDown *drop_down)
{
  guint selected = gtk_drop_down_get_selected (drop_down);
  GtkWidget *list = find_within (popover, GTK_TYPE_LIST_VIEW);

  if (list == NULL || selected == GTK_INVALID_LIST_POSITION)
    return;
  gtk_widget_activate_action (list, "list.scroll-to-item", "u", selected);
  if (!gtk_drop_down_get_enable_search (drop_down))
    gtk_widget_grab_focus (list);
}

/**
 * hc_open_at_choice: (skip)
 * @drop_down: a list to choose from
 *
 * Has it open with what is chosen in sight and under the arrow keys; of itself
 * it opens at its first entry.
 */
void
hc_open_at_choice (GtkDropDown *drop_down)
{
  GtkWidget *popover = find_within (GTK_WIDGET (drop_down), GTK_TYPE_POPOVER);

  if (popover != NULL)
    g_signal_connect_object (popover, "show", G_CALLBACK (go_to_choice), drop_down, 0);
}
