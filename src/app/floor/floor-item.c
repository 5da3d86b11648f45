/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Something on the floor that can be chosen. */
#include "config.h"

#include "app/floor/floor-item.h"

#include "app/floor/floor.h"

#include <glib/gi18n.h>
#include <math.h>

/* Room round an item for its outline, its level mark and its shadow. */
#define MARGIN_PX 14.0

struct _HcFloorItem
{
  GtkWidget parent_instance;

  HcItemKind kind;
  char *id;
  guint number;
  gpointer part;
  HcItemFrame frame;
  HcItemDraw draw;
  gpointer floor;
  HcLevel level;
  char *place;
  gboolean selected;
  GskTransform *way;
  HcSight way_sight;
};

G_DEFINE_FINAL_TYPE (HcFloorItem, hc_floor_item, GTK_TYPE_WIDGET)

HcItemKind
hc_floor_item_get_kind (HcFloorItem *self)
{
  return self->kind;
}

const char *
hc_floor_item_get_id (HcFloorItem *self)
{
  return self->id;
}

guint
hc_floor_item_get_number (HcFloorItem *self)
{
  return self->number;
}

void
hc_floor_item_set_number (HcFloorItem *self, guint number)
{
  self->number = number;
}

gpointer
hc_floor_item_get_part (HcFloorItem *self)
{
  return self->part;
}

/**
 * hc_floor_item_set_part:
 * @self: an item
 * @part: the part of the plan it shows now
 *
 * Returns: whether it is another one than before
 */
gboolean
hc_floor_item_set_part (HcFloorItem *self, gpointer part)
{
  if (self->part == part)
    return FALSE;
  g_clear_pointer (&self->part, hc_part_unref);
  self->part = hc_part_ref (part);
  gtk_widget_queue_draw (GTK_WIDGET (self));
  return TRUE;
}

/**
 * hc_floor_item_keep_part:
 * @self: an item
 * @part: the part of the plan it shows now, which looks as the one before did
 */
void
hc_floor_item_keep_part (HcFloorItem *self, gpointer part)
{
  hc_part_ref (part);
  g_clear_pointer (&self->part, hc_part_unref);
  self->part = part;
}

const HcItemFrame *
hc_floor_item_get_frame (HcFloorItem *self)
{
  return &self->frame;
}

void
hc_floor_item_set_frame (HcFloorItem *self, const HcItemFrame *frame)
{
  hc_floor_item_move (self, frame);
  gtk_widget_queue_allocate (GTK_WIDGET (self->floor));
}

/**
 * hc_floor_item_move:
 * @self: an item
 * @frame: where it is
 *
 * Like hc_floor_item_set_frame() while the floor is being laid out.
 */
void
hc_floor_item_move (HcFloorItem *self, const HcItemFrame *frame)
{
  if (frame->width_mm != self->frame.width_mm || frame->depth_mm != self->frame.depth_mm)
    gtk_widget_queue_draw (GTK_WIDGET (self));
  self->frame = *frame;
  g_clear_pointer (&self->way, gsk_transform_unref);
}

static GskTransform *
make_way (HcFloorItem *self, double width_px, double depth_px)
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
get_way (HcFloorItem *self, double width_px, double depth_px)
{
  const HcSight *sight = hc_floor_get_sight (self->floor);

  if (self->way != NULL && !hc_sight_equal (&self->way_sight, sight))
    g_clear_pointer (&self->way, gsk_transform_unref);
  self->way_sight = *sight;
  if (self->way == NULL)
    self->way = make_way (self, width_px, depth_px);
  return gsk_transform_ref (self->way);
}

/**
 * hc_floor_item_place:
 * @self: an item
 *
 * Puts it where the sight shows it. Called while the floor is laid out.
 */
void
hc_floor_item_place (HcFloorItem *self)
{
  double scale = hc_floor_get_sight (self->floor)->scale;
  int width = MAX ((int) ceil (self->frame.width_mm * scale), 6);
  int depth = MAX ((int) ceil (self->frame.depth_mm * scale), 6);
  int least;

  gtk_widget_measure (GTK_WIDGET (self), GTK_ORIENTATION_HORIZONTAL, -1, &least, NULL, NULL,
                      NULL);
  gtk_widget_allocate (GTK_WIDGET (self), width, depth, -1, get_way (self, width, depth));
}

gboolean
hc_floor_item_is_selected (HcFloorItem *self)
{
  return self->selected;
}

