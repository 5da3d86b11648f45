/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Air that blows on the roost. Indicative. */
#include "config.h"

#include "climate/night.h"

#include "supply/bars.h"

#include <math.h>

#define MM_M 1e-3

/* Cold air. */
#define AIR_KG_M3 1.3

static double
find_distance_m (HcRoom *room, const HcRoomBar *bar, const HcOpening *opening)
{
  const HcRoomWall *wall = hc_room_get_wall_of (room, opening);
  HcPoint way = hc_point_unit (hc_point_subtract (wall->line_to, wall->line_from));
  HcPoint at = hc_point_add (wall->line_from,
                             hc_point_scale (way, hc_opening_get (opening)->along_mm));
  HcPoint along = hc_point_subtract (bar->bar.to, bar->bar.from);
  double length2 = hc_point_dot (along, along);
  double share = length2 > 0
                     ? hc_point_dot (hc_point_subtract (at, bar->bar.from), along) / length2 : 0;
  HcPoint nearest
      = hc_point_add (bar->bar.from, hc_point_scale (along, CLAMP (share, 0, 1)));

  return hc_point_distance (at, nearest) * MM_M;
}

static gboolean
blows_at_height_of (const HcBook *book, const HcAirPath *path, const HcRoomBar *bar)
{
  double bar_m = bar->bar.height_mm * MM_M;
  double reach_m = hc_book_get_air_figure (book, "roost_reach_m")->value;

  return path->bottom_m <= bar_m + reach_m && path->bottom_m + path->height_m >= bar_m;
}

static void
add_jets_of_room (HcHouseAir *self, const HcHouseAirAsk *ask, guint room)
{
  HcRoom *here = hc_house_get_room (ask->house, room);
  g_autoptr (GArray) bars = hc_bars_of_room (here);

  for (guint path = 0; path < self->paths->len; path++)
    {
      HcOpening *opening = hc_layout_get_opening (hc_house_get_layout (ask->house),
                                                  hc_house_air_get_way (self, path)->id);

      if (opening == NULL || hc_room_get_wall_of (here, opening) == NULL)
        continue;
      for (guint i = 0; i < bars->len; i++)
        {
          const HcRoomBar *bar = &g_array_index (bars, HcRoomBar, i);
          HcRoostJet jet = { path, 0 };

          if (!blows_at_height_of (hc_flock_get_book (ask->flock), &g_array_index (self->paths, HcAirPath, path), bar))
            continue;
          jet.distance_m = find_distance_m (here, bar, opening);
          g_array_append_val (self->jets, jet);
        }
    }
}

void
hc_house_air_add_jets (HcHouseAir *self, const HcHouseAirAsk *ask)
{
  for (guint room = 0; room < hc_house_get_n_rooms (ask->house); room++)
    if (self->space_of_room[room] != HC_AIR_OUTSIDE)
      add_jets_of_room (self, ask, room);
}

/**
 * hc_roost_get_draught_m_s: (skip)
 * @book: the book
 * @house: the house
 * @state: its air
 * @space: a space of it
 *
 * Indicative: what comes in at the height of sleeping birds reaches them as a free jet
 * does (from memory).
 *
 * Returns: the fastest air on a bar of that space, m/s
 */
double
hc_roost_get_draught_m_s (const HcBook *book, const HcHouseAir *house, const HcAirState *state,
                          guint space)
{
  double jet_reach = hc_book_get_air_figure (book, "jet_reach")->value;
  double fastest = 0;

  for (guint i = 0; i < house->jets->len; i++)
    {
      const HcRoostJet *jet = &g_array_index (house->jets, HcRoostJet, i);
      const HcAirPath *path = &house->air.paths[jet->path];
      HcAirFlow flow = hc_air_state_get_flow (state, &house->air, path);
      double speed_m_s = flow.in_kg_s / AIR_KG_M3 / MAX (path->effective_m2, 1e-6);
      double reach_m = jet_reach * sqrt (path->effective_m2);

      if (path->space == (int) space)
        fastest = MAX (fastest, speed_m_s * MIN (reach_m / MAX (jet->distance_m, 0.05), 1));
    }
  return fastest;
}
