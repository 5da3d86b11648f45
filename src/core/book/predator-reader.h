/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Reading predators. */
#pragma once

#include "book/record.h"

G_BEGIN_DECLS

/* Private to book/. HcReadItem for an HcPredator, with an
 * HcDataContext. */
void hc_predator_read (HcRecord *record, gpointer item, gpointer user_data);

G_END_DECLS
