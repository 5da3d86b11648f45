/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A door or hole in a wall, seen from inside a room. */
#pragma once

#include "supply/room.h"

G_BEGIN_DECLS

/**
 * HcDoorway: (skip)
 * @first: its first edge, on the inside face of the wall
 * @along: towards its last edge, the way the wall's line runs; of length 1
 * @in: into the room, square to the wall; of length 1
 * @width_mm: its clear width
 */
typedef struct
{
  HcPoint first;
  HcPoint along;
  HcPoint in;
  double width_mm;
} HcDoorway;

gboolean hc_doorway_find (const HcRoom *room, const HcOpening *opening, HcDoorway *doorway);
HcPoint hc_doorway_get_point (const HcDoorway *doorway, double along_mm, double in_mm);
HcShape *hc_doorway_get_strip (const HcDoorway *doorway, double from_mm, double to_mm,
                               double inset_mm) G_GNUC_WARN_UNUSED_RESULT;

G_END_DECLS
