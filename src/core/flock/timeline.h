/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Who lives where from when until when, and who leaves. */
#pragma once

#include "book/book.h"
#include "flock/settings.h"
#include "plan/plan.h"

G_BEGIN_DECLS

/**
 * HcGroup:
 * @id: id of the group of birds, or of the eggs they hatch from, interned
 * @name: (nullable): what the keeper calls them, held by the plan
 * @setting: which setting of the eggs, 0 for a group of birds
 * @expected: they have not hatched yet, or nobody has entered them
 * @kind: the kind of bird, held by the book
 * @breed: (nullable): the breed
 * @life: its life
 * @hatched: the day they hatched, 0 for grown birds of unknown age
 * @came: the first day they are there
 */
typedef struct
{
  const char *id;
  const char *name;
  guint setting;
  gboolean expected;
  const HcKind *kind;
  const HcBreed *breed;
  const HcLife *life;
  guint32 hatched;
  guint32 came;
} HcGroup;

/**
 * HC_FOR_EVER:
 *
 * The day after all days.
 */
#define HC_FOR_EVER G_MAXUINT32

/**
 * HcStay:
 * @group: index of the group
 * @female: whether they are females
 * @count: birds
 * @pen: id of their pen, interned
 * @from: the first day
 * @until: the day after the last, %HC_FOR_EVER when nothing ends it
 */
typedef struct
{
  guint group;
  gboolean female;
  int count;
  const char *pen;
  guint32 from;
  guint32 until;
} HcStay;

/**
 * HcDeparture:
 * @group: index of the group
 * @female: whether they are females
 * @count: birds
 * @on: the day they are gone
 * @why: why
 */
typedef struct
{
  guint group;
  gboolean female;
  int count;
  guint32 on;
  HcLeavingWhy why;
} HcDeparture;

/**
 * HcMovement:
 * @group: index of the group
 * @female: whether they are females
 * @count: birds
 * @pen: id of the pen they move to, interned
 * @on: the first day they live there
 */
typedef struct
{
  guint group;
  gboolean female;
  int count;
  const char *pen;
  guint32 on;
} HcMovement;

/**
 * HcTimeline:
 * @groups: (element-type HcGroup): everyone there is or will be
 * @stays: (element-type HcStay): who lives where
 * @movements: (element-type HcMovement): who moves
 * @departures: (element-type HcDeparture): who leaves
 * @settings: (element-type HcSetting): eggs set
 *
 * What the moves, leavings and eggs of a plan come to. It lends from plan and
 * book, which it holds, and is never changed once it is made.
 */
typedef struct
{
  gatomicrefcount refs;
  HcPlan *plan;
  HcBook *book;
  GArray *groups;
  GArray *stays;
  GArray *movements;
  GArray *departures;
  GArray *settings;
} HcTimeline;

HcTimeline *hc_timeline_of (const HcPlan *plan, HcBook *book) G_GNUC_WARN_UNUSED_RESULT;
HcTimeline *hc_timeline_ref (HcTimeline *self);
void hc_timeline_unref (HcTimeline *self);
const HcGroup *hc_timeline_get_group (const HcTimeline *self, guint group);
double hc_group_get_weeks (const HcGroup *self, guint32 day);

G_DEFINE_AUTOPTR_CLEANUP_FUNC (HcTimeline, hc_timeline_unref)

G_END_DECLS
