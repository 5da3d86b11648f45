/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What takes the floor of a room. */
#pragma once

#include "supply/offer.h"

G_BEGIN_DECLS

HcShape *hc_room_get_floor_with_headroom (const HcRoom *room,
                                          double headroom_mm) G_GNUC_WARN_UNUSED_RESULT;
gboolean hc_room_loses_same_floor (const HcRoom *room, double one_mm, double other_mm);
HcPoint hc_room_get_middle (const HcRoom *room);

G_END_DECLS
