/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The canvas itself: its layers, its sight, and laying it out. */
#include "config.h"

#include "app/canvas/canvas.h"

#define FIT_MARGIN_PX 64

G_DEFINE_ABSTRACT_TYPE (HcCanvas, hc_canvas, HC_TYPE_PANEL)

const HcSight *
hc_canvas_get_sight (HcCanvas *self)
{
  return &self->sight;
}

const HcPalette *
hc_canvas_get_palette (HcCanvas *self)
{
  return hc_palette_get (self->dark ? HC_PALETTE_DARK : HC_PALETTE_LIGHT);
}

static void
redraw (HcCanvas *self, gboolean items)
{
  GtkWidget *child = gtk_widget_get_first_child (GTK_WIDGET (self));

  for (; child != NULL; child = gtk_widget_get_next_sibling (child))
    if (items || HC_IS_CANVAS_SHEET (child))
      gtk_widget_queue_draw (child);
}

/**
 * hc_canvas_redraw_sheets: (skip)
 * @self: a canvas
 */
void
hc_canvas_redraw_sheets (HcCanvas *self)
{
  redraw (self, FALSE);
}

/**
 * hc_canvas_set_sight: (skip)
 * @self: a canvas
 * @sight: what part of it to look at
 */
void
hc_canvas_set_sight (HcCanvas *self, const HcSight *sight)
{
  gboolean zoomed = self->sight.scale != sight->scale;

  if (hc_sight_equal (&self->sight, sight))
    return;
  self->sight = *sight;
  redraw (self, zoomed);
  gtk_widget_queue_allocate (GTK_WIDGET (self));
}

static HcSight
sight_of_all (HcCanvas *self, int width, int height)
{
  return hc_sight_fit (HC_CANVAS_GET_CLASS (self)->get_extents (self), width, height,
                       FIT_MARGIN_PX);
}

/**
 * hc_canvas_fit: (skip)
 * @self: a canvas
 *
 * Shows all there is.
 */
void
hc_canvas_fit (HcCanvas *self)
{
  HcSight sight = sight_of_all (self, gtk_widget_get_width (GTK_WIDGET (self)),
                                gtk_widget_get_height (GTK_WIDGET (self)));

  hc_canvas_set_sight (self, &sight);
}

void
hc_canvas_zoom (HcCanvas *self, double factor)
{
  HcSight sight = hc_sight_zoomed (&self->sight, factor,
                                   gtk_widget_get_width (GTK_WIDGET (self)) / 2.0,
                                   gtk_widget_get_height (GTK_WIDGET (self)) / 2.0);

  hc_canvas_set_sight (self, &sight);
}

HcCanvasItem *
hc_canvas_get_item (HcCanvas *self, const char *id)
{
  return g_hash_table_lookup (self->items, id);
}

/* Out of sight nothing is dragged. */
static void
hc_canvas_unmap (GtkWidget *widget)
{
  HcCanvas *self = HC_CANVAS (widget);

  if (self->drag != NULL)
    hc_canvas_cancel_drag (self);
  GTK_WIDGET_CLASS (hc_canvas_parent_class)->unmap (widget);
}

static void
hc_canvas_measure (GtkWidget *widget, GtkOrientation orientation, int for_size, int *minimum,
                   int *natural, int *minimum_baseline, int *natural_baseline)
{
  *minimum = 120;
  *natural = 600;
  *minimum_baseline = *natural_baseline = -1;
}

static void
place_sheets (HcCanvas *self, int width, int height)
{
  GtkWidget *child = gtk_widget_get_first_child (GTK_WIDGET (self));
  int least;

  for (; child != NULL; child = gtk_widget_get_next_sibling (child))
    if (HC_IS_CANVAS_SHEET (child))
      {
        gtk_widget_measure (child, GTK_ORIENTATION_HORIZONTAL, -1, &least, NULL, NULL, NULL);
        gtk_widget_allocate (child, width, height, -1, NULL);
      }
}

static void
place_handles (HcCanvas *self)
{
  hc_canvas_move_handles (self);
  for (guint i = 0; i < self->handles->len; i++)
    if (gtk_widget_get_child_visible (self->handles->pdata[i]))
      hc_canvas_item_place (self->handles->pdata[i]);
}

static void
place_items (HcCanvas *self)
{
  GHashTableIter at;
  gpointer item;

  g_hash_table_iter_init (&at, self->items);
  while (g_hash_table_iter_next (&at, NULL, &item))
    hc_canvas_item_place (item);
  place_handles (self);
}

static void
hc_canvas_size_allocate (GtkWidget *widget, int width, int height, int baseline)
{
  HcCanvas *self = HC_CANVAS (widget);

  if (!self->fitted && self->layout != NULL)
    {
      self->sight = sight_of_all (self, width, height);
      self->fitted = TRUE;
    }
  place_sheets (self, width, height);
  place_items (self);
}

