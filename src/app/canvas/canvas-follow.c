/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Bringing the children of a canvas in step with plan, check and selection. */
#include "config.h"

#include "app/canvas/canvas.h"

#include "words/house-words.h"
#include "words/words.h"

/* Lower storeys first: what is nearer to the eye hides what is below. */
static void
put_in_storey (HcCanvas *self, HcCanvasItem *item, guint storey)
{
  GtkWidget *below = gtk_widget_get_prev_sibling (self->over);

  while (below != self->ground && hc_canvas_item_get_number (HC_CANVAS_ITEM (below)) > storey)
    below = gtk_widget_get_prev_sibling (below);
  hc_canvas_item_set_number (item, storey);
  gtk_widget_insert_after (GTK_WIDGET (item), GTK_WIDGET (self), below);
}

/**
 * hc_canvas_item_for: (skip)
 * @self: a canvas
 * @kind: what sort of thing
 * @part: the part of the plan
 * @draw: draws it
 * @storey: how high it lies
 *
 * Returns: (transfer none): its child, made if there was none
 */
HcCanvasItem *
hc_canvas_item_for (HcCanvas *self, HcItemKind kind, gpointer part, HcItemDraw draw,
                    guint storey)
{
  const char *id = hc_part_get_id (part);
  HcCanvasItem *item = g_hash_table_lookup (self->items, id);

  if (item == NULL)
    {
      item = hc_canvas_item_new (kind, id, draw, self);
      put_in_storey (self, item, storey);
      g_hash_table_insert (self->items, (gpointer) hc_canvas_item_get_id (item), item);
    }
  return item;
}

/**
 * hc_canvas_add_handle: (skip)
 * @self: a canvas
 * @id: id of what it moves
 * @role: what of it
 * @draw: draws it
 *
 * Returns: (transfer none): a handle, which has yet to be told what it is
 */
HcCanvasItem *
hc_canvas_add_handle (HcCanvas *self, const char *id, guint role, HcItemDraw draw)
{
  HcCanvasItem *handle = hc_canvas_item_new (HC_ITEM_HANDLE, id, draw, self);

  hc_canvas_item_set_number (handle, role);
  gtk_widget_insert_before (GTK_WIDGET (handle), GTK_WIDGET (self), NULL);
  g_ptr_array_add (self->handles, handle);
  return handle;
}

void
hc_canvas_remove_handles (HcCanvas *self)
{
  for (guint i = 0; i < self->handles->len; i++)
    hc_canvas_take_away (self, self->handles->pdata[i]);
  g_ptr_array_set_size (self->handles, 0);
}

/**
 * hc_canvas_move_handles: (skip)
 * @self: a canvas
 *
 * Moves every handle to where the plan has what it moves.
 */
void
hc_canvas_move_handles (HcCanvas *self)
{
  for (guint i = 0; i < self->handles->len; i++)
    {
      HcCanvasItem *handle = self->handles->pdata[i];
      HcItemFrame frame;
      gboolean there = HC_CANVAS_GET_CLASS (self)->find_handle (self, handle, &frame);

      gtk_widget_set_child_visible (GTK_WIDGET (handle), there);
      if (there)
        hc_canvas_item_move (handle, &frame);
    }
}

/**
 * hc_canvas_follow_handles: (skip)
 * @self: a canvas
 *
 * Brings the handles in step with plan and selection at once: the next key
 * nudges them from where they are, and may come before the canvas is laid out.
 */
void
hc_canvas_follow_handles (HcCanvas *self)
{
  HC_CANVAS_GET_CLASS (self)->follow_handles (self);
  hc_canvas_move_handles (self);
}

/**
 * hc_canvas_focus_handle: (skip)
 * @self: a canvas
 * @id: id of what the handle moves
 * @role: which handle of it
 */
void
hc_canvas_focus_handle (HcCanvas *self, const char *id, guint role)
{
  for (guint i = 0; i < self->handles->len; i++)
    if (hc_canvas_item_get_number (self->handles->pdata[i]) == role
        && g_str_equal (hc_canvas_item_get_id (self->handles->pdata[i]), id))
      gtk_widget_grab_focus (self->handles->pdata[i]);
}

