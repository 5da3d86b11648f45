/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What happens to the flock, by day. */
#pragma once

#include "season/stage.h"

G_BEGIN_DECLS

/**
 * HcEventWhat:
 * @HC_EVENT_SET: eggs are set
 * @HC_EVENT_HATCH: chicks hatch
 * @HC_EVENT_COME: birds come from elsewhere
 * @HC_EVENT_OFF_HEAT: chicks need no heater any more
 * @HC_EVENT_LAY: pullets begin to lay
 * @HC_EVENT_MOVE: birds move to another pen
 * @HC_EVENT_LEAVE: birds leave
 */
typedef enum
{
  HC_EVENT_SET,
  HC_EVENT_HATCH,
  HC_EVENT_COME,
  HC_EVENT_OFF_HEAT,
  HC_EVENT_LAY,
  HC_EVENT_MOVE,
  HC_EVENT_LEAVE,
} HcEventWhat;

/**
 * HcEvent:
 * @on: the day
 * @what: what happens
 * @group: index of the group in the timeline; of eggs, of the setting there
 * @count: birds, or eggs
 * @pen: id of the pen they are in from then on, or leave; interned
 * @why: why they leave
 */
typedef struct
{
  guint32 on;
  HcEventWhat what;
  guint group;
  int count;
  const char *pen;
  HcLeavingWhy why;
} HcEvent;

GArray *hc_events_of (const HcTimeline *timeline, const GArray *bands) G_GNUC_WARN_UNUSED_RESULT;

G_END_DECLS
