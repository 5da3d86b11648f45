/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The floor with its zoom buttons and the properties of what is selected. */
#pragma once

#include "app/floor/floor.h"

G_BEGIN_DECLS

#define HC_TYPE_FLOOR_VIEW (hc_floor_view_get_type ())
G_DECLARE_FINAL_TYPE (HcFloorView, hc_floor_view, HC, FLOOR_VIEW, HcPanel)

HcFloor *hc_floor_view_get_floor (HcFloorView *self);

G_END_DECLS
