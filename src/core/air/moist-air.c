/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Air and the vapour in it. */
#include "config.h"

#include "air/moist-air.h"

#include <math.h>

/* Gas constant of dry air, J/(kg·K), and water's molar mass against it. */
#define GAS_CONSTANT 287.042
#define MOLAR_RATIO 0.621945
#define VAPOUR_VOLUME 1.607858

/* No air is wetter than this, whatever is asked: it would be half water. */
#define MOST_RATIO 1.0

static double
draw_in (double value, double least, double most)
{
  return isnan (value) ? least : CLAMP (value, least, most);
}

static double
draw_pressure (double pressure_pa)
{
  return draw_in (pressure_pa, 1000, 1e6);
}

static double
draw_kelvin (double t_c)
{
  return HC_KELVIN + draw_in (t_c, -100, 200);
}

/**
 * hc_air_pressure_pa: (skip)
 * @elevation_m: height above the sea, m; drawn into -500 to 9000
 *
 * The standard atmosphere, ASHRAE Handbook of Fundamentals, chapter 1, equation 3.
 *
 * Returns: pressure of the air, Pa
 */
double
hc_air_pressure_pa (double elevation_m)
{
  double z = draw_in (elevation_m, -500, 9000);

  return HC_STANDARD_PRESSURE_PA * pow (1 - 2.25577e-5 * z, 5.2559);
}

/**
 * hc_air_density_kg_m3: (skip)
 * @t_c: temperature, °C; drawn into -100 to 200
 * @pressure_pa: pressure, Pa
 *
 * The ideal gas. Vapour changes it by less than 1 % below 10 °C.
 *
 * Returns: density of dry air, kg/m³
 */
double
hc_air_density_kg_m3 (double t_c, double pressure_pa)
{
  return draw_pressure (pressure_pa) / (GAS_CONSTANT * draw_kelvin (t_c));
}

/**
 * hc_vapour_to_ratio: (skip)
 * @vapour_pa: vapour pressure, Pa
 * @pressure_pa: pressure, Pa
 *
 * Dalton's law for ideal gases; a ratio above 1 is given as 1.
 *
 * Returns: humidity ratio, kg water in each kg of dry air
 */
double
hc_vapour_to_ratio (double vapour_pa, double pressure_pa)
{
  double p = draw_pressure (pressure_pa);
  double most_pa = p * MOST_RATIO / (MOLAR_RATIO + MOST_RATIO);
  double vapour = draw_in (vapour_pa, 0, most_pa);

  return MOLAR_RATIO * vapour / (p - vapour);
}

/**
 * hc_vapour_from_ratio_pa: (skip)
 * @ratio: humidity ratio, kg/kg; drawn into 0 to 1
 * @pressure_pa: pressure, Pa
 *
 * Returns: vapour pressure, Pa
 */
double
hc_vapour_from_ratio_pa (double ratio, double pressure_pa)
{
  double w = draw_in (ratio, 0, MOST_RATIO);

  return draw_pressure (pressure_pa) * w / (MOLAR_RATIO + w);
}

/**
 * hc_moist_air_ratio: (skip)
 * @t_c: temperature, °C; drawn into -100 to 200
 * @humidity: relative humidity, over ice below 0.01 °C; drawn into 0 to 1
 * @pressure_pa: pressure, Pa
 *
 * ASHRAE Handbook of Fundamentals, chapter 1, ideal-gas relations.
 *
 * Returns: humidity ratio, kg water in each kg of dry air
 */
double
hc_moist_air_ratio (double t_c, double humidity, double pressure_pa)
{
  return hc_vapour_to_ratio (draw_in (humidity, 0, 1) * hc_saturation_pa (t_c), pressure_pa);
}

/**
 * hc_moist_air_humidity: (skip)
 * @t_c: temperature, °C; drawn into -100 to 200
 * @ratio: humidity ratio, kg/kg
 * @pressure_pa: pressure, Pa
 *
 * Returns: relative humidity, over ice below 0.01 °C; at most 1
 */
double
hc_moist_air_humidity (double t_c, double ratio, double pressure_pa)
{
  return MIN (hc_vapour_from_ratio_pa (ratio, pressure_pa) / hc_saturation_pa (t_c), 1);
}

/**
 * hc_moist_air_dew_point_c: (skip)
 * @ratio: humidity ratio, kg/kg
 * @pressure_pa: pressure, Pa
 *
 * Returns: dew point, or frost point below 0.01 °C; -100 for air without water
 */
double
hc_moist_air_dew_point_c (double ratio, double pressure_pa)
{
  return hc_saturation_get_c (hc_vapour_from_ratio_pa (ratio, pressure_pa));
}

/**
 * hc_moist_air_ratio_from_wet_bulb: (skip)
 * @t_c: temperature, °C
 * @wet_bulb_c: what a thermometer in a wet or frozen wick shows, °C
 * @pressure_pa: pressure, Pa
 *
 * ASHRAE Handbook of Fundamentals, chapter 1, equations 33 (water) and 35 (ice),
 * from -100 to 200 °C.
 *
 * Returns: humidity ratio, kg/kg; negative where no air is so dry
 */
