/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The side drawing: a house cut open, true to scale. */
#pragma once

#include "drawing/ink.h"
#include "drawing/side-scene.h"

#include "needs/check.h"

G_BEGIN_DECLS

void hc_draw_side (const HcInk *ink, const HcCheck *check, const HcSideScene *scene);
void hc_draw_side_house (const HcInk *ink, const HcSideScene *scene, const GArray *places);
void hc_draw_side_measures (const HcInk *ink, const HcSideScene *scene, HcUnits units);

G_END_DECLS
