/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Ways for air of a room: openings, open walls and cracks. */
#include "config.h"

#include "climate/house-air.h"

#include "air/leakage.h"
#include "air/opening-flow.h"
#include "air/wind.h"
#include "plan/roof.h"

#include <math.h>

#define MM_M 1e-3

/* Where nothing is known of a wall or roof: cracks, cm²/m². */
#define PLAIN_LEAK_CM2_M2 5

/* Cracks no farther apart than this are at one level, m. */
#define SAME_LEVEL_M 0.3

static const HcBook *
get_book (const HcHouseAirAsk *ask)
{
  return hc_flock_get_book (ask->flock);
}

double
hc_house_air_get_wall_m2 (const HcRoom *room, const HcRoomWall *wall)
{
  double height_mm = hc_wall_get (wall->wall)->height_mm;

  return height_mm > 0
             ? hc_point_distance (wall->from, wall->to) * height_mm * MM_M * MM_M
             : hc_roof_get_wall_area_mm2 (hc_room_get_roof (room), wall->from, wall->to) * MM_M
                   * MM_M;
}

static gboolean
is_clockwise (const HcRoom *room)
{
  double doubled = 0;

  for (guint i = 0; i < hc_room_get_n_walls (room); i++)
    doubled += hc_point_cross (hc_room_get_wall (room, i)->from, hc_room_get_wall (room, i)->to);
  return doubled > 0;
}

double
hc_house_air_get_coefficient (const HcHouseAirAsk *ask, const HcRoom *room,
                              const HcRoomWall *wall)
{
  HcPoint along = hc_point_subtract (wall->to, wall->from);
  double way = is_clockwise (room) ? 1 : -1;

  double faces_deg = atan2 (way * along.y_mm, way * along.x_mm) * 180 / G_PI;

  return hc_wind_wall_coefficient (faces_deg - ask->site->wind_from_deg, 1);
}

/* What the mesh over it and the dirt in that leave of an opening. */
static double
find_discharge (const HcHouseAirAsk *ask, const char *mesh)
{
  const HcMesh *found = hc_book_get_mesh (get_book (ask), mesh);
  double discharge = ask->guesses.at[HC_GUESS_DISCHARGE];

  return found == NULL ? discharge
                       : hc_mesh_discharge (discharge, found->free_area) * found->clogged;
}

static gboolean
is_vent (const HcOpeningValues *values)
{
  return values->kind == HC_OPENING_VENT || values->kind == HC_OPENING_WINDOW;
}

static double
find_open_share (const HcOpeningValues *values, gboolean sun)
{
  if (is_vent (values))
    return sun ? values->open_summer : values->open_winter;
  return values->open_by_day && (sun || !values->shut_at_dusk) ? 1 : 0;
}

static int
find_beyond (const HcHouseAir *self, const HcHouseAirAsk *ask, const HcRoomWall *wall)
{
  return hc_house_air_get_space (self, ask, wall->beyond);
}

/* No more of a wall can be hole than there is wall. */
static double
find_face_m2 (const HcHouseAir *self, double wanted_m2, double wall_m2, int surface)
{
  double left_m2 = wall_m2;

  for (guint i = 0; surface >= 0 && i < self->ways->len; i++)
    if (hc_house_air_get_way (self, i)->surface == surface)
      left_m2 -= hc_house_air_get_way (self, i)->face_m2;
  return CLAMP (wanted_m2, 0, MAX (left_m2, 0));
}

static void
add_opening (HcHouseAir *self, const HcHouseAirAsk *ask, guint room, const HcOpening *opening,
             const HcRoomWall *wall)
{
  const HcOpeningValues *values = hc_opening_get (opening);
  HcRoom *here = hc_house_get_room (ask->house, room);
  HcAirWay way = {
    .id = hc_opening_get_id (opening),
    .open = find_open_share (values, ask->weather.sun),
    .surface = hc_house_air_find_surface (self, hc_wall_get_id (wall->wall)),
    .is_vent = is_vent (values),
  };
  HcAirPath path = {
    .space = self->space_of_room[room],
    .beyond = find_beyond (self, ask, wall),
    .bottom_m = values->sill_mm * MM_M,
    .height_m = values->height_mm * MM_M,
    .pressure_coefficient = hc_house_air_get_coefficient (ask, here, wall),
  };

  if (path.beyond == path.space)
    return;
  way.face_m2 = find_face_m2 (self, values->width_mm * values->height_mm * MM_M * MM_M,
                              hc_house_air_get_wall_m2 (here, wall), way.surface);
  way.whole_m2 = way.face_m2 * find_discharge (ask, values->mesh);
  path.effective_m2 = way.whole_m2 * way.open;
  path.stir_m3_s = hc_still_air_exchange_m3_s (path.effective_m2, 0, path.height_m, 0);
  hc_house_air_add_path (self, &path, &way);
}

/* Air passes a wall of mesh all over. */
static void
add_open_wall (HcHouseAir *self, const HcHouseAirAsk *ask, guint room, const HcRoomWall *wall)
{
  HcRoom *here = hc_house_get_room (ask->house, room);
  double area_m2 = hc_house_air_get_wall_m2 (here, wall);
  double length_m = hc_point_distance (wall->from, wall->to) * MM_M;
  HcAirPath path = {
    .space = self->space_of_room[room],
    .beyond = find_beyond (self, ask, wall),
    .effective_m2 = area_m2 * find_discharge (ask, hc_wall_get (wall->wall)->mesh),
    .height_m = area_m2 / MAX (length_m, 0.01),
    .pressure_coefficient = hc_house_air_get_coefficient (ask, here, wall),
    .stir_m3_s = hc_still_air_exchange_m3_s (area_m2, 0, 0, 0),
  };

  HcAirWay way = { .id = hc_wall_get_id (wall->wall), .surface = -1, .open = 1 };

  if (path.beyond != path.space)
    hc_house_air_add_path (self, &path, &way);
}

