/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * One space with the birds that live in it. */
#include "config.h"

#include "needs/context.h"

#include <string.h>

void
hc_need_context_init (HcNeedContext *self, HcCase *about, const HcNeed *need, guint space)
{
  memset (self, 0, sizeof *self);
  self->about = about;
  self->need = need;
  self->condition = hc_case_get_condition (about, need->scope);
  self->extra_kind = HC_N_OFFER_KINDS;
  if (need->scope == HC_SCOPE_AIR_SPACE)
    self->space = hc_house_get_air_space (about->house, space);
  else if (need->scope != HC_SCOPE_LAYOUT)
    self->space = hc_house_get_space (about->house, self->condition, space);
  hc_need_context_count (self, about->flock);
}

gboolean
hc_need_context_has_room (const HcNeedContext *self, guint room)
{
  if (self->space == NULL)
    return TRUE;
  for (guint i = 0; i < self->space->rooms->len; i++)
    if (g_array_index (self->space->rooms, guint, i) == room)
      return TRUE;
  return FALSE;
}

/* Counts the birds of @flock that live here. */
void
hc_need_context_count (HcNeedContext *self, const HcFlock *flock)
{
  guint room;

  memset (self->counts, 0, sizeof self->counts);
  for (guint i = 0; i < hc_flock_get_n_rows (flock); i++)
    {
      const HcFlockRow *row = hc_flock_get_row (flock, i);

      if (hc_house_find_room (self->about->house, row->pen, &room)
          && hc_need_context_has_room (self, room))
        self->counts[row->body] += row->count;
    }
}

guint
hc_need_context_get_n_rooms (const HcNeedContext *self)
{
  return self->space != NULL ? self->space->rooms->len
                             : hc_house_get_n_rooms (self->about->house);
}

HcRoom *
hc_need_context_get_room (const HcNeedContext *self, guint room)
{
  if (self->space != NULL)
    room = g_array_index (self->space->rooms, guint, room);
  return hc_house_get_room (self->about->house, room);
}

/* The offer is good until the next one is asked for. */
HcOffer *
hc_need_context_get_offer (const HcNeedContext *self, HcRoom *room, HcOfferKind kind,
                           HcLevel level)
{
  const HcCase *about = self->about;
  HcOfferContext context = { room, about->layout, about->flock,
                             hc_case_get_standard (about, level), self->condition,
                             about->site->coldest_night_c };

  return hc_check_cache_get_offer (about->cache, kind, &context, about->table);
}

double
hc_need_context_sum_offer (const HcNeedContext *self, HcOfferKind kind, HcLevel level)
{
  double sum = 0;

  for (guint i = 0; i < hc_need_context_get_n_rooms (self); i++)
    {
      HcOffer *offer
          = hc_need_context_get_offer (self, hc_need_context_get_room (self, i), kind, level);

      for (guint j = 0; j < hc_offer_get_n_places (offer); j++)
        sum += hc_offer_get_place (offer, j)->amounts[level - HC_LEVEL_TIGHT];
    }
  return sum;
}

guint
hc_need_context_get_n_bodies (const HcNeedContext *self)
{
  return hc_flock_get_n_bodies (self->about->flock);
}

const HcBody *
hc_need_context_get_body (const HcNeedContext *self, guint body)
{
  return hc_flock_get_body (self->about->flock, body);
}

HcBodies
hc_need_context_get_bodies (const HcNeedContext *self)
{
  HcBodies bodies = 0;

  for (guint i = 0; i < hc_need_context_get_n_bodies (self); i++)
    if (self->counts[i] > 0)
      bodies |= (HcBodies) 1 << i;
  return bodies;
}

gint64
hc_need_context_count_birds (const HcNeedContext *self, HcBodies bodies)
{
  gint64 birds = 0;

  for (guint i = 0; i < hc_need_context_get_n_bodies (self); i++)
    if (bodies >> i & 1)
      birds += self->counts[i];
  return birds;
}

const HcLimit *
hc_need_context_find_limit (const HcNeedContext *self, const char *name, guint body,
                            HcLevel level)
{
  const HcBody *bird = hc_need_context_get_body (self, body);

  return hc_standard_find_limit (hc_case_get_standard (self->about, level), name, bird->kind,
                                 hc_body_get_week (bird), self->condition);
}

/* A limit that asks for no bird in particular. */
const HcLimit *
hc_need_context_find_plain_limit (const HcNeedContext *self, const char *name, HcLevel level)
{
  return hc_standard_find_limit (hc_case_get_standard (self->about, level), name, NULL,
                                 HC_WEEK_GROWN, self->condition);
}

const HcDemand *
hc_need_context_find_demand (const HcNeedContext *self, const char *name, guint body,
                             HcLevel level)
{
  const HcBody *bird = hc_need_context_get_body (self, body);
  const HcDemand *demand
      = hc_standard_find_demand (hc_case_get_standard (self->about, level), name, bird->kind,
                                 hc_body_get_week (bird), self->condition);

  return demand != NULL && demand->figure.at_lay && !bird->at_lay ? NULL : demand;
}

/* The fitting a place belongs to, or %NULL. */
const HcFitting *
hc_need_context_find_fitting (const HcNeedContext *self, const HcPlace *place)
{
  guint room;

  if (place->id == NULL || !hc_house_find_room (self->about->house, place->pen, &room))
    return NULL;
  return hc_parts_find (hc_room_get (hc_house_get_room (self->about->house, room))->fittings,
                        place->id);
}

/* Names the pens of this space that birds live in, else all of them. */
void
hc_need_context_name_pens (const HcNeedContext *self, HcFinding *finding)
{
  const HcFlock *flock = self->about->flock;
  guint room;

  for (guint i = 0; i < hc_flock_get_n_rows (flock); i++)
    {
      const HcFlockRow *row = hc_flock_get_row (flock, i);

      if (row->count > 0 && hc_house_find_room (self->about->house, row->pen, &room)
          && hc_need_context_has_room (self, room))
        hc_finding_add_id (finding, row->pen);
    }
  for (guint i = 0; finding->ids[0] == NULL && i < hc_need_context_get_n_rooms (self); i++)
    hc_finding_add_id (finding, hc_pen_get_id (hc_room_get_pen (hc_need_context_get_room (self, i))));
}
