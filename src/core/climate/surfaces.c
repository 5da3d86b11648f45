/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What of a room passes heat: walls, roof and floor. */
#include "config.h"

#include "climate/house-air.h"

#include "air/surface.h"
#include "plan/roof.h"

#define MM_M 1e-3

/* Air under a raised floor is sheltered. */
#define UNDER_FLOOR_M2K_W 0.17

static double
find_u (const HcHouseAirAsk *ask, const char *id, const char *otherwise)
{
  const HcBook *book = hc_flock_get_book (ask->flock);
  const HcConstruction *found = hc_book_get_construction (book, id);

  return found != NULL ? found->u_w_m2k : hc_book_get_air_figure (book, otherwise)->value;
}

static void
add_wall (HcHouseAir *self, const HcHouseAirAsk *ask, guint room, const HcRoomWall *wall)
{
  HcAirSurface surface = {
    .space = self->space_of_room[room],
    .beyond = hc_house_air_get_space (self, ask, wall->beyond),
    .area_m2 = hc_house_air_get_wall_m2 (hc_house_get_room (ask->house, room), wall),
    .u_w_m2k = find_u (ask, hc_wall_get (wall->wall)->construction, "bare_wall_u"),
    .film_m2k_w = HC_FILM_WALL,
    .deposition_kg_m2_s = HC_DEPOSITION_KG_M2_S,
  };

  if (surface.beyond == surface.space
      || (surface.beyond != HC_AIR_OUTSIDE && surface.beyond < surface.space))
    return;
  hc_house_air_add_surface (self, &surface, hc_wall_get_id (wall->wall));
}

/* Wind takes the roof's chill away: 4 + 4v W/(m²·K) outside (from memory). */
static double
find_roof_warmth_k (const HcHouseAir *self, const HcHouseAirAsk *ask, int colour)
{
  static const char *const absorbed[] = { [HC_ROOF_COLOUR_LIGHT] = "sun_absorbed_light",
                                          [HC_ROOF_COLOUR_MIDDLE] = "sun_absorbed",
                                          [HC_ROOF_COLOUR_DARK] = "sun_absorbed_dark" };
  const HcBook *book = hc_flock_get_book (ask->flock);

  if (!ask->weather.sun)
    return -ask->guesses.at[HC_GUESS_CLEAR_SKY] / (1 + self->air.outside.wind_m_s);
  return hc_roof_sun_k (hc_book_get_air_figure (book, absorbed[colour])->value,
                        hc_book_get_air_figure (book, "sun_w_m2")->value);
}

static void
add_roof (HcHouseAir *self, const HcHouseAirAsk *ask, guint room)
{
  HcRoom *here = hc_house_get_room (ask->house, room);
  g_autoptr (GArray) ring
      = hc_layout_get_pen_ring (hc_house_get_layout (ask->house), hc_room_get_pen (here));
  HcAirSurface surface = {
    .space = self->space_of_room[room],
    .beyond = HC_AIR_OUTSIDE,
    .u_w_m2k = find_u (ask, hc_room_get (here)->roof_construction, "bare_roof_u"),
    .film_m2k_w = HC_FILM_ROOF,
    .warmer_k = find_roof_warmth_k (self, ask, hc_room_get (here)->roof_colour),
    .deposition_kg_m2_s = HC_DEPOSITION_KG_M2_S,
  };

  if (ring == NULL)
    return;
  surface.area_m2 = hc_roof_get_area_mm2 (hc_room_get_roof (here),
                                          (const HcPoint *) (gpointer) ring->data, ring->len)
                    * MM_M * MM_M;
  hc_house_air_add_surface (self, &surface, hc_pen_get_id (hc_room_get_pen (here)));
}

/* What lies on the floor, m²·K/W, and whether it stands clear of the ground. */
static double
find_floor_m2k_w (const HcHouseAirAsk *ask, const HcPenValues *pen, gboolean *raised)
{
  const HcBook *book = hc_flock_get_book (ask->flock);
  const HcBedding *bedding = hc_book_get_bedding (book, pen->bedding);
  double sum = 0;

  *raised = FALSE;
  for (guint i = 0; pen->floor_layers != NULL && pen->floor_layers[i] != NULL; i++)
    {
      const HcFloorLayer *layer = hc_book_get_floor_layer (book, pen->floor_layers[i]);

      if (layer == NULL)
        continue;
      *raised |= layer->raised;
      if (layer->conductivity_w_mk > 0)
        sum += layer->thickness_mm * MM_M / layer->conductivity_w_mk;
    }
  if (bedding != NULL && bedding->conductivity_w_mk > 0)
    sum += pen->bedding_mm * MM_M / bedding->conductivity_w_mk;
  return sum;
}

static double
find_outer_edge_m (const HcRoom *room)
{
  double sum_mm = 0;

  for (guint i = 0; i < hc_room_get_n_walls (room); i++)
    if (hc_room_wall_is_outer (hc_room_get_wall (room, i)))
      sum_mm += hc_point_distance (hc_room_get_wall (room, i)->from,
                                   hc_room_get_wall (room, i)->to);
  return sum_mm * MM_M;
}

static void
add_floor (HcHouseAir *self, const HcHouseAirAsk *ask, guint room)
{
  HcRoom *here = hc_house_get_room (ask->house, room);
  gboolean raised;
  double layers_m2k_w = find_floor_m2k_w (ask, hc_room_get (here), &raised);
  HcAirSurface surface = {
    .space = self->space_of_room[room],
    .beyond = HC_AIR_OUTSIDE,
    .area_m2 = hc_shape_get_area_mm2 (hc_room_get_outline (here)) * MM_M * MM_M,
    .u_w_m2k = hc_surface_u_of_layers (HC_FILM_FLOOR, layers_m2k_w, UNDER_FLOOR_M2K_W),
    .film_m2k_w = HC_FILM_FLOOR,
  };

  if (raised)
    hc_house_air_add_surface (self, &surface, "");
  else
    self->air.spaces[self->space_of_room[room]].edge_w_k += hc_floor_edge_w_k (
        find_outer_edge_m (here), ask->guesses.at[HC_GUESS_FLOOR_EDGE]);
}

void
hc_house_air_add_surfaces (HcHouseAir *self, const HcHouseAirAsk *ask, guint room)
{
  HcRoom *here = hc_house_get_room (ask->house, room);

  for (guint i = 0; i < hc_room_get_n_walls (here); i++)
    if (hc_wall_get (hc_room_get_wall (here, i)->wall)->kind == HC_WALL_SOLID)
      add_wall (self, ask, room, hc_room_get_wall (here, i));
  add_roof (self, ask, room);
  add_floor (self, ask, room);
}