static void
hc_canvas_snapshot (GtkWidget *widget, GtkSnapshot *snapshot)
{
  HcColour paper = hc_palette_get_colour (hc_canvas_get_palette (HC_CANVAS (widget)),
                                          HC_PAINT_PAPER);
  GdkRGBA colour = { (float) paper.red, (float) paper.green, (float) paper.blue, 1 };
  int width = gtk_widget_get_width (widget), height = gtk_widget_get_height (widget);

  gtk_snapshot_append_color (snapshot, &colour,
                             &GRAPHENE_RECT_INIT (0, 0, (float) width, (float) height));
  gtk_snapshot_push_clip (snapshot, &GRAPHENE_RECT_INIT (0, 0, (float) width, (float) height));
  GTK_WIDGET_CLASS (hc_canvas_parent_class)->snapshot (widget, snapshot);
  gtk_snapshot_pop (snapshot);
}

static void
follow_dark (HcCanvas *self)
{
  self->dark = adw_style_manager_get_dark (adw_style_manager_get_default ());
  gtk_widget_queue_draw (GTK_WIDGET (self));
  redraw (self, TRUE);
}

static void
hc_canvas_selection_changed (HcPanel *panel)
{
  hc_canvas_follow_selection (HC_CANVAS (panel));
}

static void
hc_canvas_dispose (GObject *object)
{
  HcCanvas *self = HC_CANVAS (object);
  GtkWidget *child;

  g_clear_pointer (&self->items, g_hash_table_unref);
  g_clear_pointer (&self->handles, g_ptr_array_unref);
  g_clear_pointer (&self->handled, g_free);
  while ((child = gtk_widget_get_first_child (GTK_WIDGET (self))) != NULL)
    gtk_widget_unparent (child);
  g_clear_pointer (&self->layout, hc_layout_unref);
  g_clear_pointer (&self->drag, hc_drag_free);
  G_OBJECT_CLASS (hc_canvas_parent_class)->dispose (object);
}

static HcCanvasItem *
what_is_picked (HcCanvas *self, HcCanvasItem *item, HcPoint at)
{
  return item;
}

static void
nothing_ended (HcCanvas *self, const HcDrag *drag)
{
}

static void
nothing_more (HcCanvas *self, HcCanvasItem *item)
{
}

static gboolean
nothing_to_stop (HcCanvas *self)
{
  return FALSE;
}

static void
hc_canvas_class_init (HcCanvasClass *klass)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  G_OBJECT_CLASS (klass)->dispose = hc_canvas_dispose;
  widget_class->unmap = hc_canvas_unmap;
  widget_class->measure = hc_canvas_measure;
  widget_class->size_allocate = hc_canvas_size_allocate;
  widget_class->snapshot = hc_canvas_snapshot;
  widget_class->focus = hc_canvas_focus;
  HC_PANEL_CLASS (klass)->selection_changed = hc_canvas_selection_changed;
  klass->tell_item = hc_canvas_tell_item;
  klass->focused = nothing_more;
  klass->look_under = what_is_picked;
  klass->drag_ended = nothing_ended;
  klass->stop = nothing_to_stop;
  gtk_widget_class_set_accessible_role (widget_class, GTK_ACCESSIBLE_ROLE_GROUP);
  hc_canvas_class_add_actions (widget_class);
}

/**
 * hc_canvas_add_sheet: (skip)
 * @self: a canvas
 * @draw: draws it
 * @extents: (nullable): where it draws
 *
 * Returns: (transfer none): a sheet above those there are
 */
GtkWidget *
hc_canvas_add_sheet (HcCanvas *self, HcCanvasSheetDraw draw, HcCanvasSheetExtents extents)
{
  GtkWidget *sheet = hc_canvas_sheet_new (draw, extents, self);

  gtk_widget_set_parent (sheet, GTK_WIDGET (self));
  return sheet;
}

static void
hc_canvas_init (HcCanvas *self)
{
  gtk_widget_set_layout_manager (GTK_WIDGET (self), NULL);
  gtk_widget_set_focusable (GTK_WIDGET (self), TRUE);
  gtk_widget_set_overflow (GTK_WIDGET (self), GTK_OVERFLOW_HIDDEN);
  self->sight.scale = 0.1;
  self->items = g_hash_table_new (g_str_hash, g_str_equal);
  self->handles = g_ptr_array_new ();
  hc_canvas_add_gestures (self);
  follow_dark (self);
  g_signal_connect_object (adw_style_manager_get_default (), "notify::dark",
                           G_CALLBACK (follow_dark), self, G_CONNECT_SWAPPED);
}
