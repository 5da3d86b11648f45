/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The flock through weeks and years, and how the house serves it day by day. */
#pragma once

#include "needs/tally.h"
#include "season/events.h"

G_BEGIN_DECLS

/**
 * HC_YEAR_MOST_WEEKS:
 *
 * The longest stretch that is looked at: ten years.
 */
#define HC_YEAR_MOST_WEEKS 520

/**
 * HcYearDay:
 * @day: the Julian day; what is said of it holds until the next
 * @flock: the birds
 * @kg: their live mass together
 * @tallies: every need that applies, on an ordinary day and shut in
 *
 * One day on which something changes, or a week begins.
 */
typedef struct
{
  guint32 day;
  HcFlock *flock;
  double kg;
  HcTally tallies[2];
} HcYearDay;

/* Immutable, atomically reference-counted; may be made on one thread and read
 * on another. */
typedef struct _HcYear HcYear;

/**
 * HcYearScope:
 * @HC_YEAR_COUNTING: the needs that count birds
 * @HC_YEAR_EVERY_DAY: the same, and not a day is left out
 * @HC_YEAR_EVERY_NEED: all needs, through the whole check of each day
 */
typedef enum
{
  HC_YEAR_COUNTING,
  HC_YEAR_EVERY_DAY,
  HC_YEAR_EVERY_NEED,
} HcYearScope;

HcYear *hc_year_work_out (HcTallier *tallier, HcPlan *plan, guint32 from, guint weeks,
                          HcYearScope scope) G_GNUC_WARN_UNUSED_RESULT;
HcYear *hc_year_ref (HcYear *self);
void hc_year_unref (HcYear *self);

HcPlan *hc_year_get_plan (const HcYear *self);
guint32 hc_year_get_from (const HcYear *self);
guint32 hc_year_get_until (const HcYear *self);
const HcTimeline *hc_year_get_timeline (const HcYear *self);
const GArray *hc_year_get_bands (const HcYear *self);
const GArray *hc_year_get_events (const HcYear *self);

guint hc_year_get_n_days (const HcYear *self);
const HcYearDay *hc_year_get_day (const HcYear *self, guint index);
guint hc_year_find_day (const HcYear *self, guint32 day);
gboolean hc_year_find_worst (const HcYear *self, guint *index, HcCondition *condition);
gboolean hc_year_find_worst_of (const HcYear *self, HcNeedId need, guint *index,
                                HcCondition *condition);
guint hc_year_find_most_birds (const HcYear *self);
HcCheck *hc_year_check (const HcYear *self, HcCheckCache *cache, guint index,
                        HcCondition condition) G_GNUC_WARN_UNUSED_RESULT;

const HcTally *hc_year_day_get_worse (const HcYearDay *self, HcCondition *condition);

G_DEFINE_AUTOPTR_CLEANUP_FUNC (HcYear, hc_year_unref)

G_END_DECLS
