/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * How many birds one need carries, and what would make it carry more. */
#pragma once

#include "needs/capacity/question.h"
#include "needs/count.h"

G_BEGIN_DECLS

/* More birds than any house: past them a need never runs out. */
#define HC_RUNG_NEVER (1 << 20)

/* Private to needs/. @places are the spaces of @need; one kind alone is asked
 * of each of them by itself, all other flocks of all of them together. */
typedef struct
{
  const HcQuestion *question;
  const HcNeed *need;
  HcLevel aim;
  HcNeedContext *places;
  guint n_places;
} HcRungSearch;

void hc_rung_search_init (HcRungSearch *self, HcCase *about, const HcQuestion *question,
                          const HcNeed *need, HcLevel aim);
void hc_rung_search_clear (HcRungSearch *self);
gboolean hc_rung_search_reaches (const HcRungSearch *self, gint64 birds);
gint64 hc_rung_search_find_most (const HcRungSearch *self);
gint64 hc_rung_search_find_most_in (const HcRungSearch *self, guint place);
void hc_rung_search_put_in (const HcRungSearch *self, guint place, gint64 birds);
double hc_rung_search_lift_place (const HcRungSearch *self, guint place, HcRung *rung);
void hc_rung_search_find_lift (const HcRungSearch *self, HcRung *rung);

G_END_DECLS
