/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A fitting as seen from above. */
#pragma once

#include "drawing/ink.h"

#include "plan/fitting.h"

G_BEGIN_DECLS

void hc_draw_fitting (const HcInk *ink, const HcFittingValues *values);
void hc_draw_fitting_surroundings (const HcInk *ink, const HcFittingValues *values);
void hc_draw_fitting_mark (const HcInk *ink, const HcFittingValues *values, HcLevel level);
void hc_fitting_drawing_place (const HcInk *ink, const HcFittingValues *values);

G_END_DECLS
