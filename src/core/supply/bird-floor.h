/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Where a bird can go straight across the floor of a room. */
#pragma once

#include "supply/room.h"
#include "supply/way.h"

G_BEGIN_DECLS

typedef struct _HcBirdFloor HcBirdFloor;

HcBirdFloor *hc_bird_floor_new (const HcRoom *room, const HcWalker *bird) G_GNUC_WARN_UNUSED_RESULT;
void hc_bird_floor_free (HcBirdFloor *self);
gboolean hc_bird_floor_is_clear (const HcBirdFloor *self, HcPoint from, HcPoint to);
GArray *hc_bird_floor_find_turns (const HcBirdFloor *self) G_GNUC_WARN_UNUSED_RESULT;

G_DEFINE_AUTOPTR_CLEANUP_FUNC (HcBirdFloor, hc_bird_floor_free)

G_END_DECLS
