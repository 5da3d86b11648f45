/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Where somebody who walks through the house can stand. */
#pragma once

#include "supply/room.h"

G_BEGIN_DECLS

/**
 * HcWalker: (skip)
 * @width_mm: how wide the way must be
 * @headroom_mm: how high
 * @step_over_mm: what is no higher is stepped over
 *
 * A keeper, or a keeper with a barrow.
 */
typedef struct
{
  double width_mm;
  double headroom_mm;
  double step_over_mm;
} HcWalker;

gboolean hc_walker_fits_in (const HcWalker *walker, const HcRoom *room);
gboolean hc_walker_is_stopped_by (const HcWalker *walker, const HcFitting *fitting);
HcShape *hc_way_new (const HcRoom *room, const HcWalker *walker) G_GNUC_WARN_UNUSED_RESULT;

G_END_DECLS
