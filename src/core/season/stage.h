/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What birds of a group are at an age, and how long they are it. */
#pragma once

#include "flock/timeline.h"

G_BEGIN_DECLS

/**
 * HcStage:
 * @HC_STAGE_UNDER_HEAT: chicks that need a heater
 * @HC_STAGE_GROWING: off heat, not grown
 * @HC_STAGE_GROWN: grown, not laying
 * @HC_STAGE_AT_LAY: females at lay
 */
typedef enum
{
  HC_STAGE_UNDER_HEAT,
  HC_STAGE_GROWING,
  HC_STAGE_GROWN,
  HC_STAGE_AT_LAY,
} HcStage;

/**
 * HcBand:
 * @group: index of the group in the timeline
 * @female: whether they are females
 * @count: birds
 * @pen: id of their pen, interned
 * @stage: what they are
 * @begins: they become it on @from, and did not come as it
 * @from: the first day
 * @until: the day after the last, %HC_FOR_EVER when nothing ends it
 *
 * Birds that live in one pen and are one thing for a while.
 */
typedef struct
{
  guint group;
  gboolean female;
  int count;
  const char *pen;
  HcStage stage;
  gboolean begins;
  guint32 from;
  guint32 until;
} HcBand;

HcStage hc_stage_on (const HcGroup *group, gboolean female, int heat_weeks, guint32 day);
GArray *hc_bands_of (const HcTimeline *timeline, const HcStandard *standard,
                     const HcSiteValues *site) G_GNUC_WARN_UNUSED_RESULT;

G_END_DECLS
