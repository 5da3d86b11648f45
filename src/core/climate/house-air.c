/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A house, its birds and its weather, as the solver of the air wants them. */
#include "config.h"

#include "climate/house-air.h"

#include "air/leakage.h"
#include "air/moist-air.h"
#include "air/opening-flow.h"
#include "air/wind.h"
#include "supply/joining.h"

#include <math.h>

/* Middle of the wall of a small house, m. */
#define WALL_MIDDLE_M 1.5

static gboolean
is_indoors (const HcRoom *room)
{
  return hc_room_get (room)->kind == HC_PEN_INDOOR && hc_room_is_roofed (room);
}

/* Pens with mesh between them are one body of air; what is left over beyond the most
 * there can be is taken together with the last. */
static guint
find_spaces (HcHouseAir *self, HcHouse *house)
{
  guint n_rooms = hc_house_get_n_rooms (house);
  g_autoptr (HcJoining) joining = hc_joining_new (n_rooms);
  g_autoptr (GPtrArray) spaces = NULL;

  for (guint i = 0; i < n_rooms; i++)
    if (!is_indoors (hc_house_get_room (house, i)))
      hc_joining_leave_out (joining, i);
  for (guint i = 0; i < n_rooms; i++)
    for (guint wall = 0; wall < hc_room_get_n_walls (hc_house_get_room (house, i)); wall++)
      {
        const HcRoomWall *seen = hc_room_get_wall (hc_house_get_room (house, i), wall);
        guint other;

        if (hc_wall_get (seen->wall)->kind != HC_WALL_SOLID
            && hc_house_find_room (house, seen->beyond, &other))
          hc_joining_join (joining, i, other);
      }
  spaces = hc_joining_get_spaces (joining);
  for (guint space = 0; space < spaces->len; space++)
    {
      GArray *rooms = ((HcSpace *) spaces->pdata[space])->rooms;

      for (guint i = 0; i < rooms->len; i++)
        self->space_of_room[g_array_index (rooms, guint, i)]
            = (int) MIN (space, HC_AIR_MOST_SPACES - 1);
    }
  return MIN (spaces->len, HC_AIR_MOST_SPACES);
}

/**
 * hc_house_air_ask_init: (skip)
 * @ask: (out caller-allocates): the question
 * @house: the house
 * @flock: its birds
 * @site: where it stands
 *
 * Asks about the coldest night of the place.
 */
void
hc_house_air_ask_init (HcHouseAirAsk *ask, HcHouse *house, HcFlock *flock,
                       const HcSiteValues *site)
{
  *ask = (HcHouseAirAsk){
    .house = house,
    .flock = flock,
    .site = site,
    .weather = { site->coldest_night_c, site->humidity_percent / 100, site->wind_m_s, FALSE },
  };
  hc_guesses_init (&ask->guesses, hc_flock_get_book (flock));
}

/**
 * hc_house_air_set_weather: (skip)
 * @self: the house
 * @ask: where it stands
 * @weather: the weather; what cannot be is drawn into what can
 */
void
hc_house_air_set_weather (HcHouseAir *self, const HcHouseAirAsk *ask, const HcWeather *weather)
{
  HcAirOutside *outside = &self->air.outside;

  outside->t_c = weather->t_c;
  outside->humidity = weather->humidity;
  outside->wind_m_s = weather->wind_m_s;
  outside->pressure_pa = hc_air_pressure_pa (ask->site->elevation_m);
  outside->co2_ppm = hc_book_get_air_figure (hc_flock_get_book (ask->flock), "co2_outside")->value;
  self->faults = hc_air_outside_draw_in (outside);
  outside->humidity = hc_humidity_from_weather_service (outside->t_c, outside->humidity);
  outside->wind_m_s = hc_wind_at_height_m_s (outside->wind_m_s, WALL_MIDDLE_M, (HcTerrain) ask->site->terrain);
}

static void
point_at_lists (HcHouseAir *self)
{
  self->air.n_paths = self->paths->len;
  self->air.paths = (const HcAirPath *) (gpointer) self->paths->data;
  self->air.n_surfaces = self->surfaces->len;
  self->air.surfaces = (const HcAirSurface *) (gpointer) self->surfaces->data;
  self->air.n_wets = self->wets->len;
  self->air.wets = (const HcAirWet *) (gpointer) self->wets->data;
}

static HcHouseAir *
make_empty (guint n_rooms)
{
  HcHouseAir *self = g_new0 (HcHouseAir, 1);

  self->paths = g_array_new (FALSE, FALSE, sizeof (HcAirPath));
  self->ways = g_array_new (FALSE, FALSE, sizeof (HcAirWay));
  self->surfaces = g_array_new (FALSE, FALSE, sizeof (HcAirSurface));
  self->parts = g_ptr_array_new ();
  self->wets = g_array_new (FALSE, FALSE, sizeof (HcAirWet));
  self->jets = g_array_new (FALSE, FALSE, sizeof (HcRoostJet));
  self->space_of_room = g_new (int, n_rooms + 1);
  for (guint i = 0; i < n_rooms; i++)
    self->space_of_room[i] = HC_AIR_OUTSIDE;
  return self;
}

/**
 * hc_house_air_set_birds: (skip)
 * @self: the house
 * @ask: with the birds that live in it now
 *
 * Birds, their litter and their water; walls and openings stay.
 */
void
hc_house_air_set_birds (HcHouseAir *self, const HcHouseAirAsk *ask)
{
  g_array_set_size (self->wets, 0);
  for (guint i = 0; i < self->air.n_spaces; i++)
    {
      self->flocks[i] = (HcSpaceFlock){ 0 };
      self->air.spaces[i].power_w = 0;
    }
  hc_house_air_add_birds (self, ask);
  for (guint i = 0; i < hc_house_get_n_rooms (ask->house); i++)
    if (self->space_of_room[i] != HC_AIR_OUTSIDE)
      hc_house_air_add_drinkers (self, ask, i);
  point_at_lists (self);
}

