/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The bars of a room, and the stretches of them that birds can sit on. */
#pragma once

#include "supply/room.h"
#include "supply/stand.h"
#include "supply/strip.h"

G_BEGIN_DECLS

/**
 * HcRoomBar:
 * @bar: where it runs
 * @roost: (transfer none): the roost it is a bar of
 * @part: which bar of it
 * @length_mm: its length
 */
typedef struct
{
  HcBar bar;
  const HcFitting *roost;
  guint part;
  double length_mm;
} HcRoomBar;

/**
 * HcBarLimits:
 * @to_wall_mm: how far its axis must be from a wall, square to it
 * @to_bar_mm: how far from the axis of another bar, square to that one
 * @headroom_mm: how much must be free above it
 */
typedef struct
{
  double to_wall_mm;
  double to_bar_mm;
  double headroom_mm;
} HcBarLimits;

/**
 * HcBarCause:
 * @HC_BAR_CAUSE_NONE: all of it is usable
 * @HC_BAR_CAUSE_WALL: it is too near to a wall, or outside
 * @HC_BAR_CAUSE_HEADROOM: something above it is too low
 * @HC_BAR_CAUSE_BAR: it is too near to another bar
 *
 * What took most of a bar.
 */
typedef enum
{
  HC_BAR_CAUSE_NONE,
  HC_BAR_CAUSE_WALL,
  HC_BAR_CAUSE_HEADROOM,
  HC_BAR_CAUSE_BAR,
} HcBarCause;

/**
 * HcUsableBar:
 * @stretches: (element-type HcStretch): what is left of it, from its start
 * @cause: what took most of the rest
 * @blocker: (nullable): id of the fitting that did
 */
typedef struct
{
  GArray *stretches;
  HcBarCause cause;
  const char *blocker;
} HcUsableBar;

GArray *hc_bars_of_room (const HcRoom *room) G_GNUC_WARN_UNUSED_RESULT;
guint *hc_bars_get_order (const GArray *bars) G_GNUC_WARN_UNUSED_RESULT;
GArray *hc_bars_get_usable (const HcRoom *room, const GArray *bars, const guint *order,
                            const HcBarLimits *limits) G_GNUC_WARN_UNUSED_RESULT;

G_END_DECLS
