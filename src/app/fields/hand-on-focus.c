/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Widgets that hand the focus on to the one among their children that takes keys. */
#include "config.h"

#include "app/fields/hand-on-focus.h"

static gboolean
holds_focus (GtkWidget *widget)
{
  GtkWidget *focus = gtk_root_get_focus (gtk_widget_get_root (widget));

  return focus != NULL && gtk_widget_is_ancestor (focus, widget);
}

/**
 * hc_hand_on_focus: (skip)
 * @widget: what is to take the focus, in a root
 * @child: the one in it that takes keys
 *
 * For the `grab_focus` of a widget. When the focus leaves the children backwards
 * the toolkit asks their parent to take it; handed on again, Shift+Tab would
 * never get out.
 *
 * Returns: whether the focus went to @child
 */
gboolean
hc_hand_on_focus (GtkWidget *widget, GtkWidget *child)
{
  return !holds_focus (widget) && gtk_widget_grab_focus (child);
}