/**
 * hc_canvas_tell_item: (skip)
 * @self: a canvas
 * @item: a child that stands for a part
 *
 * Says what it is and where, to a screen reader.
 */
void
hc_canvas_tell_item (HcCanvas *self, HcCanvasItem *item)
{
  HcUnits units = hc_panel_get_units (HC_PANEL (self));
  gpointer part = hc_canvas_item_get_part (item);
  g_autofree char *label = NULL;
  g_autofree char *place = NULL;

  switch (hc_canvas_item_get_kind (item))
    {
    case HC_ITEM_FITTING:
      label = hc_words_fitting (part, units);
      place = hc_words_fitting_place (self->layout, part, units);
      break;
    case HC_ITEM_OPENING:
      label = hc_words_opening (part, units);
      break;
    default:
      label = hc_words_pen (self->layout, part, units);
    }
  hc_canvas_item_tell (item, label, place);
}

/* Lengths are told anew when they are measured in other units. */
void
hc_canvas_tell_items (HcCanvas *self)
{
  GHashTableIter at;
  gpointer item;

  g_hash_table_iter_init (&at, self->items);
  while (g_hash_table_iter_next (&at, NULL, &item))
    HC_CANVAS_GET_CLASS (self)->tell_item (self, item);
}

/**
 * hc_canvas_take_away: (skip)
 * @self: a canvas
 * @item: an item or handle of it that goes
 *
 * The canvas takes the focus over at once: until GTK gives it to somebody, keys
 * pressed meanwhile are lost.
 */
void
hc_canvas_take_away (HcCanvas *self, gpointer item)
{
  if (gtk_widget_has_focus (item))
    gtk_widget_grab_focus (GTK_WIDGET (self));
  gtk_widget_unparent (item);
}

/**
 * hc_canvas_take_away_unseen: (skip)
 * @self: a canvas
 * @seen: (element-type utf8 utf8): ids of what is there
 *
 * Takes all other items away.
 */
void
hc_canvas_take_away_unseen (HcCanvas *self, GHashTable *seen)
{
  GHashTableIter at;
  gpointer id, item;

  g_hash_table_iter_init (&at, self->items);
  while (g_hash_table_iter_next (&at, &id, &item))
    if (!g_hash_table_contains (seen, id))
      {
        g_hash_table_iter_remove (&at);
        hc_canvas_take_away (self, item);
      }
}

/**
 * hc_canvas_follow_levels: (skip)
 * @self: a canvas
 * @kind: a sort of things
 *
 * Gives every item the level its findings give it.
 *
 * Returns: whether one of that sort has another level than before
 */
gboolean
hc_canvas_follow_levels (HcCanvas *self, HcItemKind kind)
{
  HcCheck *check = hc_panel_get_check (HC_PANEL (self));
  gboolean changed = FALSE;
  GHashTableIter at;
  gpointer id, item;

  if (check == NULL)
    return FALSE;
  g_hash_table_iter_init (&at, self->items);
  while (g_hash_table_iter_next (&at, &id, &item))
    {
      HcItemKind own = hc_canvas_item_get_kind (item);
      HcLevel level = own == HC_ITEM_BEDDING ? HC_LEVEL_PLENTY
                      : own == HC_ITEM_PEN   ? hc_check_get_pen_level (check, id)
                                             : hc_check_get_part_level (check, id);

      if (hc_canvas_item_set_level (item, level) && own == kind)
        changed = TRUE;
    }
  return changed;
}

/**
 * hc_canvas_follow_selection: (skip)
 * @self: a canvas
 */
void
hc_canvas_follow_selection (HcCanvas *self)
{
  HcDocument *document = hc_panel_get_document (HC_PANEL (self));
  GHashTableIter at;
  gpointer id, item;

  g_hash_table_iter_init (&at, self->items);
  while (g_hash_table_iter_next (&at, &id, &item))
    hc_canvas_item_set_selected (item, hc_document_is_selected (document, id));
  hc_canvas_follow_handles (self);
  gtk_widget_queue_draw (self->marks);
}
