/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The card of one group of birds. */
#pragma once

#include "app/window/panel.h"

G_BEGIN_DECLS

#define HC_TYPE_GROUP_CARD (hc_group_card_get_type ())
G_DECLARE_FINAL_TYPE (HcGroupCard, hc_group_card, HC, GROUP_CARD, GtkBox)

GtkWidget *hc_group_card_new (HcPanel *panel);
void hc_group_card_show (HcGroupCard *self, HcBatch *batch);

const char *hc_group_card_get_id (HcGroupCard *self);

G_END_DECLS