double
hc_moist_air_ratio_from_wet_bulb (double t_c, double wet_bulb_c, double pressure_pa)
{
  double t = draw_in (t_c, -100, 200);
  double wick = draw_in (wet_bulb_c, -100, t);
  double saturated = hc_moist_air_ratio (wick, 1, pressure_pa);

  if (wick >= 0)
    return ((2501 - 2.326 * wick) * saturated - 1.006 * (t - wick))
           / (2501 + 1.86 * t - 4.186 * wick);
  return ((2830 - 0.24 * wick) * saturated - 1.006 * (t - wick)) / (2830 + 1.86 * t - 2.1 * wick);
}

/**
 * hc_moist_air_wet_bulb_c: (skip)
 * @t_c: temperature, °C; drawn into -100 to 200
 * @ratio: humidity ratio, kg/kg
 * @pressure_pa: pressure, Pa
 *
 * hc_moist_air_ratio_from_wet_bulb() turned round by halving.
 *
 * Returns: what a thermometer in a wet or frozen wick shows, °C
 */
double
hc_moist_air_wet_bulb_c (double t_c, double ratio, double pressure_pa)
{
  double high = draw_in (t_c, -100, 200);
  double low = MIN (hc_moist_air_dew_point_c (ratio, pressure_pa), high);

  for (guint i = 0; i < 50 && high - low > 1e-9; i++)
    {
      double middle = (low + high) / 2;

      if (hc_moist_air_ratio_from_wet_bulb (t_c, middle, pressure_pa) > ratio)
        high = middle;
      else
        low = middle;
    }
  return (low + high) / 2;
}

/**
 * hc_moist_air_enthalpy_j_kg: (skip)
 * @t_c: temperature, °C; drawn into -100 to 200
 * @ratio: humidity ratio, kg/kg
 *
 * ASHRAE Handbook of Fundamentals, chapter 1, equation 30.
 *
 * Returns: heat above dry air of 0 °C, J for each kg of dry air
 */
double
hc_moist_air_enthalpy_j_kg (double t_c, double ratio)
{
  double t = draw_in (t_c, -100, 200);

  return 1000 * (1.006 * t + draw_in (ratio, 0, MOST_RATIO) * (2501 + 1.86 * t));
}

/**
 * hc_moist_air_from_enthalpy_c: (skip)
 * @enthalpy_j_kg: heat above dry air of 0 °C, J for each kg of dry air
 * @ratio: humidity ratio, kg/kg
 *
 * Returns: the temperature of that air, °C, from -100 to 200
 */
double
hc_moist_air_from_enthalpy_c (double enthalpy_j_kg, double ratio)
{
  double w = draw_in (ratio, 0, MOST_RATIO);

  return draw_in ((enthalpy_j_kg / 1000 - 2501 * w) / (1.006 + 1.86 * w), -100, 200);
}

/**
 * hc_moist_air_volume_m3_kg: (skip)
 * @t_c: temperature, °C; drawn into -100 to 200
 * @ratio: humidity ratio, kg/kg
 * @pressure_pa: pressure, Pa
 *
 * ASHRAE Handbook of Fundamentals, chapter 1, equation 26.
 *
 * Returns: room that holds 1 kg of dry air, m³
 */
double
hc_moist_air_volume_m3_kg (double t_c, double ratio, double pressure_pa)
{
  return GAS_CONSTANT * draw_kelvin (t_c) * (1 + VAPOUR_VOLUME * draw_in (ratio, 0, MOST_RATIO))
         / draw_pressure (pressure_pa);
}

/**
 * hc_moist_air_density_kg_m3: (skip)
 * @t_c: temperature, °C; drawn into -100 to 200
 * @ratio: humidity ratio, kg/kg
 * @pressure_pa: pressure, Pa
 *
 * Returns: density of air and vapour together, kg/m³
 */
double
hc_moist_air_density_kg_m3 (double t_c, double ratio, double pressure_pa)
{
  return (1 + draw_in (ratio, 0, MOST_RATIO))
         / hc_moist_air_volume_m3_kg (t_c, ratio, pressure_pa);
}

/**
 * hc_humidity_from_weather_service: (skip)
 * @t_c: temperature, °C; drawn into -100 to 200
 * @over_water: relative humidity as weather services state it; drawn into 0 to 1
 *
 * Weather services state humidity over liquid water in any frost (from memory: a
 * convention of the World Meteorological Organization). Over ice 80 % at -20 °C
 * is 97 %.
 *
 * Returns: relative humidity, over ice below 0.01 °C; at most 1
 */
double
hc_humidity_from_weather_service (double t_c, double over_water)
{
  return MIN (draw_in (over_water, 0, 1) * hc_saturation_over_water_pa (t_c)
                  / hc_saturation_pa (t_c), 1);
}
