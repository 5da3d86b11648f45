/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Reading sizes of eggs, feeds and figures of care. */
#pragma once

#include "book/record.h"

G_BEGIN_DECLS

/* Private to book/. The context is the list's HcDataContext. */
void hc_egg_class_read (HcRecord *record, gpointer item, gpointer user_data);
void hc_feed_read (HcRecord *record, gpointer item, gpointer user_data);
void hc_care_read (HcRecord *record, gpointer item, gpointer user_data);

G_END_DECLS
