/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Bringing what is on the floor in step with the plan, the check and the selection. */
#include "config.h"

#include "app/floor/floor-private.h"

#include "drawing/wall-outline.h"

#include <math.h>

#define LEAST_CATCH_MM 120.0

/* Lower things first: what is under a bird's feet lies under what is over its
 * head. */
enum
{
  STOREY_PEN,
  STOREY_OPENING,
  STOREY_ON_FLOOR,
  STOREY_RAISED,
  STOREY_STANDING,
  STOREY_ROOST,
  STOREY_HANGING,
};

static guint
storey_of (const HcFittingValues *fitting)
{
  switch (fitting->kind)
    {
    case HC_FITTING_DROPPINGS_BOARD:
    case HC_FITTING_FLOOR_HEAT_PAD:
    case HC_FITTING_DUST_BATH:
      return STOREY_ON_FLOOR;
    case HC_FITTING_PLATFORM:
    case HC_FITTING_RAMP:
      return STOREY_RAISED;
    case HC_FITTING_ROOST:
      return STOREY_ROOST;
    case HC_FITTING_HEAT_LAMP:
    case HC_FITTING_HEAT_PLATE:
      return STOREY_HANGING;
    default:
      return STOREY_STANDING;
    }
}

/* @same_ground: pens, walls and openings are where they were, and as they were. */
typedef struct
{
  HcFloor *floor;
  GHashTable *seen;
  gboolean same_ground;
} Following;

static HcCanvasItem *
item_for (Following *following, HcItemKind kind, gpointer part, HcItemDraw draw, guint storey)
{
  HcCanvasItem *item
      = hc_canvas_item_for (&following->floor->canvas, kind, part, draw, storey);

  g_hash_table_add (following->seen, (gpointer) hc_canvas_item_get_id (item));
  return item;
}

static void
follow_fitting (Following *following, HcFitting *fitting)
{
  const HcFittingValues *values = hc_fitting_get (fitting);
  HcCanvasItem *item = item_for (following, HC_ITEM_FITTING, fitting, hc_floor_draw_fitting,
                                storey_of (values));
  HcItemFrame frame = { { values->x_mm, values->y_mm }, values->turn_deg, values->width_mm,
                        values->depth_mm };

  if (!hc_canvas_item_set_part (item, fitting))
    return;
  hc_canvas_item_set_frame (item, &frame);
  hc_canvas_tell_item (&following->floor->canvas, item);
}

static void
follow_fittings (Following *following, HcParts *fittings)
{
  for (guint i = 0; i < fittings->len; i++)
    follow_fitting (following, fittings->pdata[i]);
}

/* The clear width along the wall, the wall's thickness across it; never so
 * thin that it cannot be caught. */
static HcItemFrame
opening_frame (const HcWallFaces *faces, const HcOpeningValues *values)
{
  HcPoint way = hc_point_subtract (faces->to, faces->from);
  HcItemFrame frame;

  frame.centre
      = hc_wall_faces_at (faces, values->along_mm, (faces->inner_mm - faces->outer_mm) / 2);
  frame.turn_deg = atan2 (way.y_mm, way.x_mm) * 180 / G_PI;
  frame.width_mm = values->width_mm;
  frame.depth_mm = MAX (faces->outer_mm + faces->inner_mm, LEAST_CATCH_MM);
  return frame;
}

static void
follow_opening (Following *following, HcOpening *opening)
{
  HcFloor *self = following->floor;
  const HcOpeningValues *values = hc_opening_get (opening);
  HcWall *wall = hc_layout_get_wall (self->canvas.layout, values->wall);
  HcCanvasItem *item;
  HcItemFrame frame;
  HcWallFaces faces;

  if (wall == NULL || !hc_wall_faces (self->canvas.layout, wall, &faces))
    return;
  item = item_for (following, HC_ITEM_OPENING, opening, hc_floor_draw_opening, STOREY_OPENING);
  frame = opening_frame (&faces, values);
  hc_canvas_item_set_part (item, opening);
  hc_canvas_item_set_frame (item, &frame);
  hc_canvas_tell_item (&self->canvas, item);
}

static void
follow_pen (Following *following, HcPen *pen)
{
  HcFloor *self = following->floor;
  HcCanvasItem *item
      = item_for (following, HC_ITEM_PEN, pen, hc_floor_draw_pen, STOREY_PEN);
  g_autoptr (GArray) ring = hc_layout_get_pen_ring (self->canvas.layout, pen);
  HcBox box = hc_box_around ((const HcPoint *) ring->data, ring->len);
  HcItemFrame frame = { hc_box_centre (box), 0, MAX (box.width_mm, 1), MAX (box.depth_mm, 1) };

  hc_canvas_item_set_part (item, pen);
  hc_canvas_item_set_frame (item, &frame);
  hc_canvas_tell_item (&self->canvas, item);
}

/* An item that stays as it is, but for the part it stands for. */
static void
keep_item (Following *following, gpointer part)
{
  HcCanvasItem *item = g_hash_table_lookup (following->floor->canvas.items, hc_part_get_id (part));

  if (item == NULL)
    return;
  hc_canvas_item_keep_part (item, part);
  g_hash_table_add (following->seen, (gpointer) hc_canvas_item_get_id (item));
}

