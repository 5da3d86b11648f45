/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The places of a space, gathered from its rooms. */
#pragma once

#include "needs/context.h"

G_BEGIN_DECLS

/* Private to needs/. @offer is %NULL for a place only thought of. */
typedef struct
{
  HcOffer *offer;
  guint index;
  const HcPlace *place;
  guint sort;
  double amount;
  HcBodies suits;
} HcFound;

/* Private to needs/: holds the offers its places are from. */
typedef struct
{
  GArray *places;
  GPtrArray *offers;
} HcFounds;

typedef gboolean (*HcRoomTest) (const HcRoom *room);

void hc_founds_init (HcFounds *self);
void hc_founds_clear (HcFounds *self);
void hc_founds_gather (HcFounds *self, const HcNeedContext *context, HcOfferKind kind,
                       guint sort, HcLevel level, HcRoomTest test);
double hc_founds_sum (const HcFounds *self, guint sort);
const char *hc_found_get_id (const HcFound *found);

#define hc_founds_get(self, at) (&g_array_index ((self)->places, HcFound, at))

G_END_DECLS
