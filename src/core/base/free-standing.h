/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Things that stand so free that the floor around them is wide enough. */
#pragma once

#include "base/shape.h"

G_BEGIN_DECLS

void hc_free_standing_sort (HcShape *outline,
                            HcShape *const *footprints,
                            guint n_footprints,
                            double reach_mm,
                            GPtrArray *free_standing,
                            GPtrArray *others);
HcShape *hc_free_standing_cut_out (HcShape *floor,
                                   GPtrArray *free_standing) G_GNUC_WARN_UNUSED_RESULT;

G_END_DECLS
