/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A field for a day: typed as year-month-day or picked from a calendar. */
#pragma once

#include <gtk/gtk.h>

G_BEGIN_DECLS

#define HC_TYPE_DATE_FIELD (hc_date_field_get_type ())
/**
 * HcDateField:
 *
 * Signal `entered` when the keeper has set another day. No day is shown by a
 * text of the caller's.
 */
G_DECLARE_FINAL_TYPE (HcDateField, hc_date_field, HC, DATE_FIELD, GtkWidget)

GtkWidget *hc_date_field_new (const char *none);
void hc_date_field_set_day (HcDateField *self, guint32 day);
void hc_date_field_set_what (HcDateField *self, const char *what);
guint32 hc_date_field_get_day (HcDateField *self);
char *hc_date_field_format (guint32 day) G_GNUC_WARN_UNUSED_RESULT;

G_END_DECLS
