/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * With how many birds the nights are well: too few is possible too. */
#pragma once

#include "climate/house-night.h"

G_BEGIN_DECLS

/**
 * HcBirdRange:
 * @least: the fewest birds the night is well with; 0 where no number is
 * @most: the most; 0 where no number is
 * @is_open: whether more than @most were not tried
 *
 * An interval of birds.
 */
typedef struct
{
  gint64 least;
  gint64 most;
  gboolean is_open;
} HcBirdRange;

void hc_night_find_bird_range (const HcHouseNight *asked, HcBirdRange *range);

G_END_DECLS
