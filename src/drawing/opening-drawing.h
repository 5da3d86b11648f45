/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Doors, pop holes, windows, vents and egg doors as seen from above. */
#pragma once

#include "drawing/ink.h"

#include "book/level.h"
#include "plan/layout.h"

G_BEGIN_DECLS

gboolean hc_opening_drawing_place (const HcInk *ink, const HcLayout *layout,
                                   const HcOpening *opening, double *thickness_mm);
double hc_opening_get_reach_mm (const HcOpening *opening);
void hc_draw_opening (const HcInk *ink, const HcOpeningValues *values, double thickness_mm);
void hc_draw_opening_mark (const HcInk *ink, HcLevel level);
void hc_draw_openings (const HcInk *ink, const HcLayout *layout);

G_END_DECLS
