/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The scale bar. */
#pragma once

#include "drawing/ink.h"

#include "base/units.h"

G_BEGIN_DECLS

void hc_draw_scale_bar (const HcInk *ink, double x_mm, double y_mm, double most_mm,
                        HcUnits units);

G_END_DECLS
