/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The air of a night on a house seen from the side. */
#pragma once

#include "drawing/ink.h"
#include "drawing/side-cut.h"

#include "base/box.h"
#include "climate/house-night.h"

G_BEGIN_DECLS

void hc_draw_side_air (const HcInk *ink, const HcHouseNight *night, const HcSideCut *cut,
                       guint space);
gboolean hc_side_air_find_cut (const HcHouseNight *night, guint space, HcSideCut *cut);
HcBox hc_side_air_get_bounds (const HcHouseNight *night, const HcSideCut *cut, guint space);

G_END_DECLS
