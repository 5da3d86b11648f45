/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A drag on the floor: what it began on, and the plan it leads to. */
#pragma once

#include "app/floor/floor-private.h"

#include "plan/snap.h"

G_BEGIN_DECLS

typedef enum
{
  HC_DRAG_PAN,
  HC_DRAG_BAND,
  HC_DRAG_FITTINGS,
  HC_DRAG_OPENING,
  HC_DRAG_EDGE,
  HC_DRAG_TURN,
  HC_DRAG_CORNER,
  HC_DRAG_WALL,
  HC_DRAG_NEW_PEN,
} HcDragKind;

/**
 * HcFloorDrag:
 * @kind: what it does
 * @start: the plan when it began
 * @sight: the sight when it began
 * @from: where it began, mm
 * @to: where it is, mm
 * @id: id of what it began on
 * @role: the handle it began on
 * @ids: what moves with it
 * @new_ids: ids for what it makes
 * @claimed: whether it has moved far enough to be one
 * @free: whether nothing catches it (Ctrl held)
 * @even: whether it keeps to even steps (Shift held)
 * @caught: lines that say what caught it
 */
struct _HcFloorDrag
{
  HcDragKind kind;
  HcPlan *start;
  HcSnapRules rules;
  HcSight sight;
  HcPoint from;
  HcPoint to;
  char *id;
  guint role;
  char **ids;
  char **new_ids;
  gboolean claimed;
  gboolean free;
  gboolean even;
  HcSnapCatch caught[2];
  guint n_caught;
};

HcFloorDrag *hc_floor_drag_new (HcFloor *self, HcFloorItem *item, HcPoint from)
    G_GNUC_WARN_UNUSED_RESULT;
HcPlan *hc_floor_drag_get_plan (HcFloor *self, HcFloorDrag *drag, GError **error)
    G_GNUC_WARN_UNUSED_RESULT;
const char *hc_floor_drag_get_label (const HcFloorDrag *drag);
void hc_floor_cancel_drag (HcFloor *self);

G_DEFINE_AUTOPTR_CLEANUP_FUNC (HcFloorDrag, hc_floor_drag_free)

G_END_DECLS
