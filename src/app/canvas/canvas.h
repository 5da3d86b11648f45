/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A drawing of the plan with things to choose, drag and reach by keys. */
#pragma once

#include "app/canvas/canvas-item.h"
#include "app/canvas/canvas-sheet.h"
#include "app/canvas/drag.h"
#include "app/canvas/sight.h"
#include "app/window/panel.h"

#include "drawing/palette.h"

G_BEGIN_DECLS

#define HC_TYPE_CANVAS (hc_canvas_get_type ())
#define HC_CANVAS(object) (G_TYPE_CHECK_INSTANCE_CAST (object, HC_TYPE_CANVAS, HcCanvas))
#define HC_CANVAS_CLASS(klass) (G_TYPE_CHECK_CLASS_CAST (klass, HC_TYPE_CANVAS, HcCanvasClass))
#define HC_CANVAS_GET_CLASS(object)                                                               \
  (G_TYPE_INSTANCE_GET_CLASS (object, HC_TYPE_CANVAS, HcCanvasClass))

/**
 * HcCanvas: (skip)
 * @sight: what part of it is looked at
 * @layout: (nullable): what it shows
 * @items: its children by the ids of their parts
 * @handles: those that move a part of what is selected
 * @handled: (nullable): id of what they belong to
 * @drag: (nullable): the drag that goes on
 * @draws: whether a press draws something new and chooses nothing
 * @ground: the lowest sheet
 * @over: the lowest sheet above the items
 * @marks: the sheet of what is being done
 *
 * Its fields are for the canvases made of it, and for its own files.
 */
typedef struct
{
  HcPanel parent_instance;

  HcSight sight;
  gboolean fitted;
  gboolean dark;
  gboolean walking;
  gboolean draws;
  double pointer_x;
  double pointer_y;
  HcSight pinch_from;
  HcDrag *drag;

  HcLayout *layout;
  GHashTable *items;
  GPtrArray *handles;
  char *handled;

  GtkWidget *ground;
  GtkWidget *over;
  GtkWidget *marks;
} HcCanvas;

/**
 * HcCanvasClass: (skip)
 * @get_extents: a box round all there is, mm
 * @follow_handles: gives handles to what is selected alone
 * @find_handle: finds where what a handle moves is; %FALSE when it is gone
 * @look_under: (nullable): what is meant by a press on a child
 * @begin_drag: says what a drag that begins on a thing does
 * @get_drag_plan: the plan it leads to
 * @get_drag_label: what the step is called
 * @drag_ended: after a drag
 * @tell_item: says of an item what it is and where
 * @focused: the focus came to a thing
 * @nudge: an arrow key moves what is chosen
 * @stop: ends what the canvas does of its own; %FALSE when it does nothing
 */
typedef struct
{
  HcPanelClass parent_class;

  HcBox (*get_extents) (HcCanvas *self);
  void (*follow_handles) (HcCanvas *self);
  gboolean (*find_handle) (HcCanvas *self, HcCanvasItem *handle, HcItemFrame *frame);
  HcCanvasItem *(*look_under) (HcCanvas *self, HcCanvasItem *item, HcPoint at);
  void (*begin_drag) (HcCanvas *self, HcDrag *drag, HcCanvasItem *item);
  HcPlan *(*get_drag_plan) (HcCanvas *self, HcDrag *drag, GError **error);
  const char *(*get_drag_label) (HcCanvas *self, const HcDrag *drag);
  void (*drag_ended) (HcCanvas *self, const HcDrag *drag);
  void (*tell_item) (HcCanvas *self, HcCanvasItem *item);
  void (*focused) (HcCanvas *self, HcCanvasItem *item);
  void (*nudge) (HcCanvas *self, HcCanvasItem *focus, HcPoint by);
  gboolean (*stop) (HcCanvas *self);
} HcCanvasClass;

GType hc_canvas_get_type (void);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (HcCanvas, g_object_unref)

