/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Birds from above, to scale. */
#pragma once

#include "drawing/bird-look.h"
#include "drawing/ink.h"

G_BEGIN_DECLS

void hc_draw_bird (const HcInk *ink, const HcBirdLook *look);

G_END_DECLS
