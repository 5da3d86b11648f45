/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Walls, roofs and floors: the heat they pass, how cold their inside is, what freezes on it. */
#include "config.h"

#include "air/surface.h"

#include "air/moist-air.h"

#include <math.h>

/**
 * hc_surface_u_of_layers: (skip)
 * @film_m2k_w: resistance of the air inside, m²·K/W
 * @layers_m2k_w: resistance of what it is made of
 * @outside_m2k_w: resistance of the air outside
 *
 * ISO 6946: resistances one behind the other.
 *
 * Returns: heat it passes, W/(m²·K)
 */
double
hc_surface_u_of_layers (double film_m2k_w, double layers_m2k_w, double outside_m2k_w)
{
  return 1 / MAX (film_m2k_w + layers_m2k_w + outside_m2k_w, 0.01);
}

/**
 * hc_surface_u_with_layer: (skip)
 * @u_w_m2k: heat it passes, W/(m²·K)
 * @layer_m2k_w: resistance of one layer more, m²·K/W
 *
 * Returns: heat both pass, W/(m²·K)
 */
double
hc_surface_u_with_layer (double u_w_m2k, double layer_m2k_w)
{
  return u_w_m2k / (1 + u_w_m2k * MAX (layer_m2k_w, 0));
}

/**
 * hc_surface_parallel_u: (skip)
 * @first_u: heat one part passes, W/(m²·K), such as the studs
 * @first_share: its share of the area, 0 to 1
 * @second_u: heat the rest passes
 *
 * Parallel paths: ASHRAE Handbook of Fundamentals, chapter 25.
 *
 * Returns: heat the whole passes, W/(m²·K)
 */
double
hc_surface_parallel_u (double first_u, double first_share, double second_u)
{
  double share = CLAMP (first_share, 0, 1);

  return share * first_u + (1 - share) * second_u;
}

/**
 * hc_surface_inside_c: (skip)
 * @inside_c: temperature of the air inside, °C
 * @outside_c: temperature outside, °C
 * @u_w_m2k: heat it passes, W/(m²·K)
 * @film_m2k_w: resistance of the air inside, m²·K/W
 *
 * ISO 13788: the film takes its share of the fall.
 *
 * Returns: temperature of the inside face, °C
 */
double
hc_surface_inside_c (double inside_c, double outside_c, double u_w_m2k, double film_m2k_w)
{
  return inside_c - CLAMP (u_w_m2k * film_m2k_w, 0, 1) * (inside_c - outside_c);
}

/**
 * hc_surface_driest_limit: (skip)
 * @inside_c: temperature of the air inside, °C
 * @outside_c: temperature outside, °C
 * @u_w_m2k: heat it passes, W/(m²·K)
 * @film_m2k_w: resistance of the air inside, m²·K/W
 *
 * Returns: the relative humidity inside above which it sweats or freezes, at most 1
 */
double
hc_surface_driest_limit (double inside_c, double outside_c, double u_w_m2k, double film_m2k_w)
{
  double face_c = hc_surface_inside_c (inside_c, outside_c, u_w_m2k, film_m2k_w);

  return MIN (hc_saturation_pa (face_c) / hc_saturation_pa (inside_c), 1);
}

/**
 * hc_surface_deposit_kg_s: (skip)
 * @area_m2: the surface, m²
 * @ratio: humidity ratio of the air on it, kg/kg
 * @surface_c: its temperature, °C
 * @pressure_pa: pressure, Pa
 *
 * Lewis's relation (from memory): dew, or frost below 0.01 °C.
 *
 * Returns: water it takes out of the air, kg/s; 0 where it stays dry
 */
double
hc_surface_deposit_kg_s (double area_m2, double ratio, double surface_c, double pressure_pa)
{
  double beyond = ratio - hc_moist_air_ratio (surface_c, 1, pressure_pa);

  return MAX (HC_DEPOSITION_KG_M2_S * area_m2 * beyond, 0);
}

/**
 * hc_floor_edge_w_k: (skip)
 * @perimeter_m: outer edge of a floor on the ground, m
 * @f_w_mk: heat each metre of edge loses, W/(m·K): 1.263 for a bare slab
 *
 * The F-factor of energy codes (WAC 51-11C-61061); the cold-night choice, since it
 * loses more on small floors than ISO 13370 says.
 *
 * Returns: heat the floor loses, W/K
 */
double
hc_floor_edge_w_k (double perimeter_m, double f_w_mk)
{
  return MAX (perimeter_m, 0) * MAX (f_w_mk, 0);
}

/**
 * hc_floor_slab_u: (skip)
 * @area_m2: the floor, m²
 * @perimeter_m: its outer edge, m
 * @wall_m: thickness of the walls, m
 * @ground_w_mk: heat the ground conducts, W/(m·K): clay 1.5, sand 2, rock 3.5
 * @floor_m2k_w: resistance of the floor, m²·K/W
 *
 * ISO 13370, slab on the ground (from memory; within 10 % of the IHVE guide's
 * table of 1977 for slabs of 7.5 m and more, 22 % below at 3 m).
 *
 * Returns: heat it passes, W/(m²·K)
 */
double
hc_floor_slab_u (double area_m2, double perimeter_m, double wall_m, double ground_w_mk,
                 double floor_m2k_w)
{
  double size = area_m2 / MAX (perimeter_m / 2, 0.01);
  double depth = wall_m + ground_w_mk * (HC_FILM_FLOOR + floor_m2k_w + HC_FILM_OUTSIDE);

  if (depth < size)
    return 2 * ground_w_mk / (G_PI * size + depth) * log (G_PI * size / depth + 1);
  return ground_w_mk / (0.457 * size + depth);
}

/**
 * hc_roof_sun_k: (skip)
 * @absorbed: the share of sunlight it takes up: 0.45 light, 0.9 dark
 * @sun_w_m2: sunlight on it, W/m²; drawn into 0 to 1400
 *
 * The sol-air temperature (from memory: ASHRAE, 17 W/(m²·K) outside), less 3.9 K
 * for what a roof gives to the sky.
 *
 * Returns: how much warmer than the air the roof seems from inside, K
 */
double
hc_roof_sun_k (double absorbed, double sun_w_m2)
{
  double sun = CLAMP (sun_w_m2, 0, 1400);

  return sun > 0 ? CLAMP (absorbed, 0, 1) / 17.3 * sun - 3.9 : 0;
}

/**
 * hc_roof_clear_sky_k: (skip)
 *
 * A roof under a clear night sky is colder than the air: 4 K is our own proposal,
 * not a published figure.
 *
 * Returns: how much warmer than the air it seems from inside, K: negative
 */
double
hc_roof_clear_sky_k (void)
{
  return -4;
}
