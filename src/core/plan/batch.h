/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A group of birds of one kind and age. */
#pragma once

#include "base/part.h"
#include "plan/leaving.h"
#include "plan/move.h"

G_BEGIN_DECLS

/**
 * HcBatchValues:
 * @name: what the keeper calls them
 * @breed: id of the breed, empty when only the kind is known
 * @kind: id of the kind of bird, empty when the breed tells
 * @females: hens, ducks, geese, or day-old birds taken to be female
 * @males: cocks, drakes, ganders
 * @hatched: the day they hatched, 0 for grown birds of unknown age
 * @pen: id of their home pen, the one they came or hatched into
 * @came: the day they came from elsewhere, 0 for birds that were always here
 * @clutch: id of the eggs they hatched from, empty when from elsewhere
 * @moves: (element-type HcMove): later homes of all or some of them
 * @leavings: (element-type HcLeaving): losses, sales and harvests
 *
 * @females and @males are those there were at first.
 */
typedef struct
{
  char *name;
  char *breed;
  char *kind;
  int females;
  int males;
  guint32 hatched;
  char *pen;
  guint32 came;
  char *clutch;
  HcParts *moves;
  HcParts *leavings;
} HcBatchValues;

HC_DECLARE_PART (HcBatch, hc_batch)

G_END_DECLS
