/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A drag on a canvas: what it began on, and where it is. */
#pragma once

#include "app/canvas/sight.h"

#include "plan/snap.h"

G_BEGIN_DECLS

/**
 * HcDragKind:
 * @HC_DRAG_PAN: another part of the canvas comes into sight
 * @HC_DRAG_BAND: a band chooses what is in it
 * @HC_DRAG_OWN: the first of what one canvas alone can do
 */
typedef enum
{
  HC_DRAG_PAN,
  HC_DRAG_BAND,
  HC_DRAG_OWN,
} HcDragKind;

/**
 * HcDrag:
 * @kind: what it does: a #HcDragKind, or one of the canvas's own
 * @start: the plan when it began
 * @rules: distances that catch
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
typedef struct
{
  int kind;
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
} HcDrag;

void hc_drag_free (HcDrag *drag);
double hc_drag_get_reach_mm (const HcDrag *drag);
HcPoint hc_drag_get_way (const HcDrag *drag);

G_DEFINE_AUTOPTR_CLEANUP_FUNC (HcDrag, hc_drag_free)

G_END_DECLS
