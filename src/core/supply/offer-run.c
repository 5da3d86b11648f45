/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The ground of a run. */
#include "config.h"

#include "supply/offer-private.h"

#include "book/figure-names.h"
#include "supply/floor.h"

/* Of a run all the ground counts that nothing stands on, under whatever roof
 * it has; shut in, only a run that is covered. */
void
hc_offer_make_run (HcOfferKind kind, const HcOfferContext *context, HcOffer *offer)
{
  HcRoom *room = context->room;
  g_autoptr (HcShape) ground = NULL;
  HcPlace place;

  if (hc_room_is_roofed (room)
      || (context->condition == HC_CONDITION_SHUT_IN && !hc_room_counts_shut_in (room)))
    return;
  ground = hc_room_get_floor_that_counts (
      room, hc_figure_get_bound (context, HC_FIGURE_FLOOR_HEADROOM, HC_LEVEL_TIGHT), 0);
  hc_place_init (&place, context, "");
  hc_place_set_amount (&place, hc_shape_get_area_mm2 (ground));
  hc_place_set_suits (&place, hc_bodies_all (context));
  place.from = place.to = hc_room_get_middle (room);
  hc_offer_add_place (offer, &place);
}
