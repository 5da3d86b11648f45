/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The largest number up to which all numbers will do. */
#pragma once

#include <glib.h>

G_BEGIN_DECLS

typedef gboolean (*HcSearchTest) (gint64 number, gpointer data);

/* Private to needs/. */
gint64 hc_search_most (HcSearchTest test, gpointer data, gint64 known, gint64 limit);
double hc_search_least_amount (gboolean (*test) (double amount, gpointer data), gpointer data,
                               double step, double limit);

G_END_DECLS
