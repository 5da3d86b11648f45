/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The floor itself: its layers, its sight, and laying it out. */
#include "config.h"

#include "app/floor/floor-drag.h"
#include "app/floor/floor-private.h"

#define FIT_MARGIN_PX 64

G_DEFINE_FINAL_TYPE (HcFloor, hc_floor, HC_TYPE_PANEL)

const HcSight *
hc_floor_get_sight (HcFloor *self)
{
  return &self->sight;
}

const HcPalette *
hc_floor_get_palette (HcFloor *self)
{
  return hc_palette_get (self->dark ? HC_PALETTE_DARK : HC_PALETTE_LIGHT);
}

static void
redraw_all (HcFloor *self)
{
  GtkWidget *child = gtk_widget_get_first_child (GTK_WIDGET (self));

  for (; child != NULL; child = gtk_widget_get_next_sibling (child))
    gtk_widget_queue_draw (child);
}

/**
 * hc_floor_set_sight:
 * @self: the floor
 * @sight: what part of it to look at
 */
void
hc_floor_set_sight (HcFloor *self, const HcSight *sight)
{
  gboolean zoomed = self->sight.scale != sight->scale;

  if (hc_sight_equal (&self->sight, sight))
    return;
  self->sight = *sight;
  if (zoomed)
    redraw_all (self);
  gtk_widget_queue_draw (self->ground);
  gtk_widget_queue_draw (self->birds);
  gtk_widget_queue_draw (self->words);
  gtk_widget_queue_draw (self->marks);
  gtk_widget_queue_allocate (GTK_WIDGET (self));
}

/**
 * hc_floor_fit:
 * @self: the floor
 *
 * Shows all of the plan.
 */
void
hc_floor_fit (HcFloor *self)
{
  HcSight sight = hc_sight_fit (hc_floor_get_extents (self), gtk_widget_get_width (GTK_WIDGET (self)),
                             gtk_widget_get_height (GTK_WIDGET (self)), FIT_MARGIN_PX);

  hc_floor_set_sight (self, &sight);
}

void
hc_floor_zoom (HcFloor *self, double factor)
{
  HcSight sight = hc_sight_zoomed (&self->sight, factor, gtk_widget_get_width (GTK_WIDGET (self)) / 2.0,
                                gtk_widget_get_height (GTK_WIDGET (self)) / 2.0);

  hc_floor_set_sight (self, &sight);
}

HcFloorItem *
hc_floor_get_item (HcFloor *self, const char *id)
{
  return g_hash_table_lookup (self->items, id);
}

static gboolean
is_in_sight (HcFloor *self, HcFloorItem *item)
{
  double x, y;

  hc_sight_to_px (&self->sight, hc_floor_item_get_frame (item)->centre, &x, &y);
  return x >= 0 && y >= 0 && x <= gtk_widget_get_width (GTK_WIDGET (self))
         && y <= gtk_widget_get_height (GTK_WIDGET (self));
}

/**
 * hc_floor_show_parts:
 * @self: the floor
 * @ids: (array zero-terminated=1): ids of pens, fittings and openings
 *
 * Selects them, brings them into sight and gives the first the focus.
 */
void
hc_floor_show_parts (HcFloor *self, const char *const *ids)
{
  HcFloorItem *first = NULL;
  gboolean in_sight = TRUE;

  for (guint i = 0; ids[i] != NULL; i++)
    {
      HcFloorItem *item = hc_floor_get_item (self, ids[i]);

      if (item == NULL)
        continue;
      first = first != NULL ? first : item;
      in_sight = in_sight && is_in_sight (self, item);
    }
  if (first == NULL)
    return;
  if (!in_sight)
    hc_floor_fit (self);
  gtk_widget_grab_focus (GTK_WIDGET (first));
  hc_document_select (hc_panel_get_document (HC_PANEL (self)), ids);
}

void
hc_floor_show_part (HcFloor *self, const char *id)
{
  const char *const ids[] = { id, NULL };

  hc_floor_show_parts (self, ids);
}

HcFloorTool
hc_floor_get_tool (HcFloor *self)
{
  return self->tool;
}

void
hc_floor_set_tool (HcFloor *self, HcFloorTool tool)
{
  self->tool = tool;
  gtk_widget_set_cursor_from_name (GTK_WIDGET (self),
                                   tool == HC_TOOL_CHOOSE ? "default" : "crosshair");
}

/**
 * hc_floor_item_focused: (skip)
 * @self: the floor
 * @item: the item the focus moved to by keys
 */
void
hc_floor_item_focused (HcFloor *self, HcFloorItem *item)
{
  const char *const ids[] = { hc_floor_item_get_id (item), NULL };
  HcDocument *document = hc_panel_get_document (HC_PANEL (self));

  if (document == NULL || self->walking || hc_floor_item_get_kind (item) == HC_ITEM_HANDLE
      || hc_document_is_selected (document, ids[0]))
    return;
  hc_document_select (document, ids);
}

/* Out of sight nothing is dragged. */
static void
hc_floor_unmap (GtkWidget *widget)
{
  HcFloor *self = HC_FLOOR (widget);

  if (self->drag != NULL)
    hc_floor_cancel_drag (self);
  GTK_WIDGET_CLASS (hc_floor_parent_class)->unmap (widget);
}

static void
hc_floor_measure (GtkWidget *widget, GtkOrientation orientation, int for_size, int *minimum,
                  int *natural, int *minimum_baseline, int *natural_baseline)
{
  *minimum = 120;
  *natural = 600;
  *minimum_baseline = *natural_baseline = -1;
}

static void
place_items (HcFloor *self)
{
  GHashTableIter at;
  gpointer item;

  g_hash_table_iter_init (&at, self->items);
  while (g_hash_table_iter_next (&at, NULL, &item))
    hc_floor_item_place (item);
  hc_floor_place_handles (self);
}