static gboolean
same_pen_ground (HcPen *before, HcPen *now)
{
  HcPenValues values = *hc_pen_get (now);
  g_autoptr (HcPen) as_before = NULL;

  values.fittings = hc_pen_get (before)->fittings;
  as_before = hc_pen_with (before, &values);
  return as_before == before;
}

static gboolean
same_ground (HcLayout *before, HcLayout *now)
{
  const HcLayoutValues *a, *b;

  if (before == NULL || now == NULL)
    return FALSE;
  a = hc_layout_get (before);
  b = hc_layout_get (now);
  if (a->corners != b->corners || a->walls != b->walls || a->openings != b->openings
      || a->pens->len != b->pens->len)
    return FALSE;
  for (guint i = 0; i < a->pens->len; i++)
    if (a->pens->pdata[i] != b->pens->pdata[i]
        && !same_pen_ground (a->pens->pdata[i], b->pens->pdata[i]))
      return FALSE;
  return TRUE;
}

static void
follow_openings (Following *following, HcParts *openings)
{
  for (guint i = 0; i < openings->len; i++)
    if (following->same_ground)
      keep_item (following, openings->pdata[i]);
    else
      follow_opening (following, openings->pdata[i]);
}

static void
follow_layout (HcFloor *self, gboolean same_ground)
{
  const HcLayoutValues *layout = hc_layout_get (self->canvas.layout);
  g_autoptr (GHashTable) seen = g_hash_table_new (g_str_hash, g_str_equal);
  Following following = { self, seen, same_ground };

  for (guint i = 0; i < layout->pens->len; i++)
    {
      HcPen *pen = layout->pens->pdata[i];

      if (same_ground)
        keep_item (&following, pen);
      else
        follow_pen (&following, pen);
      follow_fittings (&following, hc_pen_get (pen)->fittings);
    }
  follow_fittings (&following, layout->loose);
  follow_openings (&following, layout->openings);
  hc_canvas_take_away_unseen (&self->canvas, seen);
}

/* Lengths are drawn and told anew when they are measured in other units. */
static void
follow_units (HcFloor *self)
{
  HcUnits units = hc_panel_get_units (HC_PANEL (self));

  if (self->units == units)
    return;
  self->units = units;
  hc_canvas_redraw_sheets (&self->canvas);
  hc_canvas_tell_items (&self->canvas);
}

/**
 * hc_floor_follow_plan: (skip)
 * @self: the floor
 *
 * Gives every pen, opening and fitting its item, takes away those that are
 * gone, and has drawn again only what changed.
 */
void
hc_floor_follow_plan (HcFloor *self)
{
  HcLayout *layout = hc_plan_get_layout (hc_panel_get_plan (HC_PANEL (self)));
  g_autoptr (HcLayout) before = g_steal_pointer (&self->canvas.layout);
  gboolean is_same_ground;

  self->canvas.layout = hc_layout_ref (layout);
  follow_units (self);
  if (before == layout)
    return;
  is_same_ground = same_ground (before, layout);
  if (!is_same_ground)
    {
      gtk_widget_queue_draw (self->canvas.ground);
      gtk_widget_queue_draw (self->words);
    }
  follow_layout (self, is_same_ground);
  hc_canvas_follow_handles (&self->canvas);
  gtk_widget_queue_draw (self->canvas.marks);
  gtk_widget_queue_allocate (GTK_WIDGET (self));
}

/**
 * hc_floor_follow_check: (skip)
 * @self: the floor
 *
 * Marks what findings name and puts the birds on their places. Birds wait for
 * the end of a drag: they are everywhere, and drawing them anew paints all of
 * the floor again.
 */
void
hc_floor_follow_check (HcFloor *self)
{
  if (hc_canvas_follow_levels (&self->canvas, HC_ITEM_PEN))
    gtk_widget_queue_draw (self->words);
  if (!hc_document_is_previewing (hc_panel_get_document (HC_PANEL (self))))
    gtk_widget_queue_draw (self->birds);
}

/* A box round the frame, however it is turned. */
static HcBox
box_round (const HcItemFrame *frame)
{
  double turn = frame->turn_deg * G_PI / 180;
  double reach_x = (fabs (cos (turn)) * frame->width_mm + fabs (sin (turn)) * frame->depth_mm) / 2;
  double reach_y = (fabs (sin (turn)) * frame->width_mm + fabs (cos (turn)) * frame->depth_mm) / 2;

  return (HcBox){ frame->centre.x_mm - reach_x, frame->centre.y_mm - reach_y, 2 * reach_x,
                  2 * reach_y };
}

/**
 * hc_floor_get_extents: (skip)
 * @canvas: the floor
 *
 * Returns: a box round all there is
 */
HcBox
hc_floor_get_extents (HcCanvas *canvas)
{
  GHashTableIter at;
  gpointer item;
  HcBox box = hc_box_empty ();

  g_hash_table_iter_init (&at, canvas->items);
  while (g_hash_table_iter_next (&at, NULL, &item))
    {
      const HcItemFrame *frame = hc_canvas_item_get_frame (item);

      box = hc_box_join (box, box_round (frame));
    }
  return hc_box_is_empty (box) ? (HcBox){ 0, 0, 4000, 3000 } : box;
}
