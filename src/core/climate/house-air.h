/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A house, its birds and its weather, as the solver of the air wants them. */
#pragma once

#include "air/steady.h"
#include "climate/guess.h"
#include "climate/space-flock.h"
#include "flock/flock.h"
#include "plan/site.h"
#include "supply/house.h"

G_BEGIN_DECLS

/**
 * HcWeather:
 * @t_c: temperature outside, °C
 * @humidity: relative humidity as weather services state it, over water, 0 to 1
 * @wind_m_s: wind on a mast in the open, m/s
 * @sun: whether it is a hot day with the sun on the roof; else a night
 *
 * The weather to plan for.
 */
typedef struct
{
  double t_c;
  double humidity;
  double wind_m_s;
  gboolean sun;
} HcWeather;

/**
 * HcRoostJet:
 * @path: a way whose air blows at the height of a bar
 * @distance_m: how far the bar is, m
 *
 * Air that may blow on sleeping birds.
 */
typedef struct
{
  guint path;
  double distance_m;
} HcRoostJet;

/**
 * HcAirWay:
 * @id: id of its opening or wall, empty for cracks
 * @whole_m2: what lets air through when it is all open, with its discharge, m²
 * @face_m2: its face, m², as much of it as its wall has
 * @open: how far it stands open, 0 to 1
 * @surface: which surface it is a hole in; -1 for none
 * @is_vent: whether the keeper opens and shuts it for air
 *
 * What the plan knows of a way for air.
 */
typedef struct
{
  const char *id;
  double whole_m2;
  double face_m2;
  double open;
  int surface;
  gboolean is_vent;
} HcAirWay;

/**
 * HcHouseAir:
 * @air: the house, for the solver; it reads from the lists below
 * @paths: (element-type HcAirPath): ways for air
 * @ways: (element-type HcAirWay): the same ways, as the plan knows them
 * @surfaces: (element-type HcAirSurface): surfaces
 * @parts: (element-type utf8): for each surface the id of its wall or pen
 * @wets: (element-type HcAirWet): wet things
 * @jets: (element-type HcRoostJet): what may blow on sleeping birds
 * @flocks: the birds of each space
 * @space_of_room: for each room of the house its space, or %HC_AIR_OUTSIDE
 * @faults: what of the weather was drawn in: a set of #HcAirFault
 *
 * A house as the solver wants it.
 */
typedef struct
{
  HcAirHouse air;
  GArray *paths;
  GArray *ways;
  GArray *surfaces;
  GPtrArray *parts;
  GArray *wets;
  GArray *jets;
  HcSpaceFlock flocks[HC_AIR_MOST_SPACES];
  int *space_of_room;
  guint faults;
} HcHouseAir;

/**
 * HcHouseAirAsk:
 * @house: the house
 * @flock: its birds
 * @site: where it stands
 * @weather: the weather
 * @guesses: what is reckoned with
 *
 * What a house's air is worked out from.
 */
typedef struct
{
  HcHouse *house;
  HcFlock *flock;
  const HcSiteValues *site;
  HcWeather weather;
  HcGuesses guesses;
} HcHouseAirAsk;

void hc_house_air_ask_init (HcHouseAirAsk *ask, HcHouse *house, HcFlock *flock,
                            const HcSiteValues *site);
HcHouseAir *hc_house_air_new (const HcHouseAirAsk *ask) G_GNUC_WARN_UNUSED_RESULT;
void hc_house_air_free (HcHouseAir *self);
void hc_house_air_set_weather (HcHouseAir *self, const HcHouseAirAsk *ask,
                               const HcWeather *weather);
void hc_house_air_set_birds (HcHouseAir *self, const HcHouseAirAsk *ask);
void hc_house_air_open (HcHouseAir *self, guint way, double share);
void hc_house_air_open_vents (HcHouseAir *self, double share);
void hc_house_air_add_vent (HcHouseAir *self, int space, double area_m2, double bottom_m,
                            double height_m);
gboolean hc_house_air_has_vents (const HcHouseAir *self);
const HcAirWay *hc_house_air_get_way (const HcHouseAir *self, guint way);

/* Shared by the files that make one. */
void hc_house_air_add_path (HcHouseAir *self, const HcAirPath *path, const HcAirWay *way);
int hc_house_air_find_surface (const HcHouseAir *self, const char *part);
void hc_house_air_add_surface (HcHouseAir *self, const HcAirSurface *surface, const char *id);
void hc_house_air_add_ways (HcHouseAir *self, const HcHouseAirAsk *ask, guint room);
void hc_house_air_add_surfaces (HcHouseAir *self, const HcHouseAirAsk *ask, guint room);
void hc_house_air_add_jets (HcHouseAir *self, const HcHouseAirAsk *ask);
void hc_house_air_add_birds (HcHouseAir *self, const HcHouseAirAsk *ask);
void hc_house_air_add_drinkers (HcHouseAir *self, const HcHouseAirAsk *ask, guint room);
double hc_house_air_get_wall_m2 (const HcRoom *room, const HcRoomWall *wall);
double hc_house_air_get_coefficient (const HcHouseAirAsk *ask, const HcRoom *room,
                                     const HcRoomWall *wall);
int hc_house_air_get_space (const HcHouseAir *self, const HcHouseAirAsk *ask, const char *pen);

G_DEFINE_AUTOPTR_CLEANUP_FUNC (HcHouseAir, hc_house_air_free)

G_END_DECLS
