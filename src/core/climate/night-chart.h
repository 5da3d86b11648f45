/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Nights over outside temperature and vent opening, and the opening advised. */
#pragma once

#include "climate/night.h"

G_BEGIN_DECLS

/**
 * HC_NIGHT_CHART_MOST:
 *
 * The most points along a side of a chart.
 */
#define HC_NIGHT_CHART_MOST 50

/**
 * HcNightPoint:
 * @outside_c: temperature outside, °C
 * @open: how far vents and windows stand open, 0 to 1
 * @t_c: temperature at the roost that is worst off, °C
 * @humidity: humidity there
 * @co2_ppm: carbon dioxide there, ppm
 * @ammonia_ppm: ammonia there, ppm
 * @water_g_h: fog, dew and frost there, g/h
 * @faults: what can be mended wherever birds sleep, a set of #HcNightFault
 * @cold: what cold alone does
 *
 * One night of a chart.
 */
typedef struct
{
  double outside_c;
  double open;
  double t_c;
  double humidity;
  double co2_ppm;
  double ammonia_ppm;
  double water_g_h;
  guint faults;
  HcColdRisk cold;
} HcNightPoint;

/**
 * HcVentAdvice:
 * @HC_VENT_ADVICE_FINE: nothing avoidable is wrong as it is
 * @HC_VENT_ADVICE_OPEN: open the vents so far
 * @HC_VENT_ADVICE_LESS_HARM: no opening clears all; this one does least harm
 * @HC_VENT_ADVICE_NO_VENTS: there is no vent to open
 *
 * What to do with the vents.
 */
typedef enum
{
  HC_VENT_ADVICE_FINE,
  HC_VENT_ADVICE_OPEN,
  HC_VENT_ADVICE_LESS_HARM,
  HC_VENT_ADVICE_NO_VENTS,
} HcVentAdvice;

GArray *hc_night_chart (const HcHouseAirAsk *ask, double coldest_c, double warmest_c, guint side)
    G_GNUC_WARN_UNUSED_RESULT;
gboolean hc_night_chart_find_free (const GArray *points, guint side, guint column, double *from,
                                   double *to);
HcVentAdvice hc_night_advise (const HcHouseAirAsk *ask, const HcNight *night, double *open);

G_END_DECLS
