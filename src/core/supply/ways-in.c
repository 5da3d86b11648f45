/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Looks a house over for all the ways one animal has into its rooms. */
#include "config.h"

#include "supply/ways-in.h"

#include "supply/ways-in-private.h"

guint
hc_prowl_get_beyond (const HcProwl *prowl, const HcRoomWall *wall)
{
  guint beyond;

  return hc_house_find_room (prowl->house, wall->beyond, &beyond) ? beyond : HC_OUTSIDE;
}

/* Along all of the wall, until whoever asked says otherwise. */
HcWayIn *
hc_prowl_add (HcProwl *prowl, HcWayInCause cause, const HcRoomWall *wall, const char *part)
{
  HcWayIn way = { .cause = cause, .room = prowl->room, .beyond = HC_OUTSIDE, .part = part };

  if (wall != NULL)
    {
      way.beyond = hc_prowl_get_beyond (prowl, wall);
      way.wall = hc_wall_get_id (wall->wall);
      way.from = wall->line_from;
      way.to = wall->line_to;
    }
  g_array_append_val (prowl->ways, way);
  return &g_array_index (prowl->ways, HcWayIn, prowl->ways->len - 1);
}

/* A wall without a height of its own goes up to the roof. */
double
hc_prowl_get_wall_mm (const HcProwl *prowl, const HcRoomWall *wall)
{
  double height_mm = hc_wall_get (wall->wall)->height_mm;

  return height_mm > 0 ? height_mm
                       : hc_room_get_ceiling_along_mm (prowl->here, wall->from, wall->to);
}

/* A fence of the height the rules ask for is not jumped. */
gboolean
hc_prowl_gets_up (const HcProwl *prowl, double height_mm)
{
  const HcPredator *animal = prowl->intruder->animal;

  return animal->climbs
         || height_mm < MIN (animal->jumps_mm, prowl->intruder->fence_mm);
}

/* What is not known of a mesh nobody can rely on. */
gboolean
hc_prowl_passes_mesh (const HcProwl *prowl, const char *id, int fixing, HcWayInCause *cause,
                      double *have_mm)
{
  const HcPredator *animal = prowl->intruder->animal;
  const HcMesh *mesh = hc_book_get_mesh (prowl->intruder->book, id);
  gboolean weak;

  *have_mm = mesh != NULL ? mesh->hole_mm : 0;
  if (mesh == NULL)
    {
      *cause = HC_WAY_IN_BARE;
      return TRUE;
    }
  weak = (animal->tears && !mesh->stops_diggers) || (animal->gnaws && !mesh->stops_gnawers);
  *cause = mesh->hole_mm > animal->passes_mm ? HC_WAY_IN_HOLES
           : weak                            ? HC_WAY_IN_TORN
                                             : HC_WAY_IN_STAPLES;
  return *cause != HC_WAY_IN_STAPLES || (animal->tears && fixing == HC_FIXING_STAPLES);
}

static void
look_over (HcProwl *prowl)
{
  hc_prowl_above (prowl);
  if (prowl->intruder->animal->overhead)
    return;
  hc_prowl_round_walls (prowl);
  hc_prowl_round_openings (prowl);
  hc_prowl_below (prowl);
}

/**
 * hc_ways_in_find: (skip)
 * @house: a house
 * @intruder: who comes, and when
 *
 * Every room is looked over from each room beside it and from outside, whether
 * or not the animal has come that far.
 *
 * Returns: (transfer full) (element-type HcWayIn): the ways there are, good as
 *   long as @house
 */
GArray *
hc_ways_in_find (const HcHouse *house, const HcIntruder *intruder)
{
  HcProwl prowl = { .house = house, .intruder = intruder };

  prowl.ways = g_array_new (FALSE, FALSE, sizeof (HcWayIn));
  for (guint room = 0; room < hc_house_get_n_rooms (house); room++)
    {
      prowl.room = room;
      prowl.here = hc_house_get_room (house, room);
      look_over (&prowl);
    }
  return prowl.ways;
}
