/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Reading the openings a keeper can add. */
#pragma once

#include "book/record.h"

G_BEGIN_DECLS

/* Private to book/. */
void hc_opening_type_read (HcRecord *record, gpointer item, gpointer user_data);

G_END_DECLS
