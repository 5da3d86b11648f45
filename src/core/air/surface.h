/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Walls, roofs and floors: the heat they pass, how cold their inside is, what freezes on it. */
#pragma once

#include <glib.h>

G_BEGIN_DECLS

/**
 * HC_FILM_WALL:
 *
 * Resistance of the air along a wall inside, m²·K/W (ISO 6946).
 */
#define HC_FILM_WALL 0.13

/**
 * HC_FILM_ROOF:
 *
 * The same under a roof, heat going up.
 */
#define HC_FILM_ROOF 0.10

/**
 * HC_FILM_FLOOR:
 *
 * The same on a floor, heat going down.
 */
#define HC_FILM_FLOOR 0.17

/**
 * HC_FILM_OUTSIDE:
 *
 * The same outdoors.
 */
#define HC_FILM_OUTSIDE 0.04

/**
 * HC_FILM_CORNER:
 *
 * The same in corners and behind nest boxes (ISO 13788, from memory).
 */
#define HC_FILM_CORNER 0.25

/**
 * HC_DEPOSITION_KG_M2_S:
 *
 * Vapour a surface takes up, kg/(m²·s) for each kg/kg beyond saturation: 3 W/(m²·K)
 * of convection by Lewis's relation (from memory).
 */
#define HC_DEPOSITION_KG_M2_S 0.003

double hc_surface_u_of_layers (double film_m2k_w, double layers_m2k_w, double outside_m2k_w);
double hc_surface_u_with_layer (double u_w_m2k, double layer_m2k_w);
double hc_surface_parallel_u (double first_u, double first_share, double second_u);
double hc_surface_inside_c (double inside_c, double outside_c, double u_w_m2k, double film_m2k_w);
double hc_surface_driest_limit (double inside_c, double outside_c, double u_w_m2k,
                                double film_m2k_w);
double hc_surface_deposit_kg_s (double area_m2, double ratio, double surface_c,
                                double pressure_pa);
double hc_floor_edge_w_k (double perimeter_m, double f_w_mk);
double hc_floor_slab_u (double area_m2, double perimeter_m, double wall_m, double ground_w_mk,
                        double floor_m2k_w);
double hc_roof_sun_k (double absorbed, double sun_w_m2);
double hc_roof_clear_sky_k (void);

G_END_DECLS
