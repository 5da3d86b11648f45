/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The hot day in the house: sun on the roof, wind and warmth through the vents. */
#pragma once

#include "climate/house-air.h"

G_BEGIN_DECLS

/**
 * HcHeatRisk:
 * @HC_HEAT_COMFORT: birds are at ease
 * @HC_HEAT_WATCH: watch them
 * @HC_HEAT_STRESS: they suffer
 * @HC_HEAT_DANGER: they are in danger
 *
 * What the heat does to birds. Indicative.
 */
typedef enum
{
  HC_HEAT_COMFORT,
  HC_HEAT_WATCH,
  HC_HEAT_STRESS,
  HC_HEAT_DANGER,
} HcHeatRisk;

/**
 * HcHotDay:
 * @n_spaces: how many spaces; 0 where nothing is under a roof
 * @t_c: temperature of the hottest space with birds, °C
 * @humidity: humidity there
 * @index_c: its index of warmth and damp, °C
 * @above_outside_k: how much hotter it is than outside, K
 * @fresh_m3_h: fresh air, m³/h
 * @risk: what that does
 *
 * The hottest day in the house.
 */
typedef struct
{
  guint n_spaces;
  double t_c;
  double humidity;
  double index_c;
  double above_outside_k;
  double fresh_m3_h;
  HcHeatRisk risk;
} HcHotDay;

void hc_hot_day_work_out (const HcHouseAirAsk *ask, HcHotDay *day);

G_END_DECLS
