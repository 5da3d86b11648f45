/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The needs, how many birds the plan holds, and what is wrong. */
#pragma once

#include "app/window/panel.h"

G_BEGIN_DECLS

#define HC_TYPE_NEEDS_PANEL (hc_needs_panel_get_type ())
G_DECLARE_FINAL_TYPE (HcNeedsPanel, hc_needs_panel, HC, NEEDS_PANEL, HcPanel)

void hc_needs_panel_set_held (HcNeedsPanel *self, gboolean held);

G_END_DECLS