/**
 * hc_house_air_new: (skip)
 * @ask: the house, its birds and its weather
 *
 * Indoor pens are spaces, runs are outside. The ids it hands out are the plan's, which
 * must outlive it.
 *
 * Returns: (transfer full) (nullable): the house for the solver, or %NULL where
 *   nothing is under a roof
 */
HcHouseAir *
hc_house_air_new (const HcHouseAirAsk *ask)
{
  guint n_rooms = hc_house_get_n_rooms (ask->house);
  g_autoptr (HcHouseAir) self = make_empty (n_rooms);

  self->air.n_spaces = find_spaces (self, ask->house);
  if (self->air.n_spaces == 0)
    return NULL;
  hc_house_air_set_weather (self, ask, &ask->weather);
  for (guint i = 0; i < n_rooms; i++)
    if (self->space_of_room[i] != HC_AIR_OUTSIDE)
      hc_house_air_add_surfaces (self, ask, i);
  for (guint i = 0; i < n_rooms; i++)
    if (self->space_of_room[i] != HC_AIR_OUTSIDE)
      hc_house_air_add_ways (self, ask, i);
  hc_house_air_add_jets (self, ask);
  hc_house_air_set_birds (self, ask);
  return g_steal_pointer (&self);
}

void
hc_house_air_free (HcHouseAir *self)
{
  g_array_unref (self->paths);
  g_array_unref (self->ways);
  g_array_unref (self->surfaces);
  g_ptr_array_unref (self->parts);
  g_array_unref (self->wets);
  g_array_unref (self->jets);
  g_free (self->space_of_room);
  g_free (self);
}

const HcAirWay *
hc_house_air_get_way (const HcHouseAir *self, guint way)
{
  return &g_array_index (self->ways, HcAirWay, way);
}

/* Where it stands open there is no wall to lose heat through. */
void
hc_house_air_add_path (HcHouseAir *self, const HcAirPath *path, const HcAirWay *way)
{
  g_array_append_val (self->paths, *path);
  g_array_append_val (self->ways, *way);
  if (way->surface >= 0)
    g_array_index (self->surfaces, HcAirSurface, way->surface).area_m2
        -= way->face_m2 * way->open;
}

int
hc_house_air_find_surface (const HcHouseAir *self, const char *part)
{
  for (guint i = 0; i < self->parts->len; i++)
    if (g_strcmp0 (self->parts->pdata[i], part) == 0)
      return (int) i;
  return -1;
}

void
hc_house_air_add_surface (HcHouseAir *self, const HcAirSurface *surface, const char *id)
{
  g_array_append_val (self->surfaces, *surface);
  g_ptr_array_add (self->parts, (gpointer) id);
}

int
hc_house_air_get_space (const HcHouseAir *self, const HcHouseAirAsk *ask, const char *pen)
{
  guint room;

  return hc_house_find_room (ask->house, pen, &room) ? self->space_of_room[room]
                                                     : HC_AIR_OUTSIDE;
}

/**
 * hc_house_air_add_vent: (skip)
 * @self: the house
 * @space: a space of it
 * @area_m2: its area, m²
 * @bottom_m: its lower edge, m
 * @height_m: its height, m
 *
 * Adds a vent that the plan has not, to ask what it would do. No wind presses on it.
 */
void
hc_house_air_add_vent (HcHouseAir *self, int space, double area_m2, double bottom_m,
                       double height_m)
{
  HcAirWay way = { .id = "", .whole_m2 = area_m2 * HC_DISCHARGE_SHARP, .open = 1, .surface = -1 };
  HcAirPath path = { .space = space,
                     .beyond = HC_AIR_OUTSIDE,
                     .effective_m2 = way.whole_m2,
                     .bottom_m = bottom_m,
                     .height_m = height_m,
                     .stir_m3_s
                     = hc_still_air_exchange_m3_s (way.whole_m2, 0, height_m, 0) };

  hc_house_air_add_path (self, &path, &way);
  point_at_lists (self);
}

/**
 * hc_house_air_open: (skip)
 * @self: the house
 * @way: index of a vent or window
 * @share: how far it shall stand open, 0 to 1
 */
void
hc_house_air_open (HcHouseAir *self, guint way, double share)
{
  HcAirPath *path = &g_array_index (self->paths, HcAirPath, way);
  HcAirWay *vent = &g_array_index (self->ways, HcAirWay, way);
  double open = CLAMP (share, 0, 1);

  path->effective_m2 = vent->whole_m2 * open;
  path->stir_m3_s = hc_still_air_exchange_m3_s (path->effective_m2, 0, path->height_m, 0);
  if (vent->surface >= 0)
    g_array_index (self->surfaces, HcAirSurface, vent->surface).area_m2
        += vent->face_m2 * (vent->open - open);
  vent->open = open;
}

/**
 * hc_house_air_open_vents: (skip)
 * @self: the house
 * @share: how far every vent and window of it shall stand open, 0 to 1
 */
void
hc_house_air_open_vents (HcHouseAir *self, double share)
{
  for (guint i = 0; i < self->ways->len; i++)
    if (hc_house_air_get_way (self, i)->is_vent)
      hc_house_air_open (self, i, share);
}

/**
 * hc_house_air_has_vents: (skip)
 * @self: the house
 *
 * Returns: whether it has a vent or window to open
 */
gboolean
hc_house_air_has_vents (const HcHouseAir *self)
{
  for (guint i = 0; i < self->ways->len; i++)
    if (hc_house_air_get_way (self, i)->is_vent)
      return TRUE;
  return FALSE;
}
