/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * How many eggs a hen lays on a day. */
#pragma once

#include "flock/timeline.h"

G_BEGIN_DECLS

/**
 * HcLayLearnt:
 * @book: eggs for each hen and day by the book, over the days that were counted
 * @learnt: the same when what was counted has been taken into account
 * @counted: eggs that were counted
 * @hen_days: hens times days they were counted over
 * @spread: standard deviation of what is learnt, of its mean; that of any flock
 *   where nothing was counted
 *
 * What the keeper's own count says of a group.
 */
typedef struct
{
  double book;
  double learnt;
  int counted;
  double hen_days;
  double spread;
} HcLayLearnt;

double hc_lay_on (const HcGroup *group, const HcKeepingValues *keeping, guint32 day);
double hc_lay_get_light_share (const HcLay *lay, const HcKeepingValues *keeping, guint32 day);
double hc_lay_get_egg_g (const HcGroup *group, guint32 day);
void hc_lay_learn (const HcTimeline *timeline, guint group, HcLayLearnt *learnt);
double hc_lay_learnt_get_times (const HcLayLearnt *self);

G_END_DECLS
