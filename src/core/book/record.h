/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Reading the members of one JSON object, checked as they are read. */
#pragma once

#include "book/reading.h"

G_BEGIN_DECLS

/* Private to book/. Every member asked for is noted; hc_record_close() finds
 * fault with the others, so that a slip of the pen does not pass unseen. */
HcRecord *hc_record_new (HcReading *reading, JsonObject *object, const char *place);
void hc_record_close (HcRecord *self);
HcReading *hc_record_get_reading (HcRecord *self);
void hc_record_fault (HcRecord *self, const char *member, const char *format,
                      ...) G_GNUC_PRINTF (3, 4);

gboolean hc_record_has (HcRecord *self, const char *member);
const char *hc_record_text (HcRecord *self, const char *member);
const char *hc_record_maybe_text (HcRecord *self, const char *member);
const char *hc_record_id (HcRecord *self, const char *member);
double hc_record_number (HcRecord *self, const char *member, double least, double most);
double hc_record_maybe_number (HcRecord *self, const char *member, double least,
                               double most, double otherwise);
int hc_record_whole (HcRecord *self, const char *member, int least, int most);
int hc_record_maybe_whole (HcRecord *self, const char *member, int least, int most,
                           int otherwise);
gboolean hc_record_flag (HcRecord *self, const char *member);
int hc_record_choice (HcRecord *self, const char *member, const char *const *words);
guint hc_record_choices (HcRecord *self, const char *member, const char *const *words);

guint hc_record_count (HcRecord *self, const char *member);
int hc_record_whole_at (HcRecord *self, const char *member, guint index, int least, int most);
const char *hc_record_text_at (HcRecord *self, const char *member, guint index);
HcRecord *hc_record_open_at (HcRecord *self, const char *member, guint index);
HcRecord *hc_record_open (HcRecord *self, const char *member);
gpointer hc_record_table (HcRecord *self, const char *member, gsize size, HcReadItem read,
                          gpointer user_data, guint *n_items);

G_DEFINE_AUTOPTR_CLEANUP_FUNC (HcRecord, hc_record_close)

G_END_DECLS
