/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A free spot for a thing in a pen whose walls run along x and y. */
#pragma once

#include "book/book.h"
#include "plan/layout.h"

G_BEGIN_DECLS

/**
 * HcSpotWish:
 * @along_walls: whether it wants its back to a wall
 * @not_north: whether the north wall is not for it
 * @away_from: a kind of fitting it keeps a distance from, or -1
 * @away_mm: that distance
 * @walk_mm: a walk to it as long as this is short enough
 */
typedef struct
{
  gboolean along_walls;
  gboolean not_north;
  int away_from;
  double away_mm;
  double walk_mm;
} HcSpotWish;

gboolean hc_find_spot (HcBook *book, const HcLayout *layout, const HcPen *pen,
                       const HcSpotWish *wish, HcFittingValues *thing);

G_END_DECLS
