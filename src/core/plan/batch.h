/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A group of birds of one kind and age. */
#pragma once

#include "base/part.h"

G_BEGIN_DECLS

/**
 * HcBatchValues:
 * @name: what the keeper calls them
 * @breed: id of the breed, empty when only the kind is known
 * @kind: id of the kind of bird, empty when the breed tells
 * @females: hens, ducks, geese, or day-old birds taken to be female
 * @males: cocks, drakes, ganders
 * @hatched: the day they hatched, 0 for grown birds of unknown age
 * @pen: id of their home pen
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
} HcBatchValues;

HC_DECLARE_PART (HcBatch, hc_batch)

G_END_DECLS
