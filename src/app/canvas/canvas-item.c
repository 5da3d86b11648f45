/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Something on the canvas that can be chosen. */
#include "config.h"

#include "app/canvas/canvas-item.h"

#include "app/canvas/canvas.h"

#include <glib/gi18n.h>
#include <math.h>

/* Room round an item for its outline, its level mark and its shadow. */
#define MARGIN_PX 14.0

struct _HcCanvasItem
{
  GtkWidget parent_instance;

  HcItemKind kind;
  char *id;
  guint number;
  gpointer part;
  HcItemFrame frame;
  HcItemDraw draw;
  gpointer canvas;
  HcLevel level;
  char *place;
  gboolean selected;
  GskTransform *way;
  HcSight way_sight;
};

G_DEFINE_FINAL_TYPE (HcCanvasItem, hc_canvas_item, GTK_TYPE_WIDGET)

HcItemKind
hc_canvas_item_get_kind (HcCanvasItem *self)
{
  return self->kind;
}

const char *
hc_canvas_item_get_id (HcCanvasItem *self)
{
  return self->id;
}

guint
hc_canvas_item_get_number (HcCanvasItem *self)
{
  return self->number;
}

void
hc_canvas_item_set_number (HcCanvasItem *self, guint number)
{
  self->number = number;
}

gpointer
hc_canvas_item_get_part (HcCanvasItem *self)
{
  return self->part;
}

/**
 * hc_canvas_item_set_part:
 * @self: an item
 * @part: the part of the plan it shows now
 *
 * Returns: whether it is another one than before
 */
gboolean
hc_canvas_item_set_part (HcCanvasItem *self, gpointer part)
{
  if (self->part == part)
    return FALSE;
  g_clear_pointer (&self->part, hc_part_unref);
  self->part = hc_part_ref (part);
  gtk_widget_queue_draw (GTK_WIDGET (self));
  return TRUE;
}

/**
 * hc_canvas_item_keep_part:
 * @self: an item
 * @part: the part of the plan it shows now, which looks as the one before did
 */
void
hc_canvas_item_keep_part (HcCanvasItem *self, gpointer part)
{
  hc_part_ref (part);
  g_clear_pointer (&self->part, hc_part_unref);
  self->part = part;
}

const HcItemFrame *
hc_canvas_item_get_frame (HcCanvasItem *self)
{
  return &self->frame;
}

void
hc_canvas_item_set_frame (HcCanvasItem *self, const HcItemFrame *frame)
{
  hc_canvas_item_move (self, frame);
  gtk_widget_queue_allocate (GTK_WIDGET (self->canvas));
}

/**
 * hc_canvas_item_move:
 * @self: an item
 * @frame: where it is
 *
 * Like hc_canvas_item_set_frame() while the canvas is being laid out, or is
 * going to be.
 */
void
hc_canvas_item_move (HcCanvasItem *self, const HcItemFrame *frame)
{
  if (frame->width_mm != self->frame.width_mm || frame->depth_mm != self->frame.depth_mm)
    gtk_widget_queue_draw (GTK_WIDGET (self));
  self->frame = *frame;
  g_clear_pointer (&self->way, gsk_transform_unref);
}

static GskTransform *
make_way (HcCanvasItem *self, double width_px, double depth_px)
{
  double x, y;
  GskTransform *transform;

  hc_sight_to_px (&self->way_sight, self->frame.centre, &x, &y);
  transform = gsk_transform_translate (NULL, &GRAPHENE_POINT_INIT ((float) x, (float) y));
  transform = gsk_transform_rotate (transform, (float) self->frame.turn_deg);
  return gsk_transform_translate (
      transform, &GRAPHENE_POINT_INIT ((float) (-width_px / 2), (float) (-depth_px / 2)));
}

/* The way to where it is, the same one as long as neither it nor the sight moves:
 * GTK tells by that what stays where it was. */
static GskTransform *
get_way (HcCanvasItem *self, double width_px, double depth_px)
{
  const HcSight *sight = hc_canvas_get_sight (self->canvas);

  if (self->way != NULL && !hc_sight_equal (&self->way_sight, sight))
    g_clear_pointer (&self->way, gsk_transform_unref);
  self->way_sight = *sight;
  if (self->way == NULL)
    self->way = make_way (self, width_px, depth_px);
  return gsk_transform_ref (self->way);
}

/**
 * hc_canvas_item_place:
 * @self: an item
 *
 * Puts it where the sight shows it. Called while the canvas is laid out.
 */
void
hc_canvas_item_place (HcCanvasItem *self)
{
  double scale = hc_canvas_get_sight (self->canvas)->scale;
  int width = MAX ((int) ceil (self->frame.width_mm * scale), 6);
  int depth = MAX ((int) ceil (self->frame.depth_mm * scale), 6);
  int least;

  gtk_widget_measure (GTK_WIDGET (self), GTK_ORIENTATION_HORIZONTAL, -1, &least, NULL, NULL,
                      NULL);
  gtk_widget_allocate (GTK_WIDGET (self), width, depth, -1, get_way (self, width, depth));
}

gboolean
hc_canvas_item_is_selected (HcCanvasItem *self)
{
  return self->selected;
}

void
hc_canvas_item_set_selected (HcCanvasItem *self, gboolean selected)
{
  if (self->selected == selected)
    return;
  self->selected = selected;
  gtk_accessible_update_state (GTK_ACCESSIBLE (self), GTK_ACCESSIBLE_STATE_SELECTED, selected,
                               -1);
  gtk_widget_queue_draw (GTK_WIDGET (self));
}

