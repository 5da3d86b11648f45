/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * How much room there is over a thing and under it. */
#pragma once

#include "supply/house.h"

G_BEGIN_DECLS

/**
 * HcUpright:
 * @bottom_mm: the height of its underside; of a roost the top of its lowest bar
 * @top_mm: the height of its top; of a roost the top of its highest bar
 * @under_mm: the height of what is met straight down: a thing, the bedding, the floor
 * @over_mm: the height of what is met straight up: a thing or the ceiling; without
 *   end under the open sky
 * @under_id: (nullable): id of the thing met going down
 * @over_id: (nullable): id of the thing met going up
 */
typedef struct
{
  double bottom_mm, top_mm;
  double under_mm, over_mm;
  const char *under_id, *over_id;
} HcUpright;

gboolean hc_house_measure_upright (const HcHouse *house, const char *fitting, HcUpright *found);

G_END_DECLS
