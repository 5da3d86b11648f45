/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A small house with ten hens, as the tests of the balance vary it. */
#pragma once

#include "air/steady.h"
#include "flock/bird-heat.h"

G_BEGIN_DECLS

#define SMALL_HOUSE_MOST_PATHS 8

/* Ten hens of 2 kg; the vapour of their litter comes with their own in model A. */
typedef struct
{
  HcBirdAir air;
  const HcHeatLaw *law;
  double heat_w;
  double birds;
  gboolean with_litter;
} SmallFlock;

typedef struct
{
  SmallFlock flock;
  HcAirPath paths[SMALL_HOUSE_MOST_PATHS];
  HcAirSurface surfaces[2];
  HcAirWet wets[2];
  HcAirHouse house;
} SmallHouse;

void small_house_init (SmallHouse *self, HcBook *book, double outside_c, gboolean insulated);
void small_house_set_vents (SmallHouse *self, double area_m2);
void small_house_take_litter_with_birds (SmallHouse *self);

G_END_DECLS
