/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Dimension lines and the scale bar. */
#pragma once

#include "drawing/ink.h"

#include "base/units.h"
#include "plan/layout.h"

G_BEGIN_DECLS

#define HC_DIMENSION_ROOM_UNITS 34.0

void hc_draw_dimension (const HcInk *ink, HcPoint from, HcPoint to, double aside_mm,
                        HcUnits units);
void hc_draw_dimensions (const HcInk *ink, const HcLayout *layout, HcUnits units);
void hc_draw_scale_bar (const HcInk *ink, double x_mm, double y_mm, double most_mm,
                        HcUnits units);

G_END_DECLS
