/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What a need may look at while it judges one space. */
#pragma once

#include "climate/house-night.h"
#include "needs/cache.h"
#include "needs/finding-private.h"
#include "needs/need.h"

G_BEGIN_DECLS

/* Private to needs/: one plan, one day, one condition. The standard for the
 * least is the one chosen; where that is a law that states only a minimum,
 * good and plenty are its fallback's. With @follows it is one picture of a drag,
 * and what is dear to work out waits for the end of it. */
typedef struct
{
  HcCheckCache *cache;
  HcPlan *plan;
  HcBook *book;
  const HcSiteValues *site;
  HcLayout *layout;
  HcHouse *house;
  HcFlock *flock;
  HcCondition condition;
  HcStandard *standard;
  HcStandard *aim;
  guint table;
  HcHouseNight *night;
  gboolean follows;
} HcCase;

void hc_case_init (HcCase *self, HcCheckCache *cache, HcPlan *plan, HcBook *book,
                   HcCondition condition, HcFlock *flock);
void hc_case_clear (HcCase *self);
gboolean hc_case_judges (const HcCase *self, const HcNeed *need);
HcCondition hc_case_get_condition (const HcCase *self, HcNeedScope scope);
guint hc_case_get_n_spaces (const HcCase *self, const HcNeed *need);
HcHouseNight *hc_case_get_night (HcCase *self);
HcStandard *hc_case_get_standard (const HcCase *self, HcLevel level);

/* Private to needs/. @counts are the birds that live in the space, by body.
 * @extra_amount of @extra_kind is added to what it offers, to ask 'what if'.
 * With @only_whether_all nobody asks how many are served, only whether all. */
struct _HcNeedContext
{
  HcCase *about;
  const HcNeed *need;
  const HcSpace *space;
  HcCondition condition;
  gint64 counts[HC_MOST_BODIES];
  HcOfferKind extra_kind;
  double extra_amount;
  gboolean only_whether_all;
};

void hc_need_context_init (HcNeedContext *self, HcCase *about, const HcNeed *need, guint space);
void hc_need_context_count (HcNeedContext *self, const HcFlock *flock);
guint hc_need_context_get_n_rooms (const HcNeedContext *self);
HcRoom *hc_need_context_get_room (const HcNeedContext *self, guint room);
gboolean hc_need_context_has_room (const HcNeedContext *self, guint room);
HcOffer *hc_need_context_get_offer (const HcNeedContext *self, HcRoom *room, HcOfferKind kind,
                                    HcLevel level);
double hc_need_context_sum_offer (const HcNeedContext *self, HcOfferKind kind, HcLevel level);
const HcBody *hc_need_context_get_body (const HcNeedContext *self, guint body);
guint hc_need_context_get_n_bodies (const HcNeedContext *self);
HcBodies hc_need_context_get_bodies (const HcNeedContext *self);
gint64 hc_need_context_count_birds (const HcNeedContext *self, HcBodies bodies);
const HcLimit *hc_need_context_find_limit (const HcNeedContext *self, const char *name,
                                           guint body, HcLevel level);
const HcLimit *hc_need_context_find_plain_limit (const HcNeedContext *self, const char *name,
                                                 HcLevel level);
const HcDemand *hc_need_context_find_demand (const HcNeedContext *self, const char *name,
                                             guint body, HcLevel level);
const HcFitting *hc_need_context_find_fitting (const HcNeedContext *self, const HcPlace *place);
void hc_need_context_name_pens (const HcNeedContext *self, HcFinding *finding);

G_END_DECLS
