/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Where birds have room to stand in front of a feeder or a drinker. */
#pragma once

#include "supply/offer.h"
#include "supply/strip.h"

G_BEGIN_DECLS

/**
 * HcStandingPiece:
 * @stretch: a piece of an edge
 * @bodies: who can stand in front of it
 */
typedef struct
{
  HcStretch stretch;
  HcBodies bodies;
} HcStandingPiece;

GArray *hc_standing_get_pieces (const HcOfferContext *context, guint fitting, HcPoint from,
                                HcPoint to) G_GNUC_WARN_UNUSED_RESULT;
void hc_standing_get_side (const HcFitting *fitting, guint side, HcPoint *from, HcPoint *to);

G_END_DECLS
