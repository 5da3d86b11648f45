/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Private to core: which walls meet where, and which way they run. */
#pragma once

#include "plan/edit.h"

G_BEGIN_DECLS

/* How near two places must be to be one: less than any saw cut. */
#define HC_WALL_JOIN_MM 1.0

HcPoint hc_corner_get_point (const HcLayout *layout, const char *corner);
gboolean hc_wall_touches (const HcWall *wall, const char *corner);
const char *hc_wall_get_other_end (const HcWall *wall, const char *corner);
HcPoint hc_wall_get_way (const HcLayout *layout, const HcWall *wall);
gboolean hc_walls_run_alike (const HcLayout *layout, const HcWall *a, const HcWall *b);
GPtrArray *hc_corner_get_walls (const HcLayout *layout,
                                const char *corner) G_GNUC_WARN_UNUSED_RESULT;
HcWall *hc_corners_get_wall (const HcLayout *layout, const char *a, const char *b);
HcCorner *hc_layout_find_corner_at (const HcLayout *layout, HcPoint at);
HcWall *hc_layout_find_wall_at (const HcLayout *layout, HcPoint at);

G_END_DECLS
