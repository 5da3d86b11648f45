/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The floor of a pen and the ground of a run. */
#pragma once

#include "drawing/ink.h"

#include "plan/pen.h"

G_BEGIN_DECLS

void hc_draw_pen_floor (const HcInk *ink, const HcPenValues *pen, const HcPoint *ring,
                        guint n_points);

G_END_DECLS
