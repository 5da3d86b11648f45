/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The birds of one air space, and what they give to its air. */
#pragma once

#include "air/air-house.h"
#include "flock/bird-heat.h"

G_BEGIN_DECLS

/**
 * HcSpaceFlock:
 * @air: what the air of birds is reckoned by
 * @awake: by day; else asleep
 * @birds: how many there are
 * @mass_kg: all of them together
 * @heat_at_20_w: their heat at 20 °C, the mean of the day
 *
 * The birds of one air space.
 */
typedef struct
{
  HcBirdAir air;
  gboolean awake;
  gint64 birds;
  double mass_kg;
  double heat_at_20_w;
} HcSpaceFlock;

void hc_space_flock_add (HcSpaceFlock *self, const HcBook *book, const HcBody *body,
                         gint64 count);
void hc_space_flock_emit (gconstpointer self, double t_c, HcAirSource *source);

G_END_DECLS
