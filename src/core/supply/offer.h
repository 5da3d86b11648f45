/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What a room offers: places, how much of it each holds, and for whom. */
#pragma once

#include "base/shape.h"
#include "flock/flock.h"
#include "book/level.h"
#include "supply/room.h"

G_BEGIN_DECLS

/**
 * HcOfferKind:
 * @HC_OFFER_FLOOR: mm² of floor that counts, one place for each headroom band
 * @HC_OFFER_RUN: mm² of run
 * @HC_OFFER_ROOST: mm of bar, one place a usable stretch
 * @HC_OFFER_NESTS: nest boxes, one place for each row of a fitting
 * @HC_OFFER_GROUP_NESTS: mm² of group nest, one place for each row of a fitting
 * @HC_OFFER_FEED_LONG: mm of long feeder edge
 * @HC_OFFER_FEED_ROUND: mm of round feeder edge
 * @HC_OFFER_WATER_LONG: mm of long drinker edge
 * @HC_OFFER_WATER_ROUND: mm of round drinker edge
 * @HC_OFFER_NIPPLES: nipples and cups
 * @HC_OFFER_WARMTH: mm² of heated floor
 * @HC_OFFER_WAY_OUT: mm of pop-hole width
 * @HC_OFFER_LIGHT: mm² of glass in windows and doors
 * @HC_OFFER_VENTS_WINTER: mm² of vent left open in the cold
 * @HC_OFFER_VENTS_SUMMER: mm² of vent and opening in the heat
 */
typedef enum
{
  HC_OFFER_FLOOR,
  HC_OFFER_RUN,
  HC_OFFER_ROOST,
  HC_OFFER_NESTS,
  HC_OFFER_GROUP_NESTS,
  HC_OFFER_FEED_LONG,
  HC_OFFER_FEED_ROUND,
  HC_OFFER_WATER_LONG,
  HC_OFFER_WATER_ROUND,
  HC_OFFER_NIPPLES,
  HC_OFFER_WARMTH,
  HC_OFFER_WAY_OUT,
  HC_OFFER_LIGHT,
  HC_OFFER_VENTS_WINTER,
  HC_OFFER_VENTS_SUMMER,
  HC_N_OFFER_KINDS
} HcOfferKind;

/**
 * HcPlace:
 * @pen: (transfer none): id of the pen
 * @id: (transfer none): id of the fitting or opening, empty for the floor
 * @part: which bar, stretch, side or row of it
 * @amount: how much it holds, in the unit of its #HcOfferKind
 * @suits: (array): for each level asked (tight, good, plenty; index level - 1): the bodies
 *   it suits when judged by that level's limits
 * @amounts: how much of it counts at each level, where limits cut it down
 *   (a stretch is shorter when neighbours must stand further off)
 * @from: where a line of places starts, or the middle of an area
 * @to: where it ends
 * @height_mm: above the floor
 * @why_not: for places that suit nobody or lost some: id of the figure that
 *   cut it, %NULL when nothing did
 * @blocker: id of the thing that is in the way, %NULL when nothing is
 */
typedef struct
{
  const char *pen;
  const char *id;
  guint part;
  double amounts[HC_N_ASKED_LEVELS];
  HcBodies suits[HC_N_ASKED_LEVELS];
  HcPoint from;
  HcPoint to;
  double height_mm;
  const char *why_not;
  const char *blocker;
} HcPlace;

/* Immutable, atomically reference-counted list of places of one kind in one
 * room. It depends on the room, the table of bodies, the standard and the
 * condition; never on how many birds there are. */
typedef struct _HcOffer HcOffer;

typedef struct
{
  HcRoom *room;
  const HcLayout *layout;
  HcFlock *flock;
  HcStandard *standard;
  HcCondition condition;
  double coldest_night_c;
} HcOfferContext;

HcOffer *hc_offer_new (HcOfferKind kind, const HcOfferContext *context) G_GNUC_WARN_UNUSED_RESULT;
HcOffer *hc_offer_ref (HcOffer *offer);
void hc_offer_unref (HcOffer *offer);
guint hc_offer_get_n_places (const HcOffer *offer);
const HcPlace *hc_offer_get_place (const HcOffer *offer, guint place);

/* The free floor itself, for drawing and for clearance: what counts as floor
 * for a body that needs @headroom_mm. */
HcShape *hc_room_get_floor_that_counts (HcRoom *room, double headroom_mm,
                                        double least_width_mm) G_GNUC_WARN_UNUSED_RESULT;

G_DEFINE_AUTOPTR_CLEANUP_FUNC (HcOffer, hc_offer_unref)

G_END_DECLS
