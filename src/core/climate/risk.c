/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * How much avoidable risk a night holds. */
#include "config.h"

#include "climate/risk.h"

/**
 * hc_night_get_faults: (skip)
 * @night: a night
 *
 * Returns: all that can be mended where birds sleep, a set of #HcNightFault
 */
guint
hc_night_get_faults (const HcNight *night)
{
  guint faults = 0;

  for (guint i = 0; i < night->n_spaces; i++)
    if (night->spaces[i].birds > 0)
      faults |= night->spaces[i].faults;
  return faults;
}

/**
 * hc_night_count_faults: (skip)
 * @night: a night
 * @mask: which faults count
 *
 * Returns: how many there are, those of each space where birds sleep by themselves
 */
guint
hc_night_count_faults (const HcNight *night, guint mask)
{
  guint n = 0;

  for (guint i = 0; i < night->n_spaces; i++)
    for (guint faults = night->spaces[i].birds > 0 ? night->spaces[i].faults & mask : 0;
         faults != 0; faults &= faults - 1)
      n++;
  return n;
}

static double
find (const HcHouseAirAsk *ask, const char *id)
{
  return hc_book_get_air_figure (hc_flock_get_book (ask->flock), id)->value;
}

/**
 * hc_night_get_damp_humidity: (skip)
 * @house: the house
 * @ask: what it is made from
 *
 * Damp the house adds to the air outside can be mended; what comes in with it cannot.
 *
 * Returns: from which humidity on the air inside counts as damp, 0 to 1
 */
double
hc_night_get_damp_humidity (const HcHouseAir *house, const HcHouseAirAsk *ask)
{
  return MAX (find (ask, "damp_humidity"), house->air.outside.humidity);
}

static double
get_excess (double is, double from, double to)
{
  return CLAMP ((is - from) / MAX (to - from, 1e-6), 0, 1);
}

static double
get_space_risk (const HcHouseAir *house, const HcHouseAirAsk *ask, const HcNightSpace *space,
                guint faults)
{
  double damp = hc_night_get_damp_humidity (house, ask);
  double draught_m_s = find (ask, "draught_m_s");
  double stale = MAX (space->air.ammonia_ppm / find (ask, "ammonia_act"),
                      space->air.co2_ppm / find (ask, "co2_most"));
  double risk = 0;

  if (faults & HC_NIGHT_DAMP_AIR)
    risk += 1 + get_excess (space->air.humidity, damp, 1.001);
  if (faults & HC_NIGHT_SWEATING)
    risk += 1 + get_excess (space->n_wet_surfaces, 0, house->air.n_surfaces);
  if (faults & HC_NIGHT_OPEN_WATER)
    risk += 1;
  if (faults & HC_NIGHT_DRAUGHT)
    risk += 1 + get_excess (space->draught_m_s, draught_m_s, 10 * draught_m_s);
  if (faults & HC_NIGHT_STALE)
    risk += 1 + get_excess (stale, 1, 10);
  return risk;
}

/**
 * hc_night_get_risk: (skip)
 * @house: the house
 * @ask: what it is made from
 * @night: its night
 * @mask: which faults count
 *
 * Returns: how bad they are together: 1 to 2 for each, more the worse it is; 0 for none
 */
double
hc_night_get_risk (const HcHouseAir *house, const HcHouseAirAsk *ask, const HcNight *night,
                   guint mask)
{
  double risk = 0;

  for (guint i = 0; i < night->n_spaces; i++)
    if (night->spaces[i].birds > 0)
      risk += get_space_risk (house, ask, &night->spaces[i], night->spaces[i].faults & mask);
  return risk;
}
