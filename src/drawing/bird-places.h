/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Where the birds of a judged plan are: on their bars by night, about their
 * business by day. */
#pragma once

#include "drawing/bird-look.h"

#include "base/point.h"
#include "needs/check.h"

G_BEGIN_DECLS

/**
 * HcBirdDoing:
 * @HC_BIRD_ROAMS: walks about or rests
 * @HC_BIRD_SLEEPS: sits on a bar or lies on the floor for the night
 * @HC_BIRD_EATS: stands at a feeder
 * @HC_BIRD_DRINKS: stands at a drinker
 * @HC_BIRD_LAYS: sits in a nest
 * @HC_BIRD_BATHES: dusts herself
 * @HC_BIRD_WARMS: keeps under or near a heater
 */
typedef enum
{
  HC_BIRD_ROAMS,
  HC_BIRD_SLEEPS,
  HC_BIRD_EATS,
  HC_BIRD_DRINKS,
  HC_BIRD_LAYS,
  HC_BIRD_BATHES,
  HC_BIRD_WARMS,
} HcBirdDoing;

/**
 * HcBirdPlace:
 * @at: the middle of the bird, in the plan
 * @heading_deg: where it faces: 0 along x, turned clockwise on screen
 * @body: index of its body in the flock
 * @look: what it looks like
 * @doing: what it does there
 * @wanting: whether it wanted a bar or a heater and got none
 */
typedef struct
{
  HcPoint at;
  double heading_deg;
  guint body;
  HcBirdLook look;
  HcBirdDoing doing;
  gboolean wanting;
} HcBirdPlace;

GArray *hc_bird_places (const HcCheck *check) G_GNUC_WARN_UNUSED_RESULT;

G_END_DECLS
