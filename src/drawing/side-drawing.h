/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The side drawing: a house cut open, true to scale. */
#pragma once

#include "drawing/ink.h"
#include "drawing/side-cut.h"

#include "base/box.h"
#include "needs/check.h"

G_BEGIN_DECLS

HcBox hc_side_get_bounds (const HcHouse *house, const HcSideCut *cut);
void hc_draw_side (const HcInk *ink, const HcCheck *check, const HcSideCut *cut);

G_END_DECLS
