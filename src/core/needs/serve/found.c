/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Gathers places, and what a keeper thinks of adding. */
#include "config.h"

#include "needs/serve/found.h"

void
hc_founds_init (HcFounds *self)
{
  self->places = g_array_new (FALSE, FALSE, sizeof (HcFound));
  self->offers = g_ptr_array_new_with_free_func ((GDestroyNotify) hc_offer_unref);
}

void
hc_founds_clear (HcFounds *self)
{
  g_array_unref (self->places);
  g_ptr_array_unref (self->offers);
}

static void
gather_offer (HcFounds *self, HcOffer *offer, guint sort, HcLevel level)
{
  g_ptr_array_add (self->offers, hc_offer_ref (offer));
  for (guint i = 0; i < hc_offer_get_n_places (offer); i++)
    {
      const HcPlace *place = hc_offer_get_place (offer, i);
      HcFound found = { offer, i, place, sort, place->amounts[level - HC_LEVEL_TIGHT],
                        place->suits[level - HC_LEVEL_TIGHT] };

      if (found.amount > 0)
        g_array_append_val (self->places, found);
    }
}

void
hc_founds_gather (HcFounds *self, const HcNeedContext *context, HcOfferKind kind, guint sort,
                  HcLevel level, HcRoomTest test)
{
  for (guint i = 0; i < hc_need_context_get_n_rooms (context); i++)
    {
      HcRoom *room = hc_need_context_get_room (context, i);

      if (test == NULL || test (room))
        gather_offer (self, hc_need_context_get_offer (context, room, kind, level), sort, level);
    }
  if (context->extra_kind == kind && context->extra_amount > 0)
    {
      HcFound extra = { NULL, 0, NULL, sort, context->extra_amount, ~(HcBodies) 0 };

      g_array_append_val (self->places, extra);
    }
}

double
hc_founds_sum (const HcFounds *self, guint sort)
{
  double sum = 0;

  for (guint i = 0; i < self->places->len; i++)
    if (hc_founds_get (self, i)->sort == sort && hc_founds_get (self, i)->suits != 0)
      sum += hc_founds_get (self, i)->amount;
  return sum;
}

/* The fitting or opening, or the pen where the place is the floor itself. */
const char *
hc_found_get_id (const HcFound *found)
{
  if (found->place == NULL)
    return NULL;
  return found->place->id != NULL && *found->place->id != '\0' ? found->place->id
                                                               : found->place->pen;
}
