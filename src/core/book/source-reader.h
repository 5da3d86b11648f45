/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Reading what was published. */
#pragma once

#include "book/record.h"

G_BEGIN_DECLS

/* Private to book/. */
void hc_source_read (HcRecord *record, gpointer item, gpointer user_data);

G_END_DECLS
