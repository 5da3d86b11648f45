/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A plan of birds and eggs that tests put together piece by piece. */
#pragma once

#include "flock/flock.h"
#include "flock/timeline.h"

/* 2026-03-01, a Sunday */
#define SAMPLE_DAY 739676

/* Birds and eggs begin in pen "one". */
typedef struct
{
  HcBook *book;
  HcLayout *layout;
  HcParts *batches;
  HcParts *clutches;
  HcParts *results;
  HcParts *prices;
  HcKeepingValues keeping;
  guint n_ids;
} SeasonSample;

void season_sample_init (SeasonSample *self);
void season_sample_clear (SeasonSample *self);
HcPlan *season_sample_plan (const SeasonSample *self);
HcFlock *season_sample_flock (const SeasonSample *self, guint32 day);
HcTimeline *season_sample_timeline (const SeasonSample *self);

void season_sample_add_batch (SeasonSample *self, const char *id, const char *kind, int females,
                              int males, guint32 hatched);
void season_sample_set_breed (SeasonSample *self, const char *batch, const char *breed);
void season_sample_set_came (SeasonSample *self, const char *batch, guint32 came);
void season_sample_set_clutch (SeasonSample *self, const char *batch, const char *clutch);
void season_sample_add_move (SeasonSample *self, const char *batch, guint32 on, const char *pen,
                             int females, int males);
void season_sample_add_leaving (SeasonSample *self, const char *batch, guint32 on,
                                HcLeavingWhy why, int females, int males);
void season_sample_add_clutch (SeasonSample *self, const char *id, const char *kind,
                               guint32 set_on, int eggs);
void season_sample_repeat (SeasonSample *self, const char *clutch, int every_weeks, int settings,
                           int wanted);
void season_sample_add_step (SeasonSample *self, const char *clutch, int week, HcStepDeed deed,
                             HcStepWho who, const char *pen);
void season_sample_add_result (SeasonSample *self, const char *of, guint32 on, HcResultWhat what,
                               int count);
