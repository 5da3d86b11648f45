/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A house as air knows it: what of a question cannot be. */
#include "config.h"

#include "air/air-house.h"

#include "air/moist-air.h"

#include <math.h>

static gboolean
draw_in (double *value, double least, double most, double otherwise)
{
  double asked = *value;

  *value = isnan (asked) ? otherwise : CLAMP (asked, least, most);
  return *value != asked;
}

/**
 * hc_air_outside_draw_in: (skip)
 * @outside: the air outside; what cannot be is drawn into what can
 *
 * -60 to 60 °C, 0 to 1 of humidity, 0 to 60 m/s, 40,000 to 110,000 Pa.
 *
 * Returns: a #HcAirFault for each figure that was drawn in
 */
guint
hc_air_outside_draw_in (HcAirOutside *outside)
{
  guint faults = 0;

  if (draw_in (&outside->t_c, -60, 60, 0))
    faults |= HC_AIR_FAULT_TEMPERATURE;
  if (draw_in (&outside->humidity, 0, 1, 1))
    faults |= HC_AIR_FAULT_HUMIDITY;
  if (draw_in (&outside->wind_m_s, 0, 60, 0))
    faults |= HC_AIR_FAULT_WIND;
  if (draw_in (&outside->pressure_pa, 40000, 110000, HC_STANDARD_PRESSURE_PA))
    faults |= HC_AIR_FAULT_PRESSURE;
  draw_in (&outside->co2_ppm, 0, 10000, 420);
  return faults;
}
