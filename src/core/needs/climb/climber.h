/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What one bird can hop, drop and walk up. */
#pragma once

#include "flock/body.h"
#include "needs/climb/climb.h"

G_BEGIN_DECLS

/* Private to needs/. Why a hop is no better than it is. */
typedef enum
{
  HC_HOP_IS_FINE,
  HC_HOP_IS_HIGH,
  HC_HOP_DROPS,
  HC_HOP_DROPS_HARD,
  HC_HOP_HAS_NO_LANDING,
  HC_HOP_IS_STEEP,
  HC_HOP_IS_NARROW,
  HC_HOP_IS_WIDE,
} HcHopCause;

typedef struct
{
  HcLevel level;
  HcHopCause cause;
  const HcLimit *limit;
  double measured;
} HcHopGrade;

typedef enum
{
  HC_CLIMBER_RISE_FROM_FLOOR,
  HC_CLIMBER_DROP_TO_FLOOR,
  HC_CLIMBER_NEAR_GAP,
  HC_CLIMBER_SHORT_HOP,
  HC_CLIMBER_LONG_HOP,
  HC_CLIMBER_LANDING,
  HC_CLIMBER_STEP,
  HC_CLIMBER_SLOPE,
  HC_CLIMBER_RAMP_WIDTH,
  HC_CLIMBER_N_LIMITS
} HcClimberLimit;

/* @lands_hard: the floor is hard, and too thinly bedded to soften a landing. A
 * bird without a limit for hops walks, and steps over what is low enough. */
typedef struct
{
  const HcLimit *limits[HC_CLIMBER_N_LIMITS];
  gboolean lands_hard;
} HcClimber;

void hc_climber_init (HcClimber *self, const HcStandard *standard, const HcBody *body,
                      gboolean lands_hard);
HcHopGrade hc_climber_grade (const HcClimber *self, const HcClimb *climb, const HcHop *hop,
                             gboolean up);

G_END_DECLS
