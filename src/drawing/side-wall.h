/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Walls and openings of a house seen from a cut. */
#pragma once

#include "drawing/ink.h"
#include "drawing/side-cut.h"

#include "base/box.h"

G_BEGIN_DECLS

void hc_draw_side_wall (const HcInk *ink, const HcLayout *layout, const HcSectionItem *item);
void hc_draw_side_opening (const HcInk *ink, const HcLayout *layout, const HcSectionItem *item);
HcBox hc_side_item_get_box (const HcSectionItem *item);

G_END_DECLS
