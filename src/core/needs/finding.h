/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What a need found: data; sentences are made of it in words/. */
#pragma once

#include "base/point.h"
#include "base/shape.h"
#include "book/level.h"
#include "book/standard.h"
#include "flock/body.h"

G_BEGIN_DECLS

/**
 * HcFindingLine:
 * @from: where it begins, in the plan
 * @to: where it ends
 *
 * A stretch of a wall, a fence or an opening that a finding is about.
 */
typedef struct
{
  HcPoint from;
  HcPoint to;
} HcFindingLine;

/**
 * HcFinding:
 * @code: (transfer none): what is wrong, for instance "roost.too-few-seats";
 *   words/ has a sentence for every code
 * @level: how bad: short stands under 'fix now', tight under 'worth doing'
 * @ids: (transfer none): ids of pens, fittings, openings and batches it is about
 * @birds: how many birds it touches, 0 when that is not the point
 * @more: how many others like it are told with it, their ids after its own
 * @kinds: bodies it touches, as a mask over the flock's table
 * @animals: (array zero-terminated=1): ids of the predators it is about, interned
 * @lines: (array length=n_lines): where it is
 * @n_lines: how many lines
 * @measured: what there is
 * @required: what the figure asks
 * @unit: a unit word of the book ("mm", "mm2", "birds", "boxes", "kg/m2"…)
 * @area: (nullable): floor it is about, where that can be shown: a landing strip
 * @figure: (nullable): id of the figure it is judged by
 * @standard: (nullable): the rules that figure is from
 */
typedef struct
{
  const char *code;
  HcLevel level;
  char **ids;
  gint64 birds;
  guint more;
  HcBodies kinds;
  const char *const *animals;
  const HcFindingLine *lines;
  guint n_lines;
  double measured;
  double required;
  const char *unit;
  HcShape *area;
  const char *figure;
  HcStandard *standard;
} HcFinding;

G_END_DECLS
