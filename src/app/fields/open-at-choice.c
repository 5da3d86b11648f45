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

static GtkWidget *
find_row (GtkWidget *list, guint position)
{
  GtkWidget *row = gtk_widget_get_first_child (list);

  while (row != NULL && position-- > 0)
    row = gtk_widget_get_next_sibling (row);
  return row;
}

/* What is typed into a list to search in goes to its search entry. */
static void
go_to_entry (GtkDropDown *drop_down, GtkWidget *popover, GtkWidget *list)
{
  guint selected = gtk_drop_down_get_selected (drop_down);
  gboolean search = gtk_drop_down_get_enable_search (drop_down);
  GtkWidget *focus = search ? find_within (popover, GTK_TYPE_SEARCH_ENTRY) : NULL;

  if (selected != GTK_INVALID_LIST_POSITION)
    {
      gtk_widget_activate_action (list, "list.scroll-to-item", "u", selected);
      if (!search)
        focus = find_row (list, selected);
    }
  if (focus != NULL)
    gtk_widget_grab_focus (focus);
}

/* A list that is not laid out yet cannot be scrolled. */
static gboolean
go_when_laid_out (GtkWidget *drop_down, GdkFrameClock *clock, gpointer data)
{
  GtkWidget *popover = find_within (drop_down, GTK_TYPE_POPOVER);
  GtkWidget *list = find_within (popover, GTK_TYPE_LIST_VIEW);

  if (list == NULL || !gtk_widget_get_mapped (list))
    return G_SOURCE_REMOVE;
  if (gtk_widget_get_height (list) == 0)
    return G_SOURCE_CONTINUE;
  go_to_entry (GTK_DROP_DOWN (drop_down), popover, list);
  return G_SOURCE_REMOVE;
}

static void
opened (GtkWidget *drop_down)
{
  gtk_widget_add_tick_callback (drop_down, go_when_laid_out, NULL, NULL);
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
    g_signal_connect_object (popover, "show", G_CALLBACK (opened), drop_down, G_CONNECT_SWAPPED);
}
