/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Dimension lines. */
#pragma once

#include "drawing/ink.h"

#include "base/units.h"
#include "plan/layout.h"

G_BEGIN_DECLS

#define HC_DIMENSION_ROOM_UNITS 34.0

void hc_draw_dimension (const HcInk *ink, HcPoint from, HcPoint to, double aside_mm,
                        HcUnits units);
void hc_draw_dimensions (const HcInk *ink, const HcLayout *layout, HcUnits units);

G_END_DECLS