static const char *
say_level (HcLevel level)
{
  if (level == HC_LEVEL_SHORT)
    return _("something to fix now");
  return level == HC_LEVEL_TIGHT ? _("something worth doing") : NULL;
}

/* Where it is, and whether a finding names it. */
static void
tell_description (HcCanvasItem *self)
{
  g_autoptr (GPtrArray) told = g_ptr_array_new ();
  g_autofree char *text = NULL;

  if (self->place != NULL)
    g_ptr_array_add (told, self->place);
  if (say_level (self->level) != NULL)
    g_ptr_array_add (told, (gpointer) say_level (self->level));
  g_ptr_array_add (told, NULL);
  text = g_strjoinv (", ", (char **) told->pdata);
  gtk_accessible_update_property (GTK_ACCESSIBLE (self), GTK_ACCESSIBLE_PROPERTY_DESCRIPTION,
                                  text, -1);
}

/**
 * hc_canvas_item_set_level:
 * @self: an item
 * @level: the level its findings give it
 *
 * Returns: whether it is another one than before
 */
gboolean
hc_canvas_item_set_level (HcCanvasItem *self, HcLevel level)
{
  if (self->level == level)
    return FALSE;
  self->level = level;
  tell_description (self);
  gtk_widget_queue_draw (GTK_WIDGET (self));
  return TRUE;
}

HcLevel
hc_canvas_item_get_level (HcCanvasItem *self)
{
  return self->level;
}

/**
 * hc_canvas_item_tell:
 * @self: an item
 * @label: what it is, for a screen reader and the tooltip
 * @place: (nullable): where it is
 */
void
hc_canvas_item_tell (HcCanvasItem *self, const char *label, const char *place)
{
  g_free (self->place);
  self->place = g_strdup (place);
  gtk_accessible_update_property (GTK_ACCESSIBLE (self), GTK_ACCESSIBLE_PROPERTY_LABEL, label,
                                  -1);
  tell_description (self);
}

/* A door swings out as far as it is wide. */
static float
margin_of (HcCanvasItem *self, float width)
{
  return (float) MARGIN_PX + (self->kind == HC_ITEM_OPENING ? width : 0);
}

static void
hc_canvas_item_snapshot (GtkWidget *widget, GtkSnapshot *snapshot)
{
  HcCanvasItem *self = HC_CANVAS_ITEM (widget);
  double scale = hc_canvas_get_sight (self->canvas)->scale;
  float width = (float) gtk_widget_get_width (widget);
  float depth = (float) gtk_widget_get_height (widget);
  float margin = margin_of (self, width);
  graphene_rect_t bounds;
  HcInk ink = { 0 };

  graphene_rect_init (&bounds, -margin, -margin, width + 2 * margin, depth + 2 * margin);
  ink.cr = gtk_snapshot_append_cairo (snapshot, &bounds);
  cairo_translate (ink.cr, width / 2, depth / 2);
  cairo_scale (ink.cr, scale, scale);
  ink.palette = hc_canvas_get_palette (self->canvas);
  ink.scale = scale;
  self->draw (&ink, self, self->canvas);
  cairo_destroy (ink.cr);
}

static void
hc_canvas_item_finalize (GObject *object)
{
  HcCanvasItem *self = HC_CANVAS_ITEM (object);

  g_clear_pointer (&self->part, hc_part_unref);
  g_clear_pointer (&self->way, gsk_transform_unref);
  g_free (self->id);
  g_free (self->place);
  G_OBJECT_CLASS (hc_canvas_item_parent_class)->finalize (object);
}

static gboolean
hc_canvas_item_grab_focus (GtkWidget *widget)
{
  gtk_root_set_focus (gtk_widget_get_root (widget), widget);
  return TRUE;
}

static void
focus_changed (GtkWidget *widget)
{
  gtk_widget_queue_draw (widget);
  if (gtk_widget_has_focus (widget))
    hc_canvas_item_focused (HC_CANVAS_ITEM (widget)->canvas, HC_CANVAS_ITEM (widget));
}

static void
hc_canvas_item_class_init (HcCanvasItemClass *klass)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  G_OBJECT_CLASS (klass)->finalize = hc_canvas_item_finalize;
  widget_class->snapshot = hc_canvas_item_snapshot;
  widget_class->grab_focus = hc_canvas_item_grab_focus;
  gtk_widget_class_set_accessible_role (widget_class, GTK_ACCESSIBLE_ROLE_BUTTON);
  gtk_widget_class_set_css_name (widget_class, "canvasitem");
}

static void
hc_canvas_item_init (HcCanvasItem *self)
{
  self->level = HC_LEVEL_PLENTY;
  gtk_widget_set_focusable (GTK_WIDGET (self), TRUE);
  g_signal_connect (self, "notify::has-focus", G_CALLBACK (focus_changed), NULL);
}

HcCanvasItem *
hc_canvas_item_new (HcItemKind kind, const char *id, HcItemDraw draw, gpointer canvas)
{
  HcCanvasItem *self = g_object_new (HC_TYPE_CANVAS_ITEM, NULL);

  self->kind = kind;
  self->id = g_strdup (id);
  self->draw = draw;
  self->canvas = canvas;
  return self;
}
