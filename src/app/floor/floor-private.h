/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What the files of the floor share. */
#pragma once

#include "app/floor/floor.h"

G_BEGIN_DECLS

struct _HcFloor
{
  HcCanvas canvas;

  GSettings *settings;
  HcFloorTool tool;
  HcUnits units;
  guint handled_sides;

  GtkWidget *birds;
  GtkWidget *words;
};

/* Bringing the children in step with the plan. */
void hc_floor_follow_plan (HcFloor *self);
void hc_floor_follow_check (HcFloor *self);
HcBox hc_floor_get_extents (HcCanvas *canvas);

/* Handles of what is selected: corners, walls, edges, the turning grip. */
void hc_floor_follow_handles (HcCanvas *canvas);
gboolean hc_floor_find_handle (HcCanvas *canvas, HcCanvasItem *handle, HcItemFrame *frame);
guint hc_floor_count_sides (HcFloor *self, const char *id);

/* Drags. */
void hc_floor_begin_drag (HcCanvas *canvas, HcDrag *drag, HcCanvasItem *item);
HcPlan *hc_floor_get_drag_plan (HcCanvas *canvas, HcDrag *drag, GError **error);
const char *hc_floor_get_drag_label (HcCanvas *canvas, const HcDrag *drag);
void hc_floor_drag_ended (HcCanvas *canvas, const HcDrag *drag);

/* Pointer and keys. */
void hc_floor_nudge (HcCanvas *canvas, HcCanvasItem *focus, HcPoint by);
void hc_floor_class_add_actions (GtkWidgetClass *klass);
void hc_floor_add_drop (HcFloor *self);

/* Drawing of the sheets. */
void hc_floor_draw_ground (const HcInk *ink, gpointer floor);
void hc_floor_draw_birds (const HcInk *ink, gpointer floor);
void hc_floor_draw_marks (const HcInk *ink, gpointer floor);
void hc_floor_draw_fitting (const HcInk *ink, HcCanvasItem *item, gpointer floor);
void hc_floor_draw_opening (const HcInk *ink, HcCanvasItem *item, gpointer floor);
void hc_floor_draw_pen (const HcInk *ink, HcCanvasItem *item, gpointer floor);
void hc_floor_draw_words (const HcInk *ink, gpointer floor);
void hc_floor_draw_distances (const HcInk *ink, HcFloor *self);
gboolean hc_floor_get_marks_extents (gpointer floor, graphene_rect_t *extents);
void hc_floor_draw_handle (const HcInk *ink, HcCanvasItem *item, gpointer floor);

G_END_DECLS
