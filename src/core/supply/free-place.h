/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Where there is room for one thing more. */
#pragma once

#include "supply/room.h"

G_BEGIN_DECLS

HcPoint hc_room_find_free_place (const HcRoom *room, const HcFitting *thing, HcPoint near);

G_END_DECLS
