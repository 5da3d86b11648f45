/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Who gets which place, and who is left over. */
#pragma once

#include "book/level.h"
#include "supply/offer.h"

G_BEGIN_DECLS

/**
 * HcSeat:
 * @offer: index of the offer among those compared
 * @place: index of the place in it
 * @body: index of the body
 * @count: birds of it that have this place
 */
typedef struct
{
  guint offer;
  guint place;
  guint body;
  gint64 count;
} HcSeat;

/* Immutable, atomically reference-counted: the answer of a counting need. */
typedef struct _HcAllotment HcAllotment;

HcAllotment *hc_allotment_ref (HcAllotment *allotment);
void hc_allotment_unref (HcAllotment *allotment);
guint hc_allotment_get_n_seats (const HcAllotment *allotment);
const HcSeat *hc_allotment_get_seat (const HcAllotment *allotment, guint seat);
HcOffer *hc_allotment_get_offer (const HcAllotment *allotment, guint offer);
gint64 hc_allotment_get_served (const HcAllotment *allotment);
gint64 hc_allotment_get_left_over (const HcAllotment *allotment, guint body);
gboolean hc_allotment_is_exact (const HcAllotment *allotment);

G_DEFINE_AUTOPTR_CLEANUP_FUNC (HcAllotment, hc_allotment_unref)

G_END_DECLS
