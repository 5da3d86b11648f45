/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * An empty house filled with one kind of bird. */
#pragma once

#include "needs/capacity/rung.h"

G_BEGIN_DECLS

/* Private to needs/. */
gint64 hc_alone_add (gint64 birds, gint64 more);
gint64 hc_alone_count_birds (HcCase *about, const HcRungSearch *searches, guint n_searches);
gint64 hc_alone_sum_rung (const HcRungSearch *search);
void hc_alone_find_lift (const HcRungSearch *search, HcRung *rung);

G_END_DECLS
