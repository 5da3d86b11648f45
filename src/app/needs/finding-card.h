/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * One thing that is wrong: what, why it matters, and where. */
#pragma once

#include "base/units.h"
#include "needs/check.h"

#include <gtk/gtk.h>

G_BEGIN_DECLS

#define HC_TYPE_FINDING_CARD (hc_finding_card_get_type ())
G_DECLARE_FINAL_TYPE (HcFindingCard, hc_finding_card, HC, FINDING_CARD, GtkBox)

GtkWidget *hc_finding_card_new (HcNeedId need);
void hc_finding_card_show (HcFindingCard *self, const HcCheck *check, const HcFinding *finding,
                           HcUnits units);

G_END_DECLS
