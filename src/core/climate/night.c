/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * One night in the house: how cold, how damp, how stale, and what of it can be mended. */
#include "config.h"

#include "climate/night.h"

#include "air/moist-air.h"
#include "climate/risk.h"

#define G_H 3.6e6
#define SECONDS_AN_HOUR 3600.0

static double
find (const HcHouseAirAsk *ask, const char *id)
{
  return hc_book_get_air_figure (hc_flock_get_book (ask->flock), id)->value;
}

/**
 * hc_night_is_sweating: (skip)
 * @night: a night
 * @house: its house
 * @surface: which of its surfaces
 *
 * Returns: whether dew, or frost below 0 °C, settles on it
 */
gboolean
hc_night_is_sweating (const HcNight *night, const HcHouseAir *house, guint surface)
{
  const HcAirSurface *face = &house->air.surfaces[surface];

  return face->deposition_kg_m2_s > 0
         && hc_air_state_get_surface_c (&night->state, &house->air, face)
                < night->state.spaces[face->space].dew_point_c;
}

static gboolean
has_open_water (const HcHouseAir *house, guint space)
{
  for (guint i = 0; i < house->wets->len; i++)
    if (house->air.wets[i].space == (int) space && house->air.wets[i].open_water)
      return TRUE;
  return FALSE;
}

static gboolean
is_damp (const HcHouseAir *house, const HcHouseAirAsk *ask, const HcAirSpaceState *air)
{
  return air->humidity >= hc_night_get_damp_humidity (house, ask);
}

/* What comes in with the air outside cannot be mended: only surfaces that air as dry as
 * that would keep dry count. */
static guint
count_wet_surfaces (const HcHouseAir *house, const HcHouseAirAsk *ask, const HcNight *night,
                    guint space)
{
  const HcAirOutside *outside = &house->air.outside;
  double outside_dew_c = hc_moist_air_dew_point_c (
      hc_moist_air_ratio (outside->t_c, outside->humidity, outside->pressure_pa),
      outside->pressure_pa);
  double margin_k = find (ask, "sweat_margin_k");
  guint n = 0;

  for (guint i = 0; i < house->air.n_surfaces; i++)
    {
      const HcAirSurface *surface = &house->air.surfaces[i];
      double face_c = hc_air_state_get_surface_c (&night->state, &house->air, surface);

      if (surface->space == (int) space && surface->deposition_kg_m2_s > 0
          && face_c < night->state.spaces[space].dew_point_c - margin_k && face_c > outside_dew_c)
        n++;
    }
  return n;
}

static guint
find_faults (const HcHouseAir *house, const HcHouseAirAsk *ask, const HcNightSpace *space,
             guint at)
{
  guint faults = 0;

  if (is_damp (house, ask, &space->air))
    faults |= HC_NIGHT_DAMP_AIR;
  if (space->n_wet_surfaces > 0)
    faults |= HC_NIGHT_SWEATING;
  if (space->air.t_c < 0 && has_open_water (house, at)
      && hc_cold_find_comb (house, ask, at) != HC_COMB_NONE)
    faults |= HC_NIGHT_OPEN_WATER;
  if (space->draught_m_s >= find (ask, "draught_m_s"))
    faults |= HC_NIGHT_DRAUGHT;
  if (space->air.ammonia_ppm > find (ask, "ammonia_act")
      || space->air.co2_ppm > find (ask, "co2_most"))
    faults |= HC_NIGHT_STALE;
  return faults;
}

static const char *
find_pen (const HcHouseAir *house, const HcHouseAirAsk *ask, guint space)
{
  for (guint i = 0; i < hc_house_get_n_rooms (ask->house); i++)
    if (house->space_of_room[i] == (int) space)
      return hc_pen_get_id (hc_room_get_pen (hc_house_get_room (ask->house, i)));
  return "";
}

static double
find_outside_volume (const HcAirOutside *outside)
{
  double ratio = hc_moist_air_ratio (outside->t_c, outside->humidity, outside->pressure_pa);

  return hc_moist_air_volume_m3_kg (outside->t_c, ratio, outside->pressure_pa);
}

static void
tell_space (const HcHouseAir *house, const HcHouseAirAsk *ask, HcNight *night, guint at)
{
  HcNightSpace *space = &night->spaces[at];
  const HcAirSpaceState *air = &night->state.spaces[at];

  space->pen = find_pen (house, ask, at);
  space->birds = house->flocks[at].birds;
  space->air = *air;
  space->fresh_m3_h
      = air->fresh_kg_s * find_outside_volume (&house->air.outside) * SECONDS_AN_HOUR;
  space->water_g_h = (air->frost_kg_s + air->deposit_kg_s) * G_H;
  space->draught_m_s
      = hc_roost_get_draught_m_s (hc_flock_get_book (ask->flock), house, &night->state, at);
  space->n_wet_surfaces = count_wet_surfaces (house, ask, night, at);
  space->faults = find_faults (house, ask, space, at);
  space->cold = hc_cold_risk (hc_flock_get_book (ask->flock), air->t_c, space->draught_m_s,
                              hc_cold_find_comb (house, ask, at));
  space->t_c = (HcRange){ air->t_c, air->t_c };
  space->humidity = (HcRange){ air->humidity, air->humidity };
  space->co2_ppm = (HcRange){ air->co2_ppm, air->co2_ppm };
}

static gboolean
is_worse (const HcNightSpace *a, const HcNightSpace *b)
{
  if ((a->birds > 0) != (b->birds > 0))
    return a->birds > 0;
  if ((a->faults != 0) != (b->faults != 0))
    return a->faults != 0;
  return a->air.humidity > b->air.humidity;
}

/**
 * hc_night_get_worst: (skip)
 * @night: a night
 *
 * Returns: (transfer none) (nullable): the space with birds that is worst off, %NULL
 *   where nothing is under a roof
 */
const HcNightSpace *
hc_night_get_worst (const HcNight *night)
{
  return night->n_spaces > 0 ? &night->spaces[night->worst] : NULL;
}

/**
 * hc_night_settle: (skip)
 * @house: the house for the solver
 * @ask: what it is made from
 * @near: (nullable): a state to begin from
 * @night: (out caller-allocates): the night
 *
 * A night without the ranges of its figures.
 */
void
hc_night_settle (const HcHouseAir *house, const HcHouseAirAsk *ask, const HcAirState *near,
                 HcNight *night)
{
  HcAirStates states;

  if (near != NULL)
    hc_air_settle_near (&house->air, near, &states);
  else
    hc_air_settle (&house->air, &states);
  night->air_faults = states.faults | house->faults;
  night->state = states.states[states.worst];
  night->n_states = 0;
  for (guint i = 0; i < states.n_states; i++)
    night->n_states += states.states[i].stable ? 1 : 0;
  night->n_spaces = house->air.n_spaces;
  night->worst = 0;
  for (guint i = 0; i < night->n_spaces; i++)
    {
      tell_space (house, ask, night, i);
      if (is_worse (&night->spaces[i], &night->spaces[night->worst]))
        night->worst = i;
    }
}

/**
 * hc_night_work_out: (skip)
 * @ask: the house, its birds and its weather
 * @night: (out caller-allocates): the night; without a space where nothing is under a roof
 */
void
hc_night_work_out (const HcHouseAirAsk *ask, HcNight *night)
{
  g_autoptr (HcHouseAir) house = hc_house_air_new (ask);

  *night = (HcNight){ 0 };
  if (house == NULL)
    return;
  hc_night_settle (house, ask, NULL, night);
  hc_night_find_ranges (ask, night);
}
