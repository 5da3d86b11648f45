/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Something on the canvas that can be chosen: a fitting, an opening, a pen, its bedding, a handle. */
#pragma once

#include "drawing/ink.h"
#include "plan/layout.h"

#include <gtk/gtk.h>

G_BEGIN_DECLS

typedef enum
{
  HC_ITEM_PEN,
  HC_ITEM_FITTING,
  HC_ITEM_OPENING,
  HC_ITEM_BEDDING,
  HC_ITEM_HANDLE,
} HcItemKind;

/**
 * HcItemFrame:
 * @centre: its middle, mm
 * @turn_deg: how it is turned
 * @width_mm: along its own x
 * @depth_mm: along its own y
 */
typedef struct
{
  HcPoint centre;
  double turn_deg;
  double width_mm;
  double depth_mm;
} HcItemFrame;

#define HC_TYPE_CANVAS_ITEM (hc_canvas_item_get_type ())
/**
 * HcCanvasItem:
 *
 * A child widget of the canvas: it takes the focus, answers keys, and tells a
 * screen reader what it is.
 */
G_DECLARE_FINAL_TYPE (HcCanvasItem, hc_canvas_item, HC, CANVAS_ITEM, GtkWidget)

/* Draws the item in its own frame: origin in the middle, mm. */
typedef void (*HcItemDraw) (const HcInk *ink, HcCanvasItem *item, gpointer canvas);

HcCanvasItem *hc_canvas_item_new (HcItemKind kind, const char *id, HcItemDraw draw, gpointer canvas);
HcItemKind hc_canvas_item_get_kind (HcCanvasItem *self);
const char *hc_canvas_item_get_id (HcCanvasItem *self);
guint hc_canvas_item_get_number (HcCanvasItem *self);
void hc_canvas_item_set_number (HcCanvasItem *self, guint number);
gpointer hc_canvas_item_get_part (HcCanvasItem *self);
void hc_canvas_item_keep_part (HcCanvasItem *self, gpointer part);
gboolean hc_canvas_item_set_part (HcCanvasItem *self, gpointer part);
const HcItemFrame *hc_canvas_item_get_frame (HcCanvasItem *self);
void hc_canvas_item_set_frame (HcCanvasItem *self, const HcItemFrame *frame);
void hc_canvas_item_move (HcCanvasItem *self, const HcItemFrame *frame);
void hc_canvas_item_place (HcCanvasItem *self);
gboolean hc_canvas_item_is_selected (HcCanvasItem *self);
void hc_canvas_item_set_selected (HcCanvasItem *self, gboolean selected);
gboolean hc_canvas_item_set_level (HcCanvasItem *self, HcLevel level);
HcLevel hc_canvas_item_get_level (HcCanvasItem *self);
void hc_canvas_item_tell (HcCanvasItem *self, const char *label, const char *place);

G_END_DECLS
