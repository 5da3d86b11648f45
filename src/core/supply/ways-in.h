/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * How an animal gets into a house: through, over, under, or by a door. */
#pragma once

#include "book/book.h"
#include "supply/house.h"

G_BEGIN_DECLS

/**
 * HcWayInCause:
 * @HC_WAY_IN_LEFT_OPEN: a door or a pop hole that is not shut
 * @HC_WAY_IN_LATCH: a latch it opens
 * @HC_WAY_IN_GAP: a gap round a door that is shut
 * @HC_WAY_IN_BARE: a hole, a wall or a roof that has no mesh
 * @HC_WAY_IN_HOLES: mesh with holes it passes
 * @HC_WAY_IN_TORN: mesh too light to hold it
 * @HC_WAY_IN_STAPLES: mesh that it pulls off its staples
 * @HC_WAY_IN_OVER: a wall or a fence it gets over
 * @HC_WAY_IN_UNDER: ground it digs through
 * @HC_WAY_IN_FLOOR: a floor it gnaws or squeezes through from below
 * @HC_WAY_IN_SKY: no roof at all
 * @HC_WAY_IN_ROOF_HOLES: a roof with holes it passes
 * @HC_WAY_IN_ROOF_TORN: a roof too light to hold it
 * @HC_N_WAY_IN_CAUSES: how many there are
 */
typedef enum
{
  HC_WAY_IN_LEFT_OPEN,
  HC_WAY_IN_LATCH,
  HC_WAY_IN_GAP,
  HC_WAY_IN_BARE,
  HC_WAY_IN_HOLES,
  HC_WAY_IN_TORN,
  HC_WAY_IN_STAPLES,
  HC_WAY_IN_OVER,
  HC_WAY_IN_UNDER,
  HC_WAY_IN_FLOOR,
  HC_WAY_IN_SKY,
  HC_WAY_IN_ROOF_HOLES,
  HC_WAY_IN_ROOF_TORN,
  HC_N_WAY_IN_CAUSES
} HcWayInCause;

/* Stands for a room's number where there is none: outside. */
#define HC_OUTSIDE G_MAXUINT

/**
 * HcWayIn: (skip)
 * @cause: what lets it in
 * @room: into which room
 * @beyond: from which room, or %HC_OUTSIDE
 * @part: (transfer none): id of the opening, or of the pen whose walls, floor
 *   or roof it is
 * @wall: (transfer none) (nullable): id of the wall it is in, over or under
 * @from: where it begins, in the plan
 * @to: where it ends; as @from for a roof
 * @have_mm: what there is: a gap, a hole, a height, the width of a dig guard
 * @want_mm: what keeps it out, 0 where that is not a length
 */
typedef struct
{
  HcWayInCause cause;
  guint room;
  guint beyond;
  const char *part;
  const char *wall;
  HcPoint from;
  HcPoint to;
  double have_mm;
  double want_mm;
} HcWayIn;

/**
 * HcIntruder: (skip)
 * @animal: who comes
 * @book: what meshes, floors and latches are like
 * @by_night: whether doors shut at dusk are shut
 * @apron_mm: a dig guard laid flat that keeps diggers out
 * @dug_mm: one dug in that does
 * @fence_mm: a fence that keeps jumpers out
 */
typedef struct
{
  const HcPredator *animal;
  HcBook *book;
  gboolean by_night;
  double apron_mm;
  double dug_mm;
  double fence_mm;
} HcIntruder;

GArray *hc_ways_in_find (const HcHouse *house,
                         const HcIntruder *intruder) G_GNUC_WARN_UNUSED_RESULT;

gboolean hc_room_is_dug_into (const HcRoom *room, HcBook *book, const HcPredator *animal);

G_END_DECLS
