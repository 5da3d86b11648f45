/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Reading the lives of birds. */
#pragma once

#include "book/record.h"

G_BEGIN_DECLS

/* Private to book/. HcReadItem for an HcLife and an HcCompost, each with an
 * HcDataContext. */
void hc_life_read (HcRecord *record, gpointer item, gpointer user_data);
void hc_compost_read (HcRecord *record, gpointer item, gpointer user_data);

G_END_DECLS
