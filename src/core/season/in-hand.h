/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Eggs that can be set, and the room to set them. */
#pragma once

#include "flock/timeline.h"

G_BEGIN_DECLS

/**
 * HcInHand:
 * @females: females at lay of that kind
 * @covered: those of them the males of that kind keep fertile
 * @eggs: eggs to hatch of them by that day, kept no longer than the keeper says
 * @places: places in the incubators, 0 when not entered
 * @taken: places taken by other eggs at their fullest before those hatch
 */
typedef struct
{
  int females;
  int covered;
  double eggs;
  int places;
  int taken;
} HcInHand;

void hc_in_hand_count (const HcTimeline *timeline, const HcKind *kind, guint32 day,
                       HcInHand *in_hand);

G_END_DECLS
