/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What the files of the side view share. */
#pragma once

#include "app/side/side.h"

#include "drawing/side-scene.h"
#include "supply/catch-height.h"

G_BEGIN_DECLS

/**
 * HcSideHandle: (skip)
 * @HC_SIDE_TOP: raises the top, what it stands on stays
 * @HC_SIDE_BOTTOM: raises the sill, the top stays
 */
typedef enum
{
  HC_SIDE_TOP,
  HC_SIDE_BOTTOM,
} HcSideHandle;

struct _HcSide
{
  HcCanvas canvas;

  GSettings *settings;
  char *wall;
  double shift_mm;
  HcUnits units;
  HcSideScene *scene;
  GArray *places;
  HcHouse *start;
  HcHeightCatch caught;
  gboolean is_caught;
};

/* What is looked at. */
gboolean hc_side_find_cut (HcSide *self, const HcHouse *house, HcSideCut *cut);
HcHouse *hc_side_get_house (HcSide *self);
const char *hc_side_find_wall_for (HcSide *self, const char *id, HcPoint *at);

/* Bringing the children in step with the plan. */
void hc_side_follow_check (HcSide *self);
void hc_side_look_again (HcSide *self);
void hc_side_tell_item (HcCanvas *canvas, HcCanvasItem *item);
void hc_side_follow_handles (HcCanvas *canvas);
gboolean hc_side_find_handle (HcCanvas *canvas, HcCanvasItem *handle, HcItemFrame *frame);
HcBox hc_side_get_extents (HcCanvas *canvas);

/* Drags. */
void hc_side_begin_drag (HcCanvas *canvas, HcDrag *drag, HcCanvasItem *item);
HcPlan *hc_side_get_drag_plan (HcCanvas *canvas, HcDrag *drag, GError **error);
const char *hc_side_get_drag_label (HcCanvas *canvas, const HcDrag *drag);
void hc_side_drag_ended (HcCanvas *canvas, const HcDrag *drag);
void hc_side_nudge (HcCanvas *canvas, HcCanvasItem *focus, HcPoint by);
gboolean hc_side_has_measure (HcSide *self, HcFitting *fitting, const char *measure);

/* Drawing. */
void hc_side_draw_picture (const HcInk *ink, gpointer side);
void hc_side_draw_marks (const HcInk *ink, gpointer side);
void hc_side_draw_thing (const HcInk *ink, HcCanvasItem *item, gpointer side);
void hc_side_draw_handle (const HcInk *ink, HcCanvasItem *item, gpointer side);

G_END_DECLS
