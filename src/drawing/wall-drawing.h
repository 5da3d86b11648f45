/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Walls cut through at the height of a bird, with their openings left open. */
#pragma once

#include "drawing/ink.h"

#include "plan/layout.h"

G_BEGIN_DECLS

void hc_draw_wall (const HcInk *ink, const HcLayout *layout, HcWall *wall);
void hc_draw_walls (const HcInk *ink, const HcLayout *layout);

G_END_DECLS
