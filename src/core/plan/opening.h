/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Holes in walls: doors, pop holes, windows, vents and egg doors. */
#pragma once

#include "base/part.h"

G_BEGIN_DECLS

/**
 * HcOpeningKind:
 * @HC_OPENING_KEEPER_DOOR: a door the keeper walks through
 * @HC_OPENING_POP_HOLE: a small door for birds
 * @HC_OPENING_WINDOW: lets light in
 * @HC_OPENING_VENT: lets air through
 * @HC_OPENING_EGG_DOOR: a flap to take eggs through
 * @HC_N_OPENING_KINDS: how many kinds there are
 */
typedef enum
{
  HC_OPENING_KEEPER_DOOR,
  HC_OPENING_POP_HOLE,
  HC_OPENING_WINDOW,
  HC_OPENING_VENT,
  HC_OPENING_EGG_DOOR,
  HC_N_OPENING_KINDS
} HcOpeningKind;

/**
 * HcSwing:
 * @HC_SWING_IN: opens inwards
 * @HC_SWING_OUT: opens outwards
 * @HC_SWING_SLIDES: takes no room
 */
typedef enum
{
  HC_SWING_IN,
  HC_SWING_OUT,
  HC_SWING_SLIDES,
} HcSwing;

/**
 * HcHinge:
 * @HC_HINGE_START: hangs on the side of the wall's start
 * @HC_HINGE_END: hangs on the side of the wall's end
 */
typedef enum
{
  HC_HINGE_START,
  HC_HINGE_END,
} HcHinge;

/**
 * HcOpeningValues:
 * @kind: a #HcOpeningKind
 * @wall: id of the wall it is in
 * @along_mm: from the wall's start to the middle of the opening
 * @width_mm: clear width
 * @height_mm: clear height
 * @sill_mm: height of its lower edge above the floor
 * @open_winter: share of a vent or window left open in the cold, 0 to 1
 * @open_summer: share that can be opened in the heat, 0 to 1
 * @shut_at_dusk: whether it is shut every dusk
 * @open_by_day: whether birds may pass it by day (a door or pop hole)
 * @glazed: share of a door that lets daylight in, 0 to 1; a window always does
 * @swing: a #HcSwing
 * @hinge: a #HcHinge, seen along the wall
 * @mesh: id of the mesh over it
 * @fixing: how that is fixed, a #HcFixing
 * @gap_mm: the widest gap round it while it is shut
 * @latch: id of its latch
 */
typedef struct
{
  int kind;
  char *wall;
  double along_mm;
  double width_mm;
  double height_mm;
  double sill_mm;
  double open_winter;
  double open_summer;
  gboolean shut_at_dusk;
  gboolean open_by_day;
  double glazed;
  int swing;
  int hinge;
  char *mesh;
  int fixing;
  double gap_mm;
  char *latch;
} HcOpeningValues;

HC_DECLARE_PART (HcOpening, hc_opening)

const char *hc_opening_kind_get_word (HcOpeningKind kind);
gboolean hc_opening_lets_birds_through (const HcOpening *opening);

G_END_DECLS
