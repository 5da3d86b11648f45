/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * How sure a night is: what each uncertain figure does to it. */
#include "config.h"

#include "climate/night.h"

#include <math.h>

typedef struct
{
  double low;
  double high;
} Spread;

static void
widen (Spread *spread, double by)
{
  double *side = by < 0 ? &spread->low : &spread->high;

  *side += by * by;
}

static HcRange
get_range (double at, const Spread *spread)
{
  HcRange range = { at - sqrt (spread->low), at + sqrt (spread->high) };

  return range;
}

/**
 * hc_night_find_ranges: (skip)
 * @ask: the house, its birds and its weather
 * @night: the night worked out; its ranges are filled in
 *
 * Each uncertain figure is put to either end of its range alone; what they do adds up
 * by squares, as errors that do not know of each other do.
 */
void
hc_night_find_ranges (const HcHouseAirAsk *ask, HcNight *night)
{
  Spread spreads[HC_AIR_MOST_SPACES][3] = { 0 };

  for (guint guess = 0; guess < HC_N_GUESSES; guess++)
    for (guint end = 0; end < 2; end++)
      {
        const HcAirFigure *figure
            = hc_guess_get_figure (hc_flock_get_book (ask->flock), guess);
        HcHouseAirAsk other = *ask;
        g_autoptr (HcHouseAir) house = NULL;
        HcAirStates states;

        other.guesses.at[guess] = end == 0 ? figure->low : figure->high;
        house = hc_house_air_new (&other);
        hc_air_settle_near (&house->air, &night->state, &states);
        for (guint i = 0; i < night->n_spaces; i++)
          {
            const HcAirSpaceState *there = &states.states[states.worst].spaces[i];
            const HcAirSpaceState *here = &night->spaces[i].air;

            widen (&spreads[i][0], there->t_c - here->t_c);
            widen (&spreads[i][1], there->humidity - here->humidity);
            widen (&spreads[i][2], there->co2_ppm - here->co2_ppm);
          }
      }
  for (guint i = 0; i < night->n_spaces; i++)
    {
      HcNightSpace *space = &night->spaces[i];

      space->t_c = get_range (space->air.t_c, &spreads[i][0]);
      space->humidity = get_range (space->air.humidity, &spreads[i][1]);
      space->humidity.low = MAX (space->humidity.low, 0);
      space->humidity.high = MIN (space->humidity.high, 1);
      space->co2_ppm = get_range (space->air.co2_ppm, &spreads[i][2]);
    }
}
