/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The ground and the bedding, seen from a cut. */
#pragma once

#include "drawing/ink.h"
#include "drawing/side-scene.h"

G_BEGIN_DECLS

void hc_draw_side_ground (const HcInk *ink, const HcSideScene *scene);

G_END_DECLS
