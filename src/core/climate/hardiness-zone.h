/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The coldest night of a plant hardiness zone. */
#pragma once

#include <glib.h>

G_BEGIN_DECLS

/**
 * HC_N_HARDINESS_ZONES:
 *
 * Halves of zones: 1a, 1b, … 13b.
 */
#define HC_N_HARDINESS_ZONES 26

char *hc_hardiness_zone_get_name (guint zone) G_GNUC_WARN_UNUSED_RESULT;
double hc_hardiness_zone_get_coldest_c (guint zone);
gboolean hc_hardiness_zone_find (double coldest_c, guint *zone);

G_END_DECLS
