/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Things that stand or hang in a pen, seen from the side. */
#pragma once

#include "drawing/ink.h"
#include "drawing/side-cut.h"

G_BEGIN_DECLS

void hc_draw_side_bar (const HcInk *ink, const HcSectionItem *item);
void hc_draw_side_fitting (const HcInk *ink, const HcLayout *layout, const HcSideCut *cut,
                           const HcSectionItem *item);

G_END_DECLS
