/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * How long a day is light. */
#pragma once

#include <glib.h>

G_BEGIN_DECLS

double hc_daylight_hours (double latitude_deg, guint32 day);
gboolean hc_daylight_is_dark_half (double latitude_deg, guint32 day);

G_END_DECLS
