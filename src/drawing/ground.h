/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What birds stand on: textures that fill the clip. */
#pragma once

#include "drawing/ink.h"

#include "base/box.h"

G_BEGIN_DECLS

void hc_draw_floor_layer (const HcInk *ink, const char *layer, HcBox box);
void hc_draw_bedding (const HcInk *ink, const char *bedding, HcBox box);
void hc_draw_grass (const HcInk *ink, HcBox box);
void hc_draw_netting (const HcInk *ink, HcBox box);

G_END_DECLS
