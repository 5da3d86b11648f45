/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What the keeper's own hatches say. */
#pragma once

#include "flock/hatch.h"

G_BEGIN_DECLS

/**
 * HcHatchLearnt:
 * @eggs: eggs of that kind whose hatch was counted here
 * @book: share of eggs set that hatch, by the book
 * @learnt: the same when what was counted has been taken into account
 *
 * What was counted of a kind, and what follows.
 */
typedef struct
{
  int eggs;
  double book;
  double learnt;
} HcHatchLearnt;

void hc_hatch_learn_kind (const HcPlan *plan, HcBook *book, const HcKind *kind,
                          HcHatchLearnt *learnt);

G_END_DECLS
