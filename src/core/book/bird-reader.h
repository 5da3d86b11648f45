/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Reading kinds of bird and breeds. */
#pragma once

#include "book/breed.h"
#include "book/record.h"

G_BEGIN_DECLS

/* Private to book/. HcReadItem for a kind and for a breed, each with an
 * HcDataContext. */
void hc_kind_read (HcRecord *record, gpointer item, gpointer user_data);
void hc_breed_read (HcRecord *record, gpointer item, gpointer user_data);

G_END_DECLS
