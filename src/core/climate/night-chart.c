/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Nights over outside temperature and vent opening, and the opening advised. */
#include "config.h"

#include "climate/night-chart.h"

#include "climate/risk.h"

/* Openings tried for advice: every twentieth. */
#define N_OPENINGS 20

static HcNightPoint
tell_point (const HcNight *night, double outside_c, double open)
{
  const HcNightSpace *space = &night->spaces[night->worst];
  HcNightPoint point = {
    .outside_c = outside_c,
    .open = open,
    .t_c = space->air.t_c,
    .humidity = space->air.humidity,
    .co2_ppm = space->air.co2_ppm,
    .ammonia_ppm = space->air.ammonia_ppm,
    .water_g_h = space->water_g_h,
    .faults = hc_night_get_faults (night),
    .cold = space->cold,
  };

  return point;
}

static void
add_row (HcHouseAir *house, const HcHouseAirAsk *ask, double coldest_c, double warmest_c,
         guint side, double open, GArray *points)
{
  HcNight night;

  hc_house_air_open_vents (house, open);
  for (guint i = 0; i < side; i++)
    {
      HcWeather weather = ask->weather;
      HcAirState near = night.state;
      HcNightPoint point;

      weather.t_c = coldest_c + (warmest_c - coldest_c) * i / (side - 1);
      hc_house_air_set_weather (house, ask, &weather);
      hc_night_settle (house, ask, i > 0 ? &near : NULL, &night);
      point = tell_point (&night, weather.t_c, open);
      g_array_append_val (points, point);
    }
}

/**
 * hc_night_chart: (skip)
 * @ask: the house, its birds and its weather
 * @coldest_c: the coldest outside, °C
 * @warmest_c: the warmest outside, °C
 * @side: points each way, 2 to %HC_NIGHT_CHART_MOST
 *
 * Returns: (transfer full) (element-type HcNightPoint): nights, a row for each opening
 *   from shut to all open; none where nothing is under a roof
 */
GArray *
hc_night_chart (const HcHouseAirAsk *ask, double coldest_c, double warmest_c, guint side)
{
  GArray *points = g_array_new (FALSE, FALSE, sizeof (HcNightPoint));
  g_autoptr (HcHouseAir) house = hc_house_air_new (ask);
  guint n = CLAMP (side, 2, HC_NIGHT_CHART_MOST);

  for (guint row = 0; house != NULL && row < n; row++)
    add_row (house, ask, coldest_c, warmest_c, n, (double) row / (n - 1), points);
  return points;
}

/**
 * hc_night_chart_find_free: (skip)
 * @points: (element-type HcNightPoint): a chart
 * @side: points each way
 * @column: which temperature
 * @from: (out): the least opening free of what vents can mend, 0 to 1
 * @to: (out): the most
 *
 * Returns: whether any opening is
 */
gboolean
hc_night_chart_find_free (const GArray *points, guint side, guint column, double *from,
                          double *to)
{
  gboolean any = FALSE;

  for (guint row = 0; row < side; row++)
    {
      const HcNightPoint *point = &g_array_index (points, HcNightPoint, row * side + column);

      if (point->faults & HC_NIGHT_VENT_FAULTS)
        continue;
      *from = any ? *from : point->open;
      *to = point->open;
      any = TRUE;
    }
  return any;
}

/* No vent takes open water away. */
static guint
count_faults (guint faults)
{
  guint n = 0;

  faults &= ~HC_NIGHT_OPEN_WATER;
  for (; faults != 0; faults &= faults - 1)
    n++;
  return n;
}

/* Fewest faults, then the driest air; the smallest of equal openings keeps most warmth. */
static gboolean
is_better (const HcNightSpace *a, const HcNightSpace *b)
{
  guint faults = count_faults (a->faults);

  if (faults != count_faults (b->faults))
    return faults < count_faults (b->faults);
  return faults > 0 && a->air.humidity < b->air.humidity - 0.01;
}

/**
 * hc_night_advise: (skip)
 * @ask: the house, its birds and its weather
 * @night: its night as it is
 * @open: (out): how far to open vents and windows, 0 to 1
 *
 * Openings are tried one by one: dry first, no draught, then as warm as that allows.
 *
 * Returns: what to do
 */
HcVentAdvice
hc_night_advise (const HcHouseAirAsk *ask, const HcNight *night, double *open)
{
  g_autoptr (HcHouseAir) house = hc_house_air_new (ask);
  HcNightSpace best = night->spaces[night->worst];

  *open = 0;
  if (house == NULL || count_faults (best.faults) == 0)
    return HC_VENT_ADVICE_FINE;
  if (!hc_house_air_has_vents (house))
    return HC_VENT_ADVICE_NO_VENTS;
  best.faults = ~0u;
  for (guint i = 0; i <= N_OPENINGS; i++)
    {
      HcNight other = { 0 };

      hc_house_air_open_vents (house, (double) i / N_OPENINGS);
      hc_night_settle (house, ask, NULL, &other);
      if (!is_better (&other.spaces[other.worst], &best))
        continue;
      best = other.spaces[other.worst];
      *open = (double) i / N_OPENINGS;
    }
  return count_faults (best.faults) == 0 ? HC_VENT_ADVICE_OPEN : HC_VENT_ADVICE_LESS_HARM;
}
