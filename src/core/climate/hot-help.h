/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What helps on the hot day: shade, vents, water. */
#pragma once

#include "climate/hot-day.h"

G_BEGIN_DECLS

/**
 * HcHotHelp:
 * @day: the hottest day as the house is planned
 * @calm_m3_h: fresh air when no wind blows, by warmth alone, m³/h
 * @shaded_k: how much cooler it is with the roof in shade, K
 * @vents_m2: vents to add, half low and half high, so that it is hardly hotter inside than
 *   outside, m²; 0 where there are enough
 * @are_enough: whether vents, those added among them, get it so far
 * @water_l: water all birds drink that day, litres
 *
 * The hottest day and what helps. Indicative.
 */
typedef struct
{
  HcHotDay day;
  double calm_m3_h;
  double shaded_k;
  double vents_m2;
  gboolean are_enough;
  double water_l;
} HcHotHelp;

void hc_hot_help_work_out (const HcHouseAirAsk *ask, HcHotHelp *help);

G_END_DECLS
