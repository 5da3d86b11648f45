/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Private to core: one wall becomes two, and two become one. */
#pragma once

#include "plan/edit.h"

G_BEGIN_DECLS

HcLayout *hc_layout_split_wall (HcLayout *layout, const char *wall, HcPoint at,
                                const char *new_corner, const char *new_wall,
                                GError **error) G_GNUC_WARN_UNUSED_RESULT;
HcLayout *hc_layout_join_walls_at (HcLayout *layout, const char *corner,
                                   GError **error) G_GNUC_WARN_UNUSED_RESULT;
gboolean hc_layout_is_plain_corner (const HcLayout *layout, const char *corner);

G_END_DECLS
