/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The birds of one air space, and what they give to its air. */
#include "config.h"

#include "climate/space-flock.h"

#include "air/moist-air.h"

#define SECONDS_A_DAY 86400.0
#define SECONDS_AN_HOUR 3600.0

/**
 * hc_space_flock_add: (skip)
 * @self: the birds of a space
 * @book: the book
 * @body: what one more of them is like
 * @count: how many of those
 */
void
hc_space_flock_add (HcSpaceFlock *self, const HcBook *book, const HcBody *body, gint64 count)
{
  self->birds += count;
  self->mass_kg += count * body->mass_kg;
  self->heat_at_20_w += count * hc_bird_heat_of_body_w (book, body);
}

/**
 * hc_space_flock_emit: (skip)
 * @self: a #HcSpaceFlock
 * @t_c: temperature of the space, °C
 * @source: (out caller-allocates): what they give
 *
 * The birds alone: the water of litter, drinkers and splashes dries by itself, and
 * takes its heat from the air, so that nothing is counted twice.
 */
void
hc_space_flock_emit (gconstpointer self, double t_c, HcAirSource *source)
{
  const HcSpaceFlock *flock = self;
  double asleep = flock->awake ? 1 : flock->air.night_share;
  double heat_w = asleep * flock->heat_at_20_w * hc_bird_heat_share (&flock->air, t_c);
  double breath_kg_s = asleep * flock->mass_kg * hc_bird_breath_g_h_kg (&flock->air, t_c) / 1000
                       / SECONDS_AN_HOUR;
  double latent_w = MIN (breath_kg_s * HC_LATENT_J_KG, heat_w);

  source->heat_w = heat_w - latent_w;
  source->vapour_kg_s = latent_w / HC_LATENT_J_KG;
  source->co2_m3_s = flock->air.co2_m3_h_kw * heat_w / 1000 / SECONDS_AN_HOUR;
  source->ammonia_kg_s = flock->mass_kg * flock->air.ammonia_g_day_kg / 1000 / SECONDS_A_DAY
                         * hc_bird_ammonia_share (&flock->air, t_c);
}
