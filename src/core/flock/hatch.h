/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Eggs to hatch, with odds. */
#pragma once

#include "base/chance.h"
#include "book/book.h"
#include "plan/plan.h"

G_BEGIN_DECLS

/**
 * HcHatchShares:
 * @fertile: the share of eggs set that are fertile
 * @hatch: the share of those that hatch
 * @eggs_seen: eggs of this kind the keeper has results of
 */
typedef struct
{
  HcBeta fertile;
  HcBeta hatch;
  int eggs_seen;
} HcHatchShares;

const HcKind *hc_clutch_get_kind_of (const HcClutch *clutch, HcBook *book);
void hc_hatch_shares_init (HcHatchShares *self, const HcPlan *plan, HcBook *book,
                           const HcClutch *clutch);
void hc_hatch_shares_of_kind (HcHatchShares *self, const HcPlan *plan, HcBook *book,
                              const HcKind *kind);
int hc_hatch_find_setting (const HcResultValues *result, const HcClutchValues *clutch,
                           const HcHatching *hatching);
HcOdds *hc_hatch_get_odds (const HcHatchShares *shares, guint eggs,
                           HcClutchWho who) G_GNUC_WARN_UNUSED_RESULT;
guint hc_hatch_find_eggs (const HcHatchShares *shares, guint wanted, HcClutchWho who,
                          double certainty);

G_END_DECLS
