/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A bird seen from its side. */
#pragma once

#include "drawing/bird-places.h"
#include "drawing/ink.h"
#include "drawing/side-cut.h"

G_BEGIN_DECLS

/**
 * HcSideBird: (skip)
 * @place: the bird in the plan
 * @at: how far along the cut it is, and how high its feet are
 * @depth_mm: how far beyond the cut it is
 */
typedef struct
{
  const HcBirdPlace *place;
  HcPoint at;
  double depth_mm;
} HcSideBird;

GArray *hc_side_birds_find (const HcHouse *house, const HcSideCut *cut,
                            const GArray *places) G_GNUC_WARN_UNUSED_RESULT;
void hc_draw_side_bird (const HcInk *ink, const HcSideCut *cut, const HcSideBird *bird);

G_END_DECLS
