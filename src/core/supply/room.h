/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A pen as birds find it: its inside, what stands in it, its openings. */
#pragma once

#include "base/shape.h"
#include "plan/layout.h"

G_BEGIN_DECLS

/**
 * HcRoom:
 *
 * Interned by (pen, ring of inside faces, openings on its walls): a pen that
 * did not change keeps its room, and with it every offer worked out for it.
 * Immutable, atomically reference-counted; holds references to its parts.
 */
typedef struct _HcRoom HcRoom;

HcRoom *hc_room_new (const HcLayout *layout, HcPen *pen) G_GNUC_WARN_UNUSED_RESULT;
HcRoom *hc_room_ref (HcRoom *room);
void hc_room_unref (HcRoom *room);
gboolean hc_room_is_still (const HcRoom *room, const HcLayout *layout, const HcPen *pen);

HcPen *hc_room_get_pen (const HcRoom *room);
const HcPenValues *hc_room_get (const HcRoom *room);
HcShape *hc_room_get_outline (const HcRoom *room);
HcParts *hc_room_get_openings (const HcRoom *room);
gboolean hc_room_is_roofed (const HcRoom *room);

G_DEFINE_AUTOPTR_CLEANUP_FUNC (HcRoom, hc_room_unref)

G_END_DECLS
