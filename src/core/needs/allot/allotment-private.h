/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * How an allotment is filled, before it is handed out. */
#pragma once

#include "needs/allotment.h"

G_BEGIN_DECLS

/* Private to needs/. */
HcAllotment *hc_allotment_new (gboolean exact) G_GNUC_WARN_UNUSED_RESULT;
guint hc_allotment_add_offer (HcAllotment *self, HcOffer *offer);
void hc_allotment_add_seat (HcAllotment *self, const HcSeat *seat);
void hc_allotment_set_left_over (HcAllotment *self, guint body, gint64 birds);

G_END_DECLS
