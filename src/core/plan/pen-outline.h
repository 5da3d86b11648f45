/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Private to core: walls for an outline, shared with walls that are there. */
#pragma once

#include "plan/new-ids.h"

G_BEGIN_DECLS

HcPoint *hc_outline_lean_on_walls (const HcLayout *layout, const HcPoint *corners,
                                   guint n_corners) G_GNUC_WARN_UNUSED_RESULT;
HcLayout *hc_layout_with_outline (HcPlan *plan, const HcWallValues *walls, const HcPoint *corners,
                                  guint n_corners, HcNewIds *ids, char ***ring,
                                  GError **error) G_GNUC_WARN_UNUSED_RESULT;

G_END_DECLS
