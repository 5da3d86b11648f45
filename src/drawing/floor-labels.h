/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What is written on the floor: names of pens, and marks on what falls short. */
#pragma once

#include "drawing/ink.h"

#include "base/units.h"
#include "needs/check.h"
#include "plan/layout.h"

G_BEGIN_DECLS

void hc_draw_pen_names (const HcInk *ink, const HcLayout *layout, HcUnits units,
                        const GArray *birds);
void hc_draw_pen_marks (const HcInk *ink, const HcLayout *layout, const HcCheck *check);
void hc_draw_marks (const HcInk *ink, const HcLayout *layout, const HcCheck *check);

G_END_DECLS
