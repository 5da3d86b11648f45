/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Shares out a number of whole birds in the proportions of another flock. */
#pragma once

#include <glib.h>

G_BEGIN_DECLS

void hc_apportion (const gint64 *weights, guint n_weights, gint64 total, gint64 *shares);

G_END_DECLS
