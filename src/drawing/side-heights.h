/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Heights written beside a house seen from the side, and a person to judge them by. */
#pragma once

#include "drawing/ink.h"
#include "drawing/side-scene.h"

#include "base/units.h"

G_BEGIN_DECLS

void hc_draw_side_heights (const HcInk *ink, const HcSideScene *scene, HcUnits units);
void hc_draw_person (const HcInk *ink, const HcSideScene *scene);

G_END_DECLS
