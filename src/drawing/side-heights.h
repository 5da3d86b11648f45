/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Heights written beside a house seen from the side, and a person to judge them by. */
#pragma once

#include "drawing/ink.h"
#include "drawing/side-cut.h"

#include "base/units.h"

G_BEGIN_DECLS

void hc_draw_side_heights (const HcInk *ink, const GArray *items, HcUnits units);
void hc_draw_person (const HcInk *ink, double x_mm);

G_END_DECLS
