/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The hot day in the house: sun on the roof, wind and warmth through the vents. */
#include "config.h"

#include "climate/hot-day.h"

#include "air/moist-air.h"
#include "flock/heat-stress.h"

/* Air about the birds in a house without fans, m/s. */
#define STILL_M_S 0.2

static double
find (const HcHouseAirAsk *ask, const char *id)
{
  return hc_book_get_air_figure (hc_flock_get_book (ask->flock), id)->value;
}

static double
find_index_c (const HcKind *kind, const HcAirSpaceState *air, double pressure_pa)
{
  double wet_bulb_c = hc_moist_air_wet_bulb_c (air->t_c, air->ratio, pressure_pa);

  if (kind->species == HC_SPECIES_DUCK || kind->species == HC_SPECIES_GOOSE)
    return hc_heat_index_turkeys_c (air->t_c, wet_bulb_c);
  return kind->raised_for_meat ? hc_heat_index_broilers_c (air->t_c, wet_bulb_c, STILL_M_S)
                               : hc_heat_index_layers_c (air->t_c, wet_bulb_c);
}

static HcHeatRisk
find_risk (const HcHouseAirAsk *ask, double index_c)
{
  if (index_c >= find (ask, "heat_danger"))
    return HC_HEAT_DANGER;
  if (index_c >= find (ask, "heat_stress"))
    return HC_HEAT_STRESS;
  return index_c >= find (ask, "heat_watch") ? HC_HEAT_WATCH : HC_HEAT_COMFORT;
}

static void
add_kind (const HcKind *kind, gint64 birds, double index_c, HcHeatRisk risk, HcHotDay *day)
{
  guint at = 0;

  while (at < day->n_kinds && day->kinds[at].kind != kind)
    at++;
  if (at == HC_HOT_DAY_MOST_KINDS)
    return;
  if (at == day->n_kinds)
    day->kinds[day->n_kinds++] = (HcHotKind){ kind, 0, index_c, risk };
  day->kinds[at].birds += birds;
  day->kinds[at].index_c = MAX (day->kinds[at].index_c, index_c);
  day->kinds[at].risk = MAX (day->kinds[at].risk, risk);
}

/* Chicks under heat want it warm. */
static void
tell_kinds (const HcHouseAirAsk *ask, const HcHouseAir *house, const HcAirState *state,
            HcHotDay *day)
{
  for (guint i = 0; i < hc_flock_get_n_rows (ask->flock); i++)
    {
      const HcFlockRow *row = hc_flock_get_row (ask->flock, i);
      const HcBody *body = hc_flock_get_body (ask->flock, row->body);
      int space = hc_house_air_get_space (house, ask, row->pen);
      double index_c;

      if (space == HC_AIR_OUTSIDE || row->count == 0 || body->under_heat)
        continue;
      index_c = find_index_c (body->kind, &state->spaces[space], house->air.outside.pressure_pa);
      add_kind (body->kind, row->count, index_c, find_risk (ask, index_c), day);
      day->index_c = MAX (day->index_c, index_c);
      day->risk = MAX (day->risk, find_risk (ask, index_c));
    }
}

static void
tell_space (const HcHouseAir *house, const HcAirSpaceState *air, HcHotDay *day)
{
  const HcAirOutside *outside = &house->air.outside;

  day->t_c = air->t_c;
  day->humidity = air->humidity;
  day->above_outside_k = air->t_c - outside->t_c;
  day->fresh_m3_h = air->fresh_kg_s * 3600
                    / hc_air_density_kg_m3 (outside->t_c, outside->pressure_pa);
}

/**
 * hc_hot_day_settle: (skip)
 * @house: the house on a hot day
 * @ask: what it is made from
 * @day: (out caller-allocates): the day
 *
 * Indicative: the bands of the index are our own.
 */
void
hc_hot_day_settle (const HcHouseAir *house, const HcHouseAirAsk *ask, HcHotDay *day)
{
  HcAirState state;

  hc_hot_day_settle_near (house, ask, NULL, day, &state);
}

/**
 * hc_hot_day_settle_near: (skip)
 * @house: the house on a hot day
 * @ask: what it is made from
 * @near: (nullable): a state to begin from
 * @day: (out caller-allocates): the day
 * @state: (out caller-allocates): its air
 */
void
hc_hot_day_settle_near (const HcHouseAir *house, const HcHouseAirAsk *ask,
                        const HcAirState *near, HcHotDay *day, HcAirState *state)
{
  HcAirStates states;
  gboolean any = FALSE;

  *day = (HcHotDay){ .n_spaces = house->air.n_spaces };
  if (near != NULL)
    hc_air_settle_near (&house->air, near, &states);
  else
    hc_air_settle (&house->air, &states);
  *state = states.states[states.worst];
  for (guint i = 0; i < house->air.n_spaces; i++)
    {
      const HcAirSpaceState *air = &state->spaces[i];

      if (house->flocks[i].birds == 0 || (any && air->t_c <= day->t_c))
        continue;
      tell_space (house, air, day);
      any = TRUE;
    }
  tell_kinds (ask, house, state, day);
}

/**
 * hc_hot_day_init_weather: (skip)
 * @ask: the house and its birds; its weather is put to a hot day
 * @outside_c: how hot it is outside, °C
 *
 * Vents stand open as for summer and the sun is on the roof.
 */
void
hc_hot_day_init_weather (HcHouseAirAsk *ask, double outside_c)
{
  ask->weather = (HcWeather){ outside_c, find (ask, "hot_humidity"), find (ask, "hot_wind_m_s"),
                              TRUE };
}

/**
 * hc_hot_day_work_out: (skip)
 * @ask: the house and its birds
 * @day: (out caller-allocates): the hottest day of the place
 */
void
hc_hot_day_work_out (const HcHouseAirAsk *ask, HcHotDay *day)
{
  HcHouseAirAsk hot = *ask;
  g_autoptr (HcHouseAir) house = NULL;

  *day = (HcHotDay){ 0 };
  hc_hot_day_init_weather (&hot, ask->site->hottest_day_c);
  house = hc_house_air_new (&hot);
  if (house != NULL)
    hc_hot_day_settle (house, &hot, day);
}
