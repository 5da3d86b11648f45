/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * How hard heat is on birds, and wind on bare skin. */
#include "config.h"

#include "flock/heat-stress.h"

#include <math.h>

/**
 * hc_heat_index_layers_c: (skip)
 * @t_c: temperature, °C
 * @wet_bulb_c: wet bulb, °C
 *
 * Zulovich and DeShazer 1990 (from memory); it gives what Kang 2020 published for
 * 27 °C, 56 % and 36 °C, 45 %.
 *
 * Returns: the index of warmth and damp for hens, °C
 */
double
hc_heat_index_layers_c (double t_c, double wet_bulb_c)
{
  return 0.6 * t_c + 0.4 * wet_bulb_c;
}

/**
 * hc_heat_index_turkeys_c: (skip)
 * @t_c: temperature, °C
 * @wet_bulb_c: wet bulb, °C
 *
 * Xin 1992, for turkeys; nearest to heavy birds and waterfowl for want of their own.
 *
 * Returns: the index of warmth and damp, °C
 */
double
hc_heat_index_turkeys_c (double t_c, double wet_bulb_c)
{
  return 0.74 * t_c + 0.26 * wet_bulb_c;
}

/**
 * hc_heat_index_broilers_c: (skip)
 * @t_c: temperature, °C
 * @wet_bulb_c: wet bulb, °C
 * @air_m_s: speed of the air about the birds, m/s; drawn into 0.2 to 1.2
 *
 * Tao and Xin 2003, measured from 35 to 41 °C.
 *
 * Returns: the index of warmth, damp and moving air for meat chickens, °C
 */
double
hc_heat_index_broilers_c (double t_c, double wet_bulb_c, double air_m_s)
{
  return (0.85 * t_c + 0.15 * wet_bulb_c) * pow (CLAMP (air_m_s, 0.2, 1.2), -0.058);
}

/**
 * hc_heat_index_livestock: (skip)
 * @t_c: temperature, °C
 * @humidity: relative humidity, 0 to 1
 *
 * The index of farm animals at large.
 *
 * Returns: the index, no unit
 */
double
hc_heat_index_livestock (double t_c, double humidity)
{
  return 0.8 * t_c + humidity * (t_c - 14.4) + 46.4;
}

/**
 * hc_wind_chill_c: (skip)
 * @t_c: temperature, °C
 * @wind_km_h: wind at 10 m, km/h; below 5 nothing is taken off
 *
 * The index of North American weather services (from memory), for human faces.
 *
 * Returns: temperature that chills as much in still air, °C
 */
double
hc_wind_chill_c (double t_c, double wind_km_h)
{
  double k = pow (MAX (wind_km_h, 0), 0.16);

  return wind_km_h < 5 ? t_c
                       : MIN (13.12 + 0.6215 * t_c - 11.37 * k + 0.3965 * t_c * k, t_c);
}
