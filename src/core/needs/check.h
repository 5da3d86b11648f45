/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A plan judged: every need's answer in one condition on one day. */
#pragma once

#include "needs/need.h"

G_BEGIN_DECLS

/**
 * HcCheckCache:
 *
 * Keeps rooms and offers between checks, so that what did not change is not
 * worked out again. One for each thread that checks.
 */
typedef struct _HcCheckCache HcCheckCache;

HcCheckCache *hc_check_cache_new (void);
void hc_check_cache_free (HcCheckCache *cache);

#define HC_NEED_BIT(need) (1u << (need))
#define HC_NEEDS_ALL (HC_NEED_BIT (HC_N_NEEDS) - 1)

/* Immutable, atomically reference-counted. */
typedef struct _HcCheck HcCheck;

HcCheck *hc_check_plan (HcCheckCache *cache, HcPlan *plan, HcBook *book, HcCondition condition,
                        HcFlock *flock) G_GNUC_WARN_UNUSED_RESULT;
HcCheck *hc_check_needs (HcCheckCache *cache, HcPlan *plan, HcBook *book, HcCondition condition,
                         HcFlock *flock, guint needs) G_GNUC_WARN_UNUSED_RESULT;
HcCheck *hc_check_follow (HcCheck *before, HcCheckCache *cache, HcPlan *plan, HcBook *book,
                          HcFlock *flock) G_GNUC_WARN_UNUSED_RESULT;
HcCheck *hc_check_ref (HcCheck *check);
void hc_check_unref (HcCheck *check);

HcPlan *hc_check_get_plan (const HcCheck *check);
HcFlock *hc_check_get_flock (const HcCheck *check);
HcHouse *hc_check_get_house (const HcCheck *check);
HcCondition hc_check_get_condition (const HcCheck *check);
HcLevel hc_check_get_level (const HcCheck *check);

/* One need over the whole plan. Birds 'there' are those the need concerns. */
gboolean hc_check_applies (const HcCheck *check, HcNeedId need);
HcLevel hc_check_get_need_level (const HcCheck *check, HcNeedId need);
gint64 hc_check_get_birds (const HcCheck *check, HcNeedId need);
gint64 hc_check_get_served (const HcCheck *check, HcNeedId need, HcLevel aim);
guint hc_check_get_n_findings (const HcCheck *check, HcNeedId need);
const HcFinding *hc_check_get_finding (const HcCheck *check, HcNeedId need, guint finding);
guint hc_check_get_n_allotments (const HcCheck *check, HcNeedId need);
HcAllotment *hc_check_get_allotment (const HcCheck *check, HcNeedId need, guint allotment);
HcLevel hc_check_get_part_level (const HcCheck *check, const char *id);
HcLevel hc_check_get_pen_level (const HcCheck *check, const char *id);

G_DEFINE_AUTOPTR_CLEANUP_FUNC (HcCheckCache, hc_check_cache_free)
G_DEFINE_AUTOPTR_CLEANUP_FUNC (HcCheck, hc_check_unref)

G_END_DECLS
