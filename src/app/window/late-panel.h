/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The place of a panel that is built when it is first looked at. */
#pragma once

#include "app/window/panel.h"

G_BEGIN_DECLS

#define HC_TYPE_LATE_PANEL (hc_late_panel_get_type ())
G_DECLARE_FINAL_TYPE (HcLatePanel, hc_late_panel, HC, LATE_PANEL, HcPanel)

HcPanel *hc_late_panel_get_panel (HcLatePanel *self);

G_END_DECLS
