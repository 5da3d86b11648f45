/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A house as air knows it: spaces, ways between them, surfaces and wet things. */
#pragma once

#include "air/dense.h"

G_BEGIN_DECLS

/**
 * HC_AIR_MOST_SPACES:
 *
 * The most air spaces a house is reckoned with.
 */
#define HC_AIR_MOST_SPACES HC_DENSE_MOST

/**
 * HC_AIR_OUTSIDE:
 *
 * Stands for the air outside where a space is asked for.
 */
#define HC_AIR_OUTSIDE (-1)

/**
 * HcAirFault:
 * @HC_AIR_FAULT_TEMPERATURE: a temperature no place on earth has; drawn in
 * @HC_AIR_FAULT_HUMIDITY: humidity below 0 or above 1; drawn in
 * @HC_AIR_FAULT_WIND: wind below 0 or above 60 m/s; drawn in
 * @HC_AIR_FAULT_PRESSURE: pressure no place on earth has; drawn in
 * @HC_AIR_FAULT_SEALED: a space no air gets into
 * @HC_AIR_FAULT_UNSETTLED: no steady state was found
 *
 * What is wrong with a question, or its answer.
 */
typedef enum
{
  HC_AIR_FAULT_TEMPERATURE = 1 << 0,
  HC_AIR_FAULT_HUMIDITY = 1 << 1,
  HC_AIR_FAULT_WIND = 1 << 2,
  HC_AIR_FAULT_PRESSURE = 1 << 3,
  HC_AIR_FAULT_SEALED = 1 << 4,
  HC_AIR_FAULT_UNSETTLED = 1 << 5,
} HcAirFault;

/**
 * HcAirOutside:
 * @t_c: temperature, °C
 * @humidity: relative humidity, 0 to 1, over ice below 0.01 °C
 * @pressure_pa: pressure, Pa
 * @wind_m_s: wind at the house, m/s
 * @co2_ppm: carbon dioxide, ppm
 *
 * The air outside.
 */
typedef struct
{
  double t_c;
  double humidity;
  double pressure_pa;
  double wind_m_s;
  double co2_ppm;
} HcAirOutside;

/**
 * HcAirSource:
 * @heat_w: heat given to the air, W; what dries up their own vapour is taken out
 * @vapour_kg_s: vapour, kg/s
 * @co2_m3_s: carbon dioxide, m³/s
 * @ammonia_kg_s: ammonia, kg/s
 *
 * What those who live in a space give to its air.
 */
typedef struct
{
  double heat_w;
  double vapour_kg_s;
  double co2_m3_s;
  double ammonia_kg_s;
} HcAirSource;

/**
 * HcAirEmit:
 * @who: who lives there
 * @t_c: temperature of the space, °C
 * @source: (out): what they give
 *
 * Tells what is given to the air at a temperature.
 */
typedef void (*HcAirEmit) (gconstpointer who, double t_c, HcAirSource *source);

/**
 * HcAirSpace:
 * @emit: (nullable): tells what is given to its air
 * @who: given to @emit
 * @power_w: heaters and lamps, W
 * @edge_w_k: heat its floor loses to the ground outside, W/K
 *
 * One body of air.
 */
typedef struct
{
  HcAirEmit emit;
  gconstpointer who;
  double power_w;
  double edge_w_k;
} HcAirSpace;

/**
 * HcAirPath:
 * @space: the space it opens from
 * @beyond: the space it opens to, or %HC_AIR_OUTSIDE
 * @effective_m2: area times discharge coefficient, m²
 * @bottom_m: its lower edge, m above the reference level
 * @height_m: its height, m; 0 for all at one level
 * @pressure_coefficient: how the wind presses on it outside
 * @stir_m3_s: air changed both ways when nothing drives it, m³/s
 * @crack_m3_s: for a crack its flow at 1 Pa, m³/s; else 0
 * @crack_exponent: for a crack the power of the push it grows with
 *
 * A way for air.
 */
typedef struct
{
  int space;
  int beyond;
  double effective_m2;
  double bottom_m;
  double height_m;
  double pressure_coefficient;
  double stir_m3_s;
  double crack_m3_s;
  double crack_exponent;
} HcAirPath;

/**
 * HcAirSurface:
 * @space: the space inside of it
 * @beyond: the space beyond it, or %HC_AIR_OUTSIDE
 * @area_m2: its area, m²
 * @u_w_m2k: heat it passes, W/(m²·K)
 * @film_m2k_w: resistance of the air on its inside, m²·K/W
 * @warmer_k: how much warmer than the air it seems outside: sun, or the night sky
 * @deposition_kg_m2_s: vapour it takes up, kg/(m²·s) for each kg/kg beyond
 *   saturation; 0 leaves all the water in the air
 *
 * A wall, roof or floor that passes heat.
 */
typedef struct
{
  int space;
  int beyond;
  double area_m2;
  double u_w_m2k;
  double film_m2k_w;
  double warmer_k;
  double deposition_kg_m2_s;
} HcAirSurface;

/**
 * HcAirWet:
 * @space: the space it is in
 * @at_air: whether it is as warm as the air; else @t_c
 * @t_c: its temperature, °C
 * @kg_s_pa: water that dries up for each pascal the air is short of, kg/(s·Pa)
 * @most_kg_s: all the water it gets, kg/s
 * @open_water: whether it is water that stands open
 *
 * A wet thing: litter, open water, splashes. The heat that dries it up is the air's.
 */
typedef struct
{
  int space;
  gboolean at_air;
  double t_c;
  double kg_s_pa;
  double most_kg_s;
  gboolean open_water;
} HcAirWet;

/**
 * HcAirHouse:
 * @outside: the air outside
 * @n_spaces: how many spaces, 1 to %HC_AIR_MOST_SPACES
 * @spaces: the spaces
 * @n_paths: how many ways
 * @paths: (array length=n_paths): the ways
 * @n_surfaces: how many surfaces
 * @surfaces: (array length=n_surfaces): the surfaces
 * @n_wets: how many wet things
 * @wets: (array length=n_wets): the wet things
 *
 * All a night or a day is reckoned from. The lists are the caller's.
 */
typedef struct
{
  HcAirOutside outside;
  guint n_spaces;
  HcAirSpace spaces[HC_AIR_MOST_SPACES];
  guint n_paths;
  const HcAirPath *paths;
  guint n_surfaces;
  const HcAirSurface *surfaces;
  guint n_wets;
  const HcAirWet *wets;
} HcAirHouse;

guint hc_air_outside_draw_in (HcAirOutside *outside);

G_END_DECLS