static void
place_sheet (GtkWidget *sheet, int width, int height)
{
  int least;

  gtk_widget_measure (sheet, GTK_ORIENTATION_HORIZONTAL, -1, &least, NULL, NULL, NULL);
  gtk_widget_allocate (sheet, width, height, -1, NULL);
}

static void
hc_floor_size_allocate (GtkWidget *widget, int width, int height, int baseline)
{
  HcFloor *self = HC_FLOOR (widget);

  if (!self->fitted && self->layout != NULL)
    {
      self->sight = hc_sight_fit (hc_floor_get_extents (self), width, height, FIT_MARGIN_PX);
      self->fitted = TRUE;
    }
  place_sheet (self->ground, width, height);
  place_sheet (self->birds, width, height);
  place_sheet (self->words, width, height);
  place_sheet (self->marks, width, height);
  place_items (self);
}

static void
hc_floor_snapshot (GtkWidget *widget, GtkSnapshot *snapshot)
{
  HcColour paper = hc_palette_get_colour (hc_floor_get_palette (HC_FLOOR (widget)),
                                          HC_PAINT_PAPER);
  GdkRGBA colour = { (float) paper.red, (float) paper.green, (float) paper.blue, 1 };
  int width = gtk_widget_get_width (widget), height = gtk_widget_get_height (widget);

  gtk_snapshot_append_color (snapshot, &colour,
                             &GRAPHENE_RECT_INIT (0, 0, (float) width, (float) height));
  gtk_snapshot_push_clip (snapshot, &GRAPHENE_RECT_INIT (0, 0, (float) width, (float) height));
  GTK_WIDGET_CLASS (hc_floor_parent_class)->snapshot (widget, snapshot);
  gtk_snapshot_pop (snapshot);
}

static void
follow_dark (HcFloor *self)
{
  self->dark = adw_style_manager_get_dark (adw_style_manager_get_default ());
  gtk_widget_queue_draw (GTK_WIDGET (self));
  redraw_all (self);
}

static void
hc_floor_plan_changed (HcPanel *panel)
{
  hc_floor_follow_plan (HC_FLOOR (panel));
}

static void
hc_floor_checked (HcPanel *panel)
{
  hc_floor_follow_check (HC_FLOOR (panel));
}

static void
hc_floor_selection_changed (HcPanel *panel)
{
  hc_floor_follow_selection (HC_FLOOR (panel));
}

static void
hc_floor_dispose (GObject *object)
{
  HcFloor *self = HC_FLOOR (object);
  GtkWidget *child;

  g_clear_pointer (&self->items, g_hash_table_unref);
  g_clear_pointer (&self->handles, g_ptr_array_unref);
  g_clear_pointer (&self->handled, g_free);
  while ((child = gtk_widget_get_first_child (GTK_WIDGET (self))) != NULL)
    gtk_widget_unparent (child);
  g_clear_object (&self->settings);
  g_clear_pointer (&self->layout, hc_layout_unref);
  g_clear_pointer (&self->drag, hc_floor_drag_free);
  G_OBJECT_CLASS (hc_floor_parent_class)->dispose (object);
}

static void
hc_floor_class_init (HcFloorClass *klass)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);
  HcPanelClass *panel_class = HC_PANEL_CLASS (klass);

  G_OBJECT_CLASS (klass)->dispose = hc_floor_dispose;
  widget_class->unmap = hc_floor_unmap;
  widget_class->measure = hc_floor_measure;
  widget_class->size_allocate = hc_floor_size_allocate;
  widget_class->snapshot = hc_floor_snapshot;
  widget_class->focus = hc_floor_focus;
  panel_class->plan_changed = hc_floor_plan_changed;
  panel_class->checked = hc_floor_checked;
  panel_class->selection_changed = hc_floor_selection_changed;
  gtk_widget_class_set_css_name (widget_class, "floor");
  gtk_widget_class_set_accessible_role (widget_class, GTK_ACCESSIBLE_ROLE_GROUP);
  hc_floor_class_add_actions (widget_class);
}

static GtkWidget *
add_sheet (HcFloor *self, HcFloorSheetDraw draw, HcFloorSheetExtents extents)
{
  GtkWidget *sheet = hc_floor_sheet_new (draw, extents, self);

  gtk_widget_set_parent (sheet, GTK_WIDGET (self));
  return sheet;
}

static void
hc_floor_init (HcFloor *self)
{
  gtk_widget_set_layout_manager (GTK_WIDGET (self), NULL);
  gtk_widget_set_focusable (GTK_WIDGET (self), TRUE);
  gtk_widget_set_overflow (GTK_WIDGET (self), GTK_OVERFLOW_HIDDEN);
  self->sight.scale = 0.1;
  self->items = g_hash_table_new (g_str_hash, g_str_equal);
  self->handles = g_ptr_array_new ();
  self->ground = add_sheet (self, hc_floor_draw_ground, NULL);
  self->birds = add_sheet (self, hc_floor_draw_birds, NULL);
  self->words = add_sheet (self, hc_floor_draw_words, NULL);
  self->marks = add_sheet (self, hc_floor_draw_marks, hc_floor_get_marks_extents);
  self->settings = g_settings_new (HC_APPLICATION_ID);
  g_signal_connect_object (self->settings, "changed::show-birds",
                           G_CALLBACK (gtk_widget_queue_draw), self->birds, G_CONNECT_SWAPPED);
  hc_floor_add_gestures (self);
  hc_floor_add_drop (self);
  follow_dark (self);
  g_signal_connect_object (adw_style_manager_get_default (), "notify::dark",
                           G_CALLBACK (follow_dark), self, G_CONNECT_SWAPPED);
}
