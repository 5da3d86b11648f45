/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Something on the floor that can be chosen: a fitting, an opening, a pen, a handle. */
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

#define HC_TYPE_FLOOR_ITEM (hc_floor_item_get_type ())
/**
 * HcFloorItem:
 *
 * A child widget of the floor: it takes the focus, answers keys, and tells a
 * screen reader what it is.
 */
G_DECLARE_FINAL_TYPE (HcFloorItem, hc_floor_item, HC, FLOOR_ITEM, GtkWidget)

/* Draws the item in its own frame: origin in the middle, mm. */
typedef void (*HcItemDraw) (const HcInk *ink, HcFloorItem *item, gpointer floor);

HcFloorItem *hc_floor_item_new (HcItemKind kind, const char *id, HcItemDraw draw, gpointer floor);
HcItemKind hc_floor_item_get_kind (HcFloorItem *self);
const char *hc_floor_item_get_id (HcFloorItem *self);
guint hc_floor_item_get_number (HcFloorItem *self);
void hc_floor_item_set_number (HcFloorItem *self, guint number);
gpointer hc_floor_item_get_part (HcFloorItem *self);
void hc_floor_item_keep_part (HcFloorItem *self, gpointer part);
gboolean hc_floor_item_set_part (HcFloorItem *self, gpointer part);
const HcItemFrame *hc_floor_item_get_frame (HcFloorItem *self);
void hc_floor_item_set_frame (HcFloorItem *self, const HcItemFrame *frame);
void hc_floor_item_move (HcFloorItem *self, const HcItemFrame *frame);
void hc_floor_item_place (HcFloorItem *self);
gboolean hc_floor_item_is_selected (HcFloorItem *self);
void hc_floor_item_set_selected (HcFloorItem *self, gboolean selected);
gboolean hc_floor_item_set_level (HcFloorItem *self, HcLevel level);
HcLevel hc_floor_item_get_level (HcFloorItem *self);
void hc_floor_item_tell (HcFloorItem *self, const char *label, const char *place);

G_END_DECLS
