/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The rooms of a layout and how birds get from one to another. */
#pragma once

#include "book/level.h"
#include "supply/room.h"

G_BEGIN_DECLS

/**
 * HcSpace:
 * @rooms: (element-type guint): indices of the house's rooms it joins
 *
 * Day space: rooms joined by openings birds may pass by day, runs included;
 * shut in, without the runs that do not count. Night room: what is still
 * joined when pop holes are shut at dusk. Air space: rooms joined by air.
 */
typedef struct
{
  GArray *rooms;
} HcSpace;

/* Immutable, atomically reference-counted. */
typedef struct _HcHouse HcHouse;

HcHouse *hc_house_new (HcLayout *layout, HcHouse *before) G_GNUC_WARN_UNUSED_RESULT;
HcHouse *hc_house_ref (HcHouse *house);
void hc_house_unref (HcHouse *house);
guint hc_house_get_n_rooms (const HcHouse *house);
HcRoom *hc_house_get_room (const HcHouse *house, guint room);
gboolean hc_house_find_room (const HcHouse *house, const char *pen, guint *room);
HcLayout *hc_house_get_layout (const HcHouse *house);

guint hc_house_get_n_spaces (const HcHouse *house, HcCondition condition);
const HcSpace *hc_house_get_space (const HcHouse *house, HcCondition condition, guint space);
gboolean hc_house_space_has_run (const HcHouse *house, HcCondition condition, guint space);
guint hc_house_get_n_air_spaces (const HcHouse *house);
const HcSpace *hc_house_get_air_space (const HcHouse *house, guint space);

G_DEFINE_AUTOPTR_CLEANUP_FUNC (HcHouse, hc_house_unref)

G_END_DECLS
