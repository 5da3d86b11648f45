/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The hot day in the house: sun on the roof, wind and warmth through the vents. */
#pragma once

#include "climate/house-air.h"

G_BEGIN_DECLS

/**
 * HC_HOT_DAY_MOST_KINDS:
 *
 * The most kinds of bird a hot day is told for.
 */
#define HC_HOT_DAY_MOST_KINDS 16

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
 * HcHotKind:
 * @kind: (transfer none): a kind of bird, held by the book
 * @birds: how many of it are under a roof
 * @index_c: its index of warmth and damp where it is hottest, °C
 * @risk: what that does to it
 *
 * One kind of bird on the hottest day.
 */
typedef struct
{
  const HcKind *kind;
  gint64 birds;
  double index_c;
  HcHeatRisk risk;
} HcHotKind;

/**
 * HcHotDay:
 * @n_spaces: how many spaces; 0 where nothing is under a roof
 * @t_c: temperature of the hottest space with birds, °C
 * @humidity: humidity there
 * @index_c: the highest index of warmth and damp of any bird there, °C
 * @above_outside_k: how much hotter it is than outside, K
 * @fresh_m3_h: fresh air there, m³/h
 * @risk: the worst of any bird
 * @n_kinds: how many kinds there are
 * @kinds: (array length=n_kinds): each of them
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
  guint n_kinds;
  HcHotKind kinds[HC_HOT_DAY_MOST_KINDS];
} HcHotDay;

void hc_hot_day_init_weather (HcHouseAirAsk *ask, double outside_c);
void hc_hot_day_settle (const HcHouseAir *house, const HcHouseAirAsk *ask, HcHotDay *day);
void hc_hot_day_settle_near (const HcHouseAir *house, const HcHouseAirAsk *ask,
                             const HcAirState *near, HcHotDay *day, HcAirState *state);
void hc_hot_day_work_out (const HcHouseAirAsk *ask, HcHotDay *day);

G_END_DECLS
