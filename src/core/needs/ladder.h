/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * How many birds a plan holds, and what runs out next. */
#pragma once

#include "needs/check.h"

G_BEGIN_DECLS

/**
 * HcLadderQuestion:
 * @HC_LADDER_THIS_MIX: the flock as it is, scaled
 * @HC_LADDER_MORE_OF: more of one kind, the rest fixed
 * @HC_LADDER_ONE_KIND: an otherwise empty house with one kind alone
 */
typedef enum
{
  HC_LADDER_THIS_MIX,
  HC_LADDER_MORE_OF,
  HC_LADDER_ONE_KIND,
} HcLadderQuestion;

/**
 * HcRung:
 * @need: the need that runs out
 * @most: birds it carries at the aim, G_MAXINT64 when it never runs out
 * @code: (nullable): finding code when one bird more comes
 * @lift: smallest addition that would lift the rung, in @lift_unit
 * @lift_unit: a unit word ("mm", "boxes", "mm2"…)
 * @lift_to: birds carried by this need after that addition, as checked
 */
typedef struct
{
  HcNeedId need;
  gint64 most;
  const char *code;
  double lift;
  const char *lift_unit;
  gint64 lift_to;
} HcRung;

typedef struct _HcLadder HcLadder;

HcLadder *hc_ladder_climb (HcCheckCache *cache, HcPlan *plan, HcBook *book, HcFlock *flock,
                           HcLadderQuestion question, const char *kind, HcCondition condition,
                           HcLevel aim) G_GNUC_WARN_UNUSED_RESULT;
HcLadder *hc_ladder_ref (HcLadder *ladder);
void hc_ladder_unref (HcLadder *ladder);
gint64 hc_ladder_get_most (const HcLadder *ladder);
gint64 hc_ladder_get_there (const HcLadder *ladder);
guint hc_ladder_get_n_rungs (const HcLadder *ladder);
const HcRung *hc_ladder_get_rung (const HcLadder *ladder, guint rung);

/**
 * HcHeadline:
 * @good: birds carried in comfort, on the worse of ordinary day and shut in
 * @least: birds carried at most
 * @need: what runs out first
 * @birds: birds there are
 * @mend_first: (array): condition needs that are too little
 */
typedef struct
{
  gint64 good;
  gint64 least;
  HcNeedId need;
  HcCondition worse;
  gint64 birds;
  gboolean mend_first[HC_N_NEEDS];
} HcHeadline;

void hc_headline_work_out (HcCheckCache *cache, HcPlan *plan, HcBook *book, HcFlock *flock,
                           HcHeadline *headline);

G_DEFINE_AUTOPTR_CLEANUP_FUNC (HcLadder, hc_ladder_unref)

G_END_DECLS
