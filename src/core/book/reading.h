/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * One data file being read, and the first thing found wrong with it. */
#pragma once

#include "book/keep.h"

#include <json-glib/json-glib.h>

G_BEGIN_DECLS

/* Private to book/. After the first fault readers return harmless values, so
 * that a file is read straight through and asked once at the end. */
typedef struct _HcReading HcReading;
typedef struct _HcRecord HcRecord;

#define HC_READING_MOST_BYTES (1024 * 1024)

/* Fills @item, zeroed memory of the size asked, from @record. */
typedef void (*HcReadItem) (HcRecord *record, gpointer item, gpointer user_data);

HcReading *hc_reading_new (const char *file, const char *text, gsize length,
                           HcKeep *keep) G_GNUC_WARN_UNUSED_RESULT;
gboolean hc_reading_finish (HcReading *self, GError **error);
HcRecord *hc_reading_get_root (HcReading *self);
HcKeep *hc_reading_get_keep (HcReading *self);
gboolean hc_reading_is_faulty (HcReading *self);
void hc_reading_fault (HcReading *self, const char *path, const char *format,
                       ...) G_GNUC_PRINTF (3, 4);

G_END_DECLS
