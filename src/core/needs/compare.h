/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * How each need, and the birds a house carries, moved from one plan to another. */
#pragma once

#include "needs/ladder.h"

G_BEGIN_DECLS

/**
 * HcNeedMove: (skip)
 * @need: a need
 * @applied: whether it had something to say before
 * @applies: whether it has after
 * @before: how well it was met before
 * @after: how well it is met after
 * @served_before: birds well served before
 * @served_after: birds well served after
 */
typedef struct
{
  HcNeedId need;
  gboolean applied;
  gboolean applies;
  HcLevel before;
  HcLevel after;
  gint64 served_before;
  gint64 served_after;
} HcNeedMove;

/**
 * HcComparison: (skip)
 * @needs: every need, by its id
 * @before: how many birds before
 * @after: how many birds after
 */
typedef struct
{
  HcNeedMove needs[HC_N_NEEDS];
  HcHeadline before;
  HcHeadline after;
} HcComparison;

void hc_comparison_make (HcComparison *self, HcCheckCache *cache, HcBook *book, HcPlan *before,
                         HcPlan *after, HcFlock *flock, HcCondition condition);
gboolean hc_comparison_has_moved (const HcComparison *self, HcNeedId need);

G_END_DECLS
