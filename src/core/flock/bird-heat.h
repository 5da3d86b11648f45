/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Heat, water and gases of one bird, by the figures of the book. */
#pragma once

#include "book/book.h"
#include "flock/body.h"

G_BEGIN_DECLS

/**
 * HcBirdAir:
 * @night_share: heat of a sleeping flock against the mean of the day
 * @heat_per_k: how much more heat for each kelvin below 20 °C
 * @heat_most: where that ends
 * @breath_g_h_kg: water breathed out at 10, 25, 32 and 35 °C, g/(h·kg)
 * @co2_m3_h_kw: carbon dioxide for each kilowatt of heat, m³/h
 * @litter_g_h_kg: water dried from droppings at 20 °C and 60 %, g/(h·kg)
 * @ammonia_g_day_kg: ammonia at 20 °C, g/(day·kg)
 * @ammonia_per_k: how many times more of it for each kelvin more
 * @ammonia_least: the share of it that is always given
 *
 * What one reckons the air of birds by.
 */
typedef struct
{
  double night_share;
  double heat_per_k;
  double heat_most;
  double breath_g_h_kg[4];
  double co2_m3_h_kw;
  double litter_g_h_kg;
  double ammonia_g_day_kg;
  double ammonia_per_k;
  double ammonia_least;
} HcBirdAir;

void hc_bird_air_init (HcBirdAir *self, const HcBook *book);
double hc_bird_heat_at_20_w (const HcHeatLaw *law, double mass_kg, double eggs_kg_day);
double hc_bird_heat_of_body_w (const HcBook *book, const HcBody *body);
double hc_bird_heat_share (const HcBirdAir *air, double t_c);
double hc_bird_heat_warming_share (const HcBirdAir *air, const HcHeatLaw *law, double t_c);
double hc_bird_breath_g_h_kg (const HcBirdAir *air, double t_c);
double hc_bird_ammonia_share (const HcBirdAir *air, double t_c);

G_END_DECLS
