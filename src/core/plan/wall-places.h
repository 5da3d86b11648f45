/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Free places in a wall for a door, a window or a vent. */
#pragma once

#include "plan/layout.h"

G_BEGIN_DECLS

double hc_layout_get_wall_length (const HcLayout *layout, const char *wall);
gboolean hc_layout_find_place_in_wall (const HcLayout *layout, const char *opening,
                                       const HcOpeningValues *wanted, double *along_mm);
HcPoint hc_layout_get_place_in_wall (const HcLayout *layout, const char *wall, double along_mm);
HcWall *hc_layout_find_nearest_wall (const HcLayout *layout, HcPoint at, double *along_mm);

G_END_DECLS
