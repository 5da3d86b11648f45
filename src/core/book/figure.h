/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * One figure of a standard: what it is about, for whom, and who says so. */
#pragma once

#include "book/figure-unit.h"
#include "book/kind.h"
#include "book/level.h"
#include "book/source.h"

G_BEGIN_DECLS

/**
 * HcFigure:
 * @id: the figure's id in its standard, interned: what an own figure names
 * @name: need and measure, "roost.bar-to-bar", interned
 * @kinds: one bit a kind (1 << order); 0 means any bird or none in particular
 * @weeks_from: first week of life it applies to
 * @weeks_to: last week of life it applies to
 * @conditions: one bit a condition (1 << condition); 0 means all
 * @at_lay: whether it counts only birds at lay
 * @unit: the unit the source states it in
 * @evidence: what stands behind it
 * @source: (nullable): what was published
 * @place: (nullable): the article, table or page there
 * @note: (nullable): a remark in English; see hc_figure_get_note()
 * @standard: id of the standard it is stated in, interned
 * @reason: (nullable): why the keeper set an own figure
 *
 * What a limit and a demand have in common.
 */
typedef struct
{
  const char *id;
  const char *name;
  guint kinds;
  int weeks_from;
  int weeks_to;
  guint conditions;
  gboolean at_lay;
  HcFigureUnit unit;
  HcEvidence evidence;
  const HcSource *source;
  const char *place;
  const char *note;
  const char *standard;
  const char *reason;
} HcFigure;

const char *hc_figure_get_note (const HcFigure *self);
gboolean hc_figure_applies (const HcFigure *self, const HcKind *kind, int week,
                            HcCondition condition);

G_END_DECLS
