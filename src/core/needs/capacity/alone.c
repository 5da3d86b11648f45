/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Every space is filled by itself: what one has too much of helps no other.
 *
 * A day space carries what its day needs allow, and no more than the night
 * rooms in it sleep; the house carries the sum. */
#include "config.h"

#include "needs/capacity/alone.h"

/* A sum in which 'never runs out' stays so. */
gint64
hc_alone_add (gint64 birds, gint64 more)
{
  return birds == G_MAXINT64 || more == G_MAXINT64 ? G_MAXINT64 : birds + more;
}

static gboolean
lies_in (const HcNeedContext *room, const HcSpace *space)
{
  for (guint i = 0; i < space->rooms->len; i++)
    if (hc_need_context_has_room (room, g_array_index (space->rooms, guint, i)))
      return TRUE;
  return FALSE;
}

static gboolean
has_roof (const HcCase *about, const HcSpace *space)
{
  for (guint i = 0; i < space->rooms->len; i++)
    if (hc_room_is_roofed (
            hc_house_get_room (about->house, g_array_index (space->rooms, guint, i))))
      return TRUE;
  return FALSE;
}

static gint64
carried_by_need (const HcRungSearch *search, const HcSpace *space)
{
  gint64 birds = 0;

  for (guint i = 0; i < search->n_places; i++)
    if (lies_in (&search->places[i], space))
      birds = hc_alone_add (birds, hc_rung_search_find_most_in (search, i));
  return birds;
}

gint64
hc_alone_count_birds (HcCase *about, const HcRungSearch *searches, guint n_searches)
{
  HcCondition condition = hc_case_get_condition (about, HC_SCOPE_DAY_SPACE);
  gint64 birds = 0;

  for (guint i = 0; i < hc_house_get_n_spaces (about->house, condition); i++)
    {
      const HcSpace *space = hc_house_get_space (about->house, condition, i);
      gint64 least = G_MAXINT64;

      if (!has_roof (about, space))
        continue;
      for (guint j = 0; j < n_searches; j++)
        least = MIN (least, carried_by_need (&searches[j], space));
      birds = hc_alone_add (birds, least);
    }
  return birds;
}

/* What one need carries, in all its spaces under a roof. */
gint64
hc_alone_sum_rung (const HcRungSearch *search)
{
  gint64 birds = 0;

  for (guint i = 0; i < search->n_places; i++)
    if (has_roof (search->places[i].about, search->places[i].space))
      birds = hc_alone_add (birds, hc_rung_search_find_most_in (search, i));
  return birds;
}

/* Lifts the first space under a roof, the others staying as they are. */
void
hc_alone_find_lift (const HcRungSearch *search, HcRung *rung)
{
  for (guint i = 0; i < search->n_places; i++)
    {
      HcNeedContext *place = &search->places[i];
      gint64 before;
      double lift;

      if (!has_roof (place->about, place->space))
        continue;
      before = hc_rung_search_find_most_in (search, i);
      hc_rung_search_put_in (search, i, before + 1);
      lift = hc_rung_search_lift_place (search, i, rung);
      if (lift > 0)
        {
          rung->lift = lift;
          rung->lift_to
              = hc_alone_add (rung->most - before, hc_rung_search_find_most_in (search, i));
        }
      place->extra_amount = 0;
      return;
    }
}
