/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The floor: the house to scale, with its fittings and birds. */
#pragma once

#include "app/window/panel.h"

G_BEGIN_DECLS

#define HC_TYPE_FLOOR_VIEW (hc_floor_view_get_type ())
G_DECLARE_FINAL_TYPE (HcFloorView, hc_floor_view, HC, FLOOR_VIEW, HcPanel)

G_END_DECLS
