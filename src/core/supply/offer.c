/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Offers as values, and who makes the offer of each kind. */
#include "config.h"

#include "supply/offer-private.h"

#include "base/whole.h"

struct _HcOffer
{
  gatomicrefcount refs;
  HcRoom *room;
  GArray *places;
};

static const HcOfferMaker makers[HC_N_OFFER_KINDS] = {
  [HC_OFFER_FLOOR] = hc_offer_make_floor,
  [HC_OFFER_RUN] = hc_offer_make_run,
  [HC_OFFER_ROOST] = hc_offer_make_roost,
  [HC_OFFER_NESTS] = hc_offer_make_nests,
  [HC_OFFER_GROUP_NESTS] = hc_offer_make_nests,
  [HC_OFFER_FEED_LONG] = hc_offer_make_edges,
  [HC_OFFER_FEED_ROUND] = hc_offer_make_edges,
  [HC_OFFER_WATER_LONG] = hc_offer_make_edges,
  [HC_OFFER_WATER_ROUND] = hc_offer_make_edges,
  [HC_OFFER_NIPPLES] = hc_offer_make_nipples,
  [HC_OFFER_WARMTH] = hc_offer_make_warmth,
  [HC_OFFER_WAY_OUT] = hc_offer_make_way_out,
  [HC_OFFER_LIGHT] = hc_offer_make_light,
  [HC_OFFER_VENTS_WINTER] = hc_offer_make_vents,
  [HC_OFFER_VENTS_SUMMER] = hc_offer_make_vents,
};

/**
 * hc_offer_new: (skip)
 * @kind: what is offered
 * @context: the room, who there is, and by whose rules
 *
 * Returns: (transfer full): the places of that kind in the room
 */
HcOffer *
hc_offer_new (HcOfferKind kind, const HcOfferContext *context)
{
  HcOffer *offer;

  g_return_val_if_fail (kind < HC_N_OFFER_KINDS, NULL);
  offer = g_new0 (HcOffer, 1);
  g_atomic_ref_count_init (&offer->refs);
  offer->room = hc_room_ref (context->room);
  offer->places = g_array_new (FALSE, FALSE, sizeof (HcPlace));
  makers[kind](kind, context, offer);
  return offer;
}

HcOffer *
hc_offer_ref (HcOffer *offer)
{
  g_return_val_if_fail (offer != NULL, NULL);
  g_atomic_ref_count_inc (&offer->refs);
  return offer;
}

void
hc_offer_unref (HcOffer *offer)
{
  g_return_if_fail (offer != NULL);
  if (!g_atomic_ref_count_dec (&offer->refs))
    return;
  g_array_unref (offer->places);
  hc_room_unref (offer->room);
  g_free (offer);
}

guint
hc_offer_get_n_places (const HcOffer *offer)
{
  return offer->places->len;
}

/**
 * hc_offer_get_place: (skip)
 * @offer: an offer
 * @place: index of a place
 *
 * Returns: (transfer none): the place, good as long as @offer
 */
const HcPlace *
hc_offer_get_place (const HcOffer *offer, guint place)
{
  g_return_val_if_fail (place < offer->places->len, NULL);
  return &g_array_index (offer->places, HcPlace, place);
}

void
hc_offer_add_place (HcOffer *offer, const HcPlace *place)
{
  g_array_append_vals (offer->places, place, 1);
}

/* A place of nothing for nobody. @id must live as long as the room. */
void
hc_place_init (HcPlace *place, const HcOfferContext *context, const char *id)
{
  *place = (HcPlace){ .pen = hc_pen_get_id (hc_room_get_pen (context->room)), .id = id };
}

void
hc_place_set_amount (HcPlace *place, double amount)
{
  for (guint i = 0; i < HC_N_ASKED_LEVELS; i++)
    place->amounts[i] = hc_mm (amount);
}

void
hc_place_set_suits (HcPlace *place, HcBodies suits)
{
  for (guint i = 0; i < HC_N_ASKED_LEVELS; i++)
    place->suits[i] = suits;
}
