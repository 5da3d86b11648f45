/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The way of the Tab key over a canvas: handles come after what they belong to. */
#include "config.h"

#include "app/canvas/canvas.h"

static void
add_handles (HcCanvas *self, GPtrArray *stops)
{
  for (guint i = 0; i < self->handles->len; i++)
    if (gtk_widget_get_child_visible (self->handles->pdata[i]))
      g_ptr_array_add (stops, self->handles->pdata[i]);
}

static GPtrArray *
list_stops (HcCanvas *self)
{
  GPtrArray *stops = g_ptr_array_new ();
  GtkWidget *child = gtk_widget_get_first_child (GTK_WIDGET (self));

  g_ptr_array_add (stops, self);
  for (; child != NULL; child = gtk_widget_get_next_sibling (child))
    {
      HcCanvasItem *item = HC_IS_CANVAS_ITEM (child) ? HC_CANVAS_ITEM (child) : NULL;

      if (item == NULL || hc_canvas_item_get_kind (item) == HC_ITEM_HANDLE)
        continue;
      g_ptr_array_add (stops, item);
      if (!self->walking && g_strcmp0 (hc_canvas_item_get_id (item), self->handled) == 0)
        add_handles (self, stops);
    }
  return stops;
}

/**
 * hc_canvas_focus: (skip)
 * @widget: a canvas
 * @direction: where the focus is to go
 *
 * Walking goes round: only the Tab key alone leads away.
 *
 * Returns: whether it stays on it
 */
gboolean
hc_canvas_focus (GtkWidget *widget, GtkDirectionType direction)
{
  g_autoptr (GPtrArray) stops = list_stops (HC_CANVAS (widget));
  gboolean forward = direction == GTK_DIR_TAB_FORWARD;
  gboolean round = HC_CANVAS (widget)->walking;
  guint at, last = stops->len - 1;

  if (!forward && direction != GTK_DIR_TAB_BACKWARD)
    return FALSE;
  if (!g_ptr_array_find (stops, gtk_root_get_focus (gtk_widget_get_root (widget)), &at))
    return gtk_widget_grab_focus (stops->pdata[forward ? 0 : last]);
  if (at == (forward ? last : 0) && !round)
    return FALSE;
  return gtk_widget_grab_focus (stops->pdata[(at + (forward ? 1 : last)) % stops->len]);
}