const HcSight *hc_canvas_get_sight (HcCanvas *self);
void hc_canvas_set_sight (HcCanvas *self, const HcSight *sight);
void hc_canvas_fit (HcCanvas *self);
void hc_canvas_zoom (HcCanvas *self, double factor);
const HcPalette *hc_canvas_get_palette (HcCanvas *self);
GtkWidget *hc_canvas_add_sheet (HcCanvas *self, HcCanvasSheetDraw draw,
                                HcCanvasSheetExtents extents);
void hc_canvas_redraw_sheets (HcCanvas *self);

HcCanvasItem *hc_canvas_get_item (HcCanvas *self, const char *id);
HcCanvasItem *hc_canvas_item_at (HcCanvas *self, double x_px, double y_px);
void hc_canvas_item_focused (HcCanvas *self, HcCanvasItem *item);

/* Bringing the children in step with the plan. */
HcCanvasItem *hc_canvas_item_for (HcCanvas *self, HcItemKind kind, gpointer part,
                                  HcItemDraw draw, guint storey);
HcCanvasItem *hc_canvas_add_handle (HcCanvas *self, const char *id, guint role, HcItemDraw draw);
void hc_canvas_remove_handles (HcCanvas *self);
void hc_canvas_move_handles (HcCanvas *self);
void hc_canvas_follow_handles (HcCanvas *self);
void hc_canvas_focus_handle (HcCanvas *self, const char *id, guint role);
void hc_canvas_tell_item (HcCanvas *self, HcCanvasItem *item);
void hc_canvas_tell_items (HcCanvas *self);
void hc_canvas_take_away (HcCanvas *self, gpointer item);
void hc_canvas_take_away_unseen (HcCanvas *self, GHashTable *seen);
gboolean hc_canvas_follow_levels (HcCanvas *self, HcItemKind kind);
void hc_canvas_follow_selection (HcCanvas *self);

/* Choosing, by pointer and by keys. */
void hc_canvas_choose (HcCanvas *self, HcCanvasItem *item, gboolean add);
void hc_canvas_show_parts (HcCanvas *self, const char *const *ids);
void hc_canvas_show_part (HcCanvas *self, const char *id);
const char *const *hc_canvas_get_selection (HcCanvas *self);
char **hc_canvas_get_selected (HcCanvas *self, HcItemKind kind) G_GNUC_WARN_UNUSED_RESULT;
gboolean hc_canvas_is_chosen_alone (HcCanvas *self, HcCanvasItem *item);
HcPlan *hc_canvas_get_plan (HcCanvas *self);
gboolean hc_canvas_apply (HcCanvas *self, HcPlan *plan, GError *error, const char *label,
                          const char *merge);
void hc_canvas_look_further (HcCanvas *self, HcPoint by);
void hc_canvas_remove_selected (HcCanvas *self);

/* Dragging. */
HcDrag *hc_canvas_new_drag (HcCanvas *self, HcCanvasItem *item,
                            HcPoint from) G_GNUC_WARN_UNUSED_RESULT;
void hc_canvas_nudge_item (HcCanvas *self, HcCanvasItem *item, HcPoint by);
void hc_canvas_cancel_drag (HcCanvas *self);
void hc_canvas_add_gestures (HcCanvas *self);

/* Drawing. */
void hc_canvas_set_accent (const HcInk *ink, gpointer canvas, double opacity);
void hc_canvas_draw_outline (const HcInk *ink, HcCanvasItem *item, gpointer canvas);
void hc_canvas_stroke_outline (const HcInk *ink, HcCanvasItem *item, gpointer canvas);
void hc_canvas_draw_handle (const HcInk *ink, HcCanvasItem *item, gboolean round,
                            gpointer canvas);
void hc_canvas_draw_band (const HcInk *ink, HcCanvas *self);
void hc_canvas_draw_caught (const HcInk *ink, HcCanvas *self);

/* Keys. */
gboolean hc_canvas_focus (GtkWidget *widget, GtkDirectionType direction);
void hc_canvas_class_add_actions (GtkWidgetClass *klass);

G_END_DECLS
