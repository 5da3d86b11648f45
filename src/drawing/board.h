/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A piece of lumber seen from above, with its grain. */
#pragma once

#include "drawing/ink.h"

G_BEGIN_DECLS

void hc_draw_board (const HcInk *ink, double x, double y, double width, double depth,
                    HcPaint wood, guint seed);
void hc_draw_boards (const HcInk *ink, double x, double y, double width, double depth,
                     double board_mm, HcPaint wood, guint seed);

G_END_DECLS
