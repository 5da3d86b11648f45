/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * How far somebody gets who comes to the house from outside. */
#pragma once

#include "supply/house.h"
#include "supply/way.h"

G_BEGIN_DECLS

/* Works out, or finds again, where a walker can stand in a room. */
typedef HcShape *(*HcWayFunc) (HcRoom *room, const HcWalker *walker, gpointer data);

/* Where a walker gets to, room by room. */
typedef struct _HcWayThrough HcWayThrough;

HcWayThrough *hc_way_through_new (HcHouse *house, const HcWalker *walker, HcWayFunc find_way,
                                  gpointer data) G_GNUC_WARN_UNUSED_RESULT;
void hc_way_through_free (HcWayThrough *through);
const HcWalker *hc_way_through_get_walker (const HcWayThrough *through);
GPtrArray *hc_way_through_get_reached (const HcWayThrough *through, guint room);
gboolean hc_way_through_enters (const HcWayThrough *through, guint room);
gboolean hc_way_through_gets_to (const HcWayThrough *through, guint room,
                                 const HcOpening *opening);

G_DEFINE_AUTOPTR_CLEANUP_FUNC (HcWayThrough, hc_way_through_free)

G_END_DECLS
