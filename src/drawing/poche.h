/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What a wall looks like where it is cut through. */
#pragma once

#include "drawing/ink.h"

G_BEGIN_DECLS

/**
 * HcPoche:
 * @HC_POCHE_WOOD: boards, plywood, logs
 * @HC_POCHE_WOOL: boards with wool or foam between
 * @HC_POCHE_STONE: laid stones
 * @HC_POCHE_BRICK: bricks and blocks
 * @HC_POCHE_STRAW: straw bales
 * @HC_POCHE_GLASS: glass and clear sheet
 * @HC_POCHE_METAL: sheet metal
 */
typedef enum
{
  HC_POCHE_WOOD,
  HC_POCHE_WOOL,
  HC_POCHE_STONE,
  HC_POCHE_BRICK,
  HC_POCHE_STRAW,
  HC_POCHE_GLASS,
  HC_POCHE_METAL,
  HC_N_POCHES
} HcPoche;

HcPoche hc_poche_for_construction (const char *construction);
HcPaint hc_poche_get_paint (HcPoche poche);
void hc_draw_poche (const HcInk *ink, HcPoche poche, double length_mm, double thickness_mm,
                    guint seed);

G_END_DECLS
