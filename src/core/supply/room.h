/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A pen as birds find it: its inside, what stands in it, its openings. */
#pragma once

#include "base/nearby.h"
#include "base/shape.h"
#include "plan/roof.h"

G_BEGIN_DECLS

/**
 * HcRoom:
 *
 * Interned by (pen, ring of inside faces, openings on its walls, roof): a pen that
 * did not change keeps its room, and with it every offer worked out for it.
 * Immutable, atomically reference-counted; holds references to its parts.
 */
typedef struct _HcRoom HcRoom;

/**
 * HcRoomWall:
 * @wall: (transfer none): the wall
 * @from: where its inside face starts, in ring order
 * @to: where it ends
 * @line_from: where the wall's own line starts, openings being measured from it
 * @line_to: where that line ends
 * @beyond: id of the pen on its other side, interned; empty where that is outside
 * @beyond_is_run: whether that pen is a run
 * @beyond_is_covered: whether that pen has a solid roof
 *
 * A wall as seen from inside a room.
 */
typedef struct
{
  HcWall *wall;
  HcPoint from;
  HcPoint to;
  HcPoint line_from;
  HcPoint line_to;
  const char *beyond;
  gboolean beyond_is_run;
  gboolean beyond_is_covered;
} HcRoomWall;

HcRoom *hc_room_new (const HcLayout *layout, HcPen *pen,
                     const HcRoof *roof) G_GNUC_WARN_UNUSED_RESULT;
HcRoom *hc_room_ref (HcRoom *room);
void hc_room_unref (HcRoom *room);
gboolean hc_room_is_still (const HcRoom *room, const HcLayout *layout, const HcPen *pen,
                           const HcRoof *roof);

HcPen *hc_room_get_pen (const HcRoom *room);
const HcPenValues *hc_room_get (const HcRoom *room);
HcShape *hc_room_get_outline (const HcRoom *room);
HcParts *hc_room_get_openings (const HcRoom *room);
gboolean hc_room_is_roofed (const HcRoom *room);
gboolean hc_room_counts_shut_in (const HcRoom *room);
const HcRoof *hc_room_get_roof (const HcRoom *room);
double hc_room_get_ceiling_mm (const HcRoom *room, HcPoint at);
double hc_room_get_ceiling_over_mm (const HcRoom *room, const HcShape *thing);
double hc_room_get_ceiling_along_mm (const HcRoom *room, HcPoint from, HcPoint to);

guint hc_room_get_n_walls (const HcRoom *room);
const HcRoomWall *hc_room_get_wall (const HcRoom *room, guint wall);
const HcRoomWall *hc_room_get_wall_of (const HcRoom *room, const HcOpening *opening);
gboolean hc_room_wall_is_outer (const HcRoomWall *wall);

HcShape *hc_room_get_footprint (const HcRoom *room, guint fitting);
GArray *hc_room_find_fittings (const HcRoom *room, HcBox box) G_GNUC_WARN_UNUSED_RESULT;

G_DEFINE_AUTOPTR_CLEANUP_FUNC (HcRoom, hc_room_unref)

G_END_DECLS
