/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What can be in the way of what, one look at a room each. */
#pragma once

#include "needs/finding-private.h"
#include "supply/room.h"

G_BEGIN_DECLS

/* Private to needs/: findings go to @findings, whoever lives in the room. */
typedef struct
{
  const HcRoom *room;
  HcStandard *standard;
  HcParts *fittings;
  GPtrArray *findings;
} HcClearance;

/* Seen from above, so little is forgiven: corners are rounded to 0.001 mm. */
#define HC_CLEARANCE_FORGIVEN_MM2 25.0
#define HC_CLEARANCE_FORGIVEN_MM 1.0

void hc_clearance_look_at_overlaps (HcClearance *self);
void hc_clearance_look_at_walls (HcClearance *self);
void hc_clearance_look_at_doors (HcClearance *self);
void hc_clearance_look_at_openings (HcClearance *self);
void hc_clearance_look_under_bars (HcClearance *self);
void hc_clearance_look_at_nest_heights (HcClearance *self);
void hc_clearance_look_at_feed_and_water (HcClearance *self);
void hc_clearance_look_at_lamps (HcClearance *self);

const HcFittingValues *hc_clearance_get (const HcClearance *self, guint fitting);
HcFinding *hc_clearance_add (HcClearance *self, const char *code, HcLevel level,
                             const char *id);
HcFinding *hc_clearance_grade (HcClearance *self, const char *code, const char *figure,
                               double measured, const char *unit);

G_END_DECLS
