/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What the files of the floor share. */
#pragma once

#include "app/floor/floor-sheet.h"
#include "app/floor/floor.h"

G_BEGIN_DECLS

typedef struct _HcFloorDrag HcFloorDrag;
void hc_floor_drag_free (HcFloorDrag *drag);

struct _HcFloor
{
  HcPanel parent_instance;

  GSettings *settings;
  HcSight sight;
  gboolean fitted;
  gboolean dark;
  HcFloorTool tool;
  HcFloorDrag *drag;
  double pointer_x;
  double pointer_y;
  HcSight pinch_from;
  gboolean walking;

  HcLayout *layout;
  HcUnits units;
  GHashTable *items;
  GPtrArray *handles;
  char *handled;
  guint handled_sides;

  GtkWidget *ground;
  GtkWidget *birds;
  GtkWidget *words;
  GtkWidget *marks;
};

/* Bringing the children in step with the plan. */
void hc_floor_follow_plan (HcFloor *self);
void hc_floor_follow_check (HcFloor *self);
void hc_floor_follow_selection (HcFloor *self);

/* Handles of what is selected: corners, walls, edges, the turning grip. */
void hc_floor_take_away (HcFloor *self, gpointer item);
void hc_floor_follow_handles (HcFloor *self);
void hc_floor_place_handles (HcFloor *self);
void hc_floor_focus_handle (HcFloor *self, const char *id, guint role);
guint hc_floor_count_sides (HcFloor *self, const char *id);

/* Pointer and keys. */
void hc_floor_add_gestures (HcFloor *self);
gboolean hc_floor_focus (GtkWidget *widget, GtkDirectionType direction);
void hc_floor_class_add_actions (GtkWidgetClass *klass);
void hc_floor_add_drop (HcFloor *self);
void hc_floor_choose (HcFloor *self, HcFloorItem *item, gboolean add);
HcFloorItem *hc_floor_item_at (HcFloor *self, double x_px, double y_px);

/* Drawing of the sheets. */
void hc_floor_draw_ground (const HcInk *ink, gpointer floor);
void hc_floor_draw_birds (const HcInk *ink, gpointer floor);
void hc_floor_draw_marks (const HcInk *ink, gpointer floor);
void hc_floor_draw_fitting (const HcInk *ink, HcFloorItem *item, gpointer floor);
void hc_floor_draw_opening (const HcInk *ink, HcFloorItem *item, gpointer floor);
void hc_floor_draw_pen (const HcInk *ink, HcFloorItem *item, gpointer floor);
void hc_floor_draw_outline (const HcInk *ink, HcFloorItem *item, gpointer floor);
void hc_floor_draw_words (const HcInk *ink, gpointer floor);
void hc_floor_draw_distances (const HcInk *ink, HcFloor *self);
gboolean hc_floor_get_marks_extents (gpointer floor, graphene_rect_t *extents);
void hc_floor_draw_handle (const HcInk *ink, HcFloorItem *item, gpointer floor);

HcBox hc_floor_get_extents (HcFloor *self);

G_END_DECLS