void
hc_floor_item_set_selected (HcFloorItem *self, gboolean selected)
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
tell_description (HcFloorItem *self)
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
 * hc_floor_item_set_level:
 * @self: an item
 * @level: the level its findings give it
 *
 * Returns: whether it is another one than before
 */
gboolean
hc_floor_item_set_level (HcFloorItem *self, HcLevel level)
{
  if (self->level == level)
    return FALSE;
  self->level = level;
  tell_description (self);
  gtk_widget_queue_draw (GTK_WIDGET (self));
  return TRUE;
}

HcLevel
hc_floor_item_get_level (HcFloorItem *self)
{
  return self->level;
}

/**
 * hc_floor_item_tell:
 * @self: an item
 * @label: what it is, for a screen reader and the tooltip
 * @place: (nullable): where it is
 */
void
hc_floor_item_tell (HcFloorItem *self, const char *label, const char *place)
{
  g_free (self->place);
  self->place = g_strdup (place);
  gtk_accessible_update_property (GTK_ACCESSIBLE (self), GTK_ACCESSIBLE_PROPERTY_LABEL, label,
                                  -1);
  tell_description (self);
}

/* A door swings out as far as it is wide. */
static float
margin_of (HcFloorItem *self, float width)
{
  return (float) MARGIN_PX + (self->kind == HC_ITEM_OPENING ? width : 0);
}

static void
hc_floor_item_snapshot (GtkWidget *widget, GtkSnapshot *snapshot)
{
  HcFloorItem *self = HC_FLOOR_ITEM (widget);
  double scale = hc_floor_get_sight (self->floor)->scale;
  float width = (float) gtk_widget_get_width (widget);
  float depth = (float) gtk_widget_get_height (widget);
  float margin = margin_of (self, width);
  graphene_rect_t bounds;
  HcInk ink = { 0 };

  graphene_rect_init (&bounds, -margin, -margin, width + 2 * margin, depth + 2 * margin);
  ink.cr = gtk_snapshot_append_cairo (snapshot, &bounds);
  cairo_translate (ink.cr, width / 2, depth / 2);
  cairo_scale (ink.cr, scale, scale);
  ink.palette = hc_floor_get_palette (self->floor);
  ink.scale = scale;
  self->draw (&ink, self, self->floor);
  cairo_destroy (ink.cr);
}

static void
hc_floor_item_finalize (GObject *object)
{
  HcFloorItem *self = HC_FLOOR_ITEM (object);

  g_clear_pointer (&self->part, hc_part_unref);
  g_clear_pointer (&self->way, gsk_transform_unref);
  g_free (self->id);
  g_free (self->place);
  G_OBJECT_CLASS (hc_floor_item_parent_class)->finalize (object);
}

static gboolean
hc_floor_item_grab_focus (GtkWidget *widget)
{
  gtk_root_set_focus (gtk_widget_get_root (widget), widget);
  return TRUE;
}

static void
focus_changed (GtkWidget *widget)
{
  gtk_widget_queue_draw (widget);
  if (gtk_widget_has_focus (widget))
    hc_floor_item_focused (HC_FLOOR_ITEM (widget)->floor, HC_FLOOR_ITEM (widget));
}

static void
hc_floor_item_class_init (HcFloorItemClass *klass)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  G_OBJECT_CLASS (klass)->finalize = hc_floor_item_finalize;
  widget_class->snapshot = hc_floor_item_snapshot;
  widget_class->grab_focus = hc_floor_item_grab_focus;
  gtk_widget_class_set_accessible_role (widget_class, GTK_ACCESSIBLE_ROLE_BUTTON);
  gtk_widget_class_set_css_name (widget_class, "flooritem");
}

static void
hc_floor_item_init (HcFloorItem *self)
{
  self->level = HC_LEVEL_PLENTY;
  gtk_widget_set_focusable (GTK_WIDGET (self), TRUE);
  g_signal_connect (self, "notify::has-focus", G_CALLBACK (focus_changed), NULL);
}

HcFloorItem *
hc_floor_item_new (HcItemKind kind, const char *id, HcItemDraw draw, gpointer floor)
{
  HcFloorItem *self = g_object_new (HC_TYPE_FLOOR_ITEM, NULL);

  self->kind = kind;
  self->id = g_strdup (id);
  self->draw = draw;
  self->floor = floor;
  return self;
}
