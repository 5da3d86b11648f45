/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What is kept between checks: houses, offers, rules with own figures. */
#pragma once

#include "needs/check.h"
#include "needs/climb/climb.h"
#include "supply/way.h"

G_BEGIN_DECLS

/* Private to needs/. What these return is good until the next check. */
HcHouse *hc_check_cache_get_house (HcCheckCache *cache, HcLayout *layout);
HcStandard *hc_check_cache_get_standard (HcCheckCache *cache, HcPlan *plan, HcBook *book);
guint hc_check_cache_get_table (HcCheckCache *cache, HcFlock *flock);
HcOffer *hc_check_cache_get_offer (HcCheckCache *cache, HcOfferKind kind,
                                   const HcOfferContext *context, guint table);
GPtrArray *hc_check_cache_get_room_findings (HcCheckCache *cache, HcRoom *room,
                                             HcStandard *standard,
                                             GPtrArray *(*judge) (HcRoom *room,
                                                                  HcStandard *standard));
HcShape *hc_check_cache_get_way (HcCheckCache *cache, HcRoom *room, HcStandard *standard,
                                 const HcWalker *walker);
const HcClimb *hc_check_cache_get_climb (HcCheckCache *cache, HcRoom *room, HcStandard *standard);
guint64 hc_check_cache_get_n_worked_out (const HcCheckCache *cache);

G_END_DECLS
