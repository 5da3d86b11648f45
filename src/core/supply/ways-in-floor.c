/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Under walls, and up through the floor. */
#include "config.h"

#include "supply/ways-in-private.h"

/* One layer that holds is enough; no layer at all is earth. */
static gboolean
is_passed (const HcRoom *room, HcBook *book, const HcPredator *animal,
           gboolean (*passes) (const HcFloorLayer *layer, const HcPredator *animal))
{
  char **layers = hc_room_get (room)->floor_layers;

  for (char **id = layers; id != NULL && *id != NULL; id++)
    {
      const HcFloorLayer *layer = hc_book_get_floor_layer (book, *id);

      if (layer != NULL && !passes (layer, animal))
        return FALSE;
    }
  return TRUE;
}

static gboolean
digs_through (const HcFloorLayer *layer, const HcPredator *animal)
{
  return layer->dug_through || layer->holes_mm > animal->passes_mm;
}

static gboolean
gnaws_through (const HcFloorLayer *layer, const HcPredator *animal)
{
  return layer->gnawed_through || digs_through (layer, animal);
}

/**
 * hc_room_is_dug_into: (skip)
 * @room: a room
 * @book: what floors are like
 * @animal: who digs
 *
 * Returns: whether only a dig guard keeps it from coming up in @room
 */
gboolean
hc_room_is_dug_into (const HcRoom *room, HcBook *book, const HcPredator *animal)
{
  return animal->digs && is_passed (room, book, animal, digs_through);
}

static gboolean
is_guarded (const HcProwl *prowl)
{
  const HcPenValues *pen = hc_room_get (prowl->here);

  return pen->apron_mm >= prowl->intruder->apron_mm
         || pen->dug_mm >= MIN (prowl->intruder->dug_mm, prowl->intruder->animal->digs_mm);
}

void
hc_prowl_below (HcProwl *prowl)
{
  const HcIntruder *intruder = prowl->intruder;
  const char *pen = hc_pen_get_id (hc_room_get_pen (prowl->here));
  gboolean digs = hc_room_is_dug_into (prowl->here, intruder->book, intruder->animal);
  gboolean gnaws = intruder->animal->gnaws && intruder->animal->digs
                   && is_passed (prowl->here, intruder->book, intruder->animal, gnaws_through);

  if ((!digs && !gnaws) || is_guarded (prowl))
    return;
  for (guint i = 0; i < hc_room_get_n_walls (prowl->here); i++)
    {
      HcWayIn *way = hc_prowl_add (prowl, digs ? HC_WAY_IN_UNDER : HC_WAY_IN_FLOOR,
                                   hc_room_get_wall (prowl->here, i), pen);

      way->have_mm = hc_room_get (prowl->here)->apron_mm;
      way->want_mm = intruder->apron_mm;
    }
}