/* Cracks that the wind and the warmth work on alike are one. */
static void
add_crack (HcHouseAir *self, const HcAirPath *crack)
{
  const HcAirWay plain = { .id = "", .surface = -1, .open = 1 };

  for (guint i = 0; i < self->paths->len; i++)
    {
      HcAirPath *path = &g_array_index (self->paths, HcAirPath, i);

      if (*hc_house_air_get_way (self, i)->id == '\0' && path->space == crack->space
          && fabs (path->pressure_coefficient - crack->pressure_coefficient) < 1e-9
          && fabs (path->bottom_m - crack->bottom_m) < SAME_LEVEL_M)
        {
          path->effective_m2 += crack->effective_m2;
          return;
        }
    }
  hc_house_air_add_path (self, crack, &plain);
}

/* Cracks lie half low and half high. */
static void
add_cracks (HcHouseAir *self, const HcHouseAirAsk *ask, HcAirPath path, double area_m2,
            const char *construction, double low_m, double high_m)
{
  const HcConstruction *found = hc_book_get_construction (get_book (ask), construction);
  double leak_cm2_m2 = found != NULL ? found->leak_cm2_m2 : PLAIN_LEAK_CM2_M2;

  path.effective_m2 = hc_leakage_area_m2 (area_m2, leak_cm2_m2 * ask->guesses.at[HC_GUESS_CRACKS])
                      * HC_DISCHARGE_SHARP / 2;
  path.bottom_m = low_m;
  add_crack (self, &path);
  path.bottom_m = high_m;
  add_crack (self, &path);
}

static void
add_wall_cracks (HcHouseAir *self, const HcHouseAirAsk *ask, guint room, const HcRoomWall *wall)
{
  HcRoom *here = hc_house_get_room (ask->house, room);
  double area_m2 = hc_house_air_get_wall_m2 (here, wall);
  double height_m = area_m2 / MAX (hc_point_distance (wall->from, wall->to) * MM_M, 0.01);
  HcAirPath path = { .space = self->space_of_room[room],
                     .beyond = find_beyond (self, ask, wall),
                     .pressure_coefficient = hc_house_air_get_coefficient (ask, here, wall) };

  if (path.beyond == HC_AIR_OUTSIDE)
    add_cracks (self, ask, path, area_m2, hc_wall_get (wall->wall)->construction, 0.1 * height_m,
                0.9 * height_m);
}

/* The ridge's normal is clockwise from the plan's x, the wind from north, which is up. */
static double
find_roof_coefficient (const HcHouseAirAsk *ask, const HcRoom *room)
{
  return hc_wind_roof_coefficient (
      hc_roof_is_sloped (hc_room_get_roof (room)) ? 20 : 0,
      ask->site->wind_from_deg - hc_room_get (room)->roof_turn_deg - 90);
}

static void
add_roof_cracks (HcHouseAir *self, const HcHouseAirAsk *ask, guint room)
{
  HcRoom *here = hc_house_get_room (ask->house, room);
  const HcRoof *roof = hc_room_get_roof (here);
  double area_m2 = hc_shape_get_area_mm2 (hc_room_get_outline (here)) * MM_M * MM_M;
  HcAirPath path = { .space = self->space_of_room[room],
                     .beyond = HC_AIR_OUTSIDE,
                     .pressure_coefficient = find_roof_coefficient (ask, here) };

  add_cracks (self, ask, path, area_m2, hc_room_get (here)->roof_construction,
              roof->eaves_mm * MM_M, MAX (roof->ridge_mm, roof->eaves_mm) * MM_M);
}

/* A wall between two pens is seen from both; it is a way once. */
static gboolean
is_seen_first (const HcHouseAirAsk *ask, guint room, const HcRoomWall *wall)
{
  guint other;

  return !hc_house_find_room (ask->house, wall->beyond, &other) || room < other
         || hc_room_get (hc_house_get_room (ask->house, other))->kind != HC_PEN_INDOOR;
}

void
hc_house_air_add_ways (HcHouseAir *self, const HcHouseAirAsk *ask, guint room)
{
  HcRoom *here = hc_house_get_room (ask->house, room);
  HcParts *openings = hc_room_get_openings (here);

  for (guint i = 0; i < openings->len; i++)
    {
      const HcRoomWall *wall = hc_room_get_wall_of (here, openings->pdata[i]);

      if (wall != NULL && is_seen_first (ask, room, wall))
        add_opening (self, ask, room, openings->pdata[i], wall);
    }
  for (guint i = 0; i < hc_room_get_n_walls (here); i++)
    {
      const HcRoomWall *wall = hc_room_get_wall (here, i);

      if (!is_seen_first (ask, room, wall))
        continue;
      if (hc_wall_get (wall->wall)->kind == HC_WALL_SOLID)
        add_wall_cracks (self, ask, room, wall);
      else
        add_open_wall (self, ask, room, wall);
    }
  add_roof_cracks (self, ask, room);
}
