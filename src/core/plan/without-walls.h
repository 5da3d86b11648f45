/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Private to core: walls go, with their openings and corners. */
#pragma once

#include "plan/edit.h"

G_BEGIN_DECLS

void hc_edit_drop_wall (HcLayoutValues *values, const char *wall);
HcLayout *hc_layout_without_bare_corners (HcLayout *layout, HcLayoutValues *values,
                                          const GArray *places) G_GNUC_WARN_UNUSED_RESULT;

G_END_DECLS
