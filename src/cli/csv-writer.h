/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Writes a table a field at a time, as RFC 4180 says. */
#pragma once

#include <glib.h>

G_BEGIN_DECLS

/**
 * HcCsvWriter:
 * @out: what is written to
 * @filled: whether the row has a field yet
 */
typedef struct
{
  GString *out;
  gboolean filled;
} HcCsvWriter;

void hc_csv_text (HcCsvWriter *self, const char *text);
void hc_csv_number (HcCsvWriter *self, double number);
void hc_csv_count (HcCsvWriter *self, gint64 count);
void hc_csv_end_row (HcCsvWriter *self);

G_END_DECLS
