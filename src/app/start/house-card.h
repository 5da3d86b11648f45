/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The card of one ready house: what it looks like, how large it is to be. */
#pragma once

#include "begin/ready-house.h"

#include <gtk/gtk.h>

G_BEGIN_DECLS

#define HC_TYPE_HOUSE_CARD (hc_house_card_get_type ())
/**
 * HcHouseCard:
 *
 * Signal `begin` with an #HcPlan: the house, stretched to what was typed.
 */
G_DECLARE_FINAL_TYPE (HcHouseCard, hc_house_card, HC, HOUSE_CARD, GtkBox)

GtkWidget *hc_house_card_new (const HcReadyHouse *house);

G_END_DECLS
