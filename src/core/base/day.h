/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Days as they stand in files and calls: 2026-11-25. */
#pragma once

#include <glib.h>

G_BEGIN_DECLS

#define HC_DAYS_IN_WEEK 7

gboolean hc_day_parse (const char *text, gsize length, guint32 *day);
char *hc_day_format (guint32 day) G_GNUC_WARN_UNUSED_RESULT;
guint hc_day_get_day_of_year (guint32 day);

G_END_DECLS
