/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The hot day in the house: sun on the roof, wind and warmth through the vents. */
#include "config.h"

#include "climate/hot-day.h"

#include "air/moist-air.h"
#include "flock/heat-stress.h"

static double
find (const HcHouseAirAsk *ask, const char *id)
{
  return hc_book_get_air_figure (hc_flock_get_book (ask->flock), id)->value;
}

static gboolean
has_meat_birds (const HcHouseAirAsk *ask)
{
  for (guint i = 0; i < hc_flock_get_n_bodies (ask->flock); i++)
    if (!hc_flock_get_body (ask->flock, i)->kind->raised_for_meat)
      return FALSE;
  return hc_flock_get_n_bodies (ask->flock) > 0;
}

static double
find_index_c (const HcHouseAirAsk *ask, const HcAirSpaceState *air, double pressure_pa)
{
  double wet_bulb_c = hc_moist_air_wet_bulb_c (air->t_c, air->ratio, pressure_pa);

  return has_meat_birds (ask) ? hc_heat_index_broilers_c (air->t_c, wet_bulb_c, 0.2)
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
tell_space (const HcHouseAirAsk *ask, const HcHouseAir *house, const HcAirSpaceState *air,
            HcHotDay *day)
{
  const HcAirOutside *outside = &house->air.outside;

  day->t_c = air->t_c;
  day->humidity = air->humidity;
  day->index_c = find_index_c (ask, air, outside->pressure_pa);
  day->above_outside_k = air->t_c - outside->t_c;
  day->fresh_m3_h = air->fresh_kg_s * 3600
                    / hc_air_density_kg_m3 (outside->t_c, outside->pressure_pa);
  day->risk = find_risk (ask, day->index_c);
}

/**
 * hc_hot_day_work_out: (skip)
 * @ask: the house and its birds; its weather is put to the hottest day of the place
 * @day: (out caller-allocates): the day
 *
 * Vents stand open as for summer and the sun is on the roof. Indicative: the bands of
 * the index are our own.
 */
void
hc_hot_day_work_out (const HcHouseAirAsk *ask, HcHotDay *day)
{
  HcHouseAirAsk hot = *ask;
  g_autoptr (HcHouseAir) house = NULL;
  HcAirStates states;
  gboolean any = FALSE;

  *day = (HcHotDay){ 0 };
  hot.weather = (HcWeather){ ask->site->hottest_day_c, find (ask, "hot_humidity"),
                             find (ask, "hot_wind_m_s"), TRUE };
  house = hc_house_air_new (&hot);
  if (house == NULL)
    return;
  hc_air_settle (&house->air, &states);
  day->n_spaces = house->air.n_spaces;
  for (guint i = 0; i < house->air.n_spaces; i++)
    {
      const HcAirSpaceState *air = &states.states[states.worst].spaces[i];

      if (house->flocks[i].birds == 0 || (any && air->t_c <= day->t_c))
        continue;
      tell_space (&hot, house, air, day);
      any = TRUE;
    }
}
