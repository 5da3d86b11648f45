/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Heat, water and gases of one bird, by the figures of the book. */
#include "config.h"

#include "flock/bird-heat.h"

#include <math.h>

/* The bird most figures are stated for, kg. */
#define STATED_KG 2.0

static const double breath_c[4] = { 10, 25, 32, 35 };

static double
find (const HcBook *book, const char *id)
{
  const HcAirFigure *figure = hc_book_get_air_figure (book, id);

  g_return_val_if_fail (figure != NULL, 0);
  return figure->value;
}

/**
 * hc_bird_air_init: (skip)
 * @self: (out caller-allocates): the figures
 * @book: the book
 */
void
hc_bird_air_init (HcBirdAir *self, const HcBook *book)
{
  *self = (HcBirdAir){
    .night_share = find (book, "night_share"),
    .heat_per_k = find (book, "heat_per_k"),
    .heat_most = find (book, "heat_most"),
    .breath_g_h_kg = { find (book, "breath_cool"), find (book, "breath_mild"),
                       find (book, "breath_warm"), find (book, "breath_hot") },
    .co2_m3_h_kw = find (book, "co2_m3_h_kw"),
    .litter_g_h_kg = find (book, "litter_g_h") / STATED_KG,
    .ammonia_g_day_kg = find (book, "ammonia_g_day") / STATED_KG,
    .ammonia_per_k = find (book, "ammonia_per_k"),
    .ammonia_least = find (book, "ammonia_least"),
  };
}

/**
 * hc_bird_heat_at_20_w: (skip)
 * @law: the law of its kind
 * @mass_kg: its mass, kg
 * @eggs_kg_day: eggs it lays, kg a day
 *
 * CIGR 2002, equation 18 and those like it.
 *
 * Returns: heat it gives off at 20 °C, the mean of day and night, W
 */
double
hc_bird_heat_at_20_w (const HcHeatLaw *law, double mass_kg, double eggs_kg_day)
{
  return law->w_kg * pow (MAX (mass_kg, 0), law->power) + law->egg_w_kg * eggs_kg_day;
}

static const HcHeatLaw *
find_law (const HcBook *book, const HcKind *kind)
{
  for (guint i = 0; i < hc_book_get_n_heat_laws (book); i++)
    {
      const HcHeatLaw *law = hc_book_get_heat_law_at (book, i);

      if (law->kinds & 1u << kind->order)
        return law;
    }
  return hc_book_get_heat_law_at (book, 0);
}

/**
 * hc_bird_heat_of_body_w: (skip)
 * @book: the book
 * @body: a bird
 *
 * A hen at lay is taken to lay an egg on most days, as her kind does in a year.
 *
 * Returns: heat it gives off at 20 °C, the mean of day and night, W
 */
double
hc_bird_heat_of_body_w (const HcBook *book, const HcBody *body)
{
  const HcKind *kind = body->kind;
  double eggs_kg_day = body->at_lay ? kind->egg_g / 1000 * kind->eggs_per_year / 365 : 0;

  return hc_bird_heat_at_20_w (find_law (book, kind), body->mass_kg, eggs_kg_day);
}

/**
 * hc_bird_heat_share: (skip)
 * @air: the figures
 * @t_c: temperature of the air, °C
 *
 * CIGR 2002, equation 26: 2 % more for each kelvin less, meant for 10 to 30 °C; below
 * it is drawn on to twice the heat.
 *
 * Returns: heat against that at 20 °C
 */
double
hc_bird_heat_share (const HcBirdAir *air, double t_c)
{
  return CLAMP (1 + air->heat_per_k * (20 - t_c), 0, air->heat_most);
}

/**
 * hc_bird_heat_warming_share: (skip)
 * @air: the figures
 * @law: the law of its kind
 * @t_c: temperature of the air, °C
 *
 * CIGR 2002, equation 35 and those like it: bird and litter together, what dries up
 * being taken out. Below 0 °C its square is left out, and from 34 °C on nothing
 * warms the air (measured: Green and Xin 2009).
 *
 * Returns: W that warm the air for each W of heat at 20 °C
 */
double
hc_bird_heat_warming_share (const HcBirdAir *air, const HcHeatLaw *law, double t_c)
{
  double warm = t_c > 0 ? law->warm_loss * t_c * t_c / 1000 : 0;

  if (t_c >= 34)
    return 0;
  return MAX (law->sensible_share * hc_bird_heat_share (air, t_c) - warm, 0);
}

/**
 * hc_bird_breath_g_h_kg: (skip)
 * @air: the figures
 * @t_c: temperature of the air, °C
 *
 * Our own line through published measurements: Winfield 1971 at 10 °C and below,
 * the W-36 note at 25 °C, Green and Xin 2009 at 32 and 35 °C.
 *
 * Returns: water a bird breathes out by day, g/h for each kg of it
 */
double
hc_bird_breath_g_h_kg (const HcBirdAir *air, double t_c)
{
  for (guint i = 1; i < G_N_ELEMENTS (breath_c); i++)
    if (t_c < breath_c[i])
      {
        double share = MAX ((t_c - breath_c[i - 1]) / (breath_c[i] - breath_c[i - 1]), 0);

        return air->breath_g_h_kg[i - 1]
               + share * (air->breath_g_h_kg[i] - air->breath_g_h_kg[i - 1]);
      }
  return air->breath_g_h_kg[G_N_ELEMENTS (breath_c) - 1];
}

/**
 * hc_bird_ammonia_share: (skip)
 * @air: the figures
 * @t_c: temperature of the air, °C
 *
 * Indicative (from memory): droppings give a tenth less for each kelvin less.
 *
 * Returns: ammonia against that at 20 °C
 */
double
hc_bird_ammonia_share (const HcBirdAir *air, double t_c)
{
  return MAX (pow (air->ammonia_per_k, CLAMP (t_c, -60, 45) - 20), air->ammonia_least);
}
