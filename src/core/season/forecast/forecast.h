/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What the flock gives and takes, week by week. */
#pragma once

#include "season/forecast/compost.h"
#include "season/forecast/lay.h"

G_BEGIN_DECLS

/**
 * HcForecastWeek:
 * @from: its first day
 * @birds: birds on that day
 * @eggs: eggs to be expected
 * @eggs_spread: their standard deviation
 * @feed_kg: feed, kg
 * @water_l: water drunk in mild weather, l
 * @water_hot_l: water drunk when it is as hot as it gets then, l
 * @water_carried_l: water carried because nights freeze, l
 * @manure_kg: droppings as they fall, kg
 * @bedding_kg: bedding that is used up, kg
 * @heat_kwh: power of heaters over chicks, kWh at most
 * @dressed: birds slaughtered
 * @meat_kg: dressed birds, kg
 * @cost: what that costs, in the keeper's money
 * @income: what that brings
 *
 * A week of the flock.
 */
typedef struct
{
  guint32 from;
  gint64 birds;
  double eggs;
  double eggs_spread;
  double feed_kg;
  double water_l;
  double water_hot_l;
  double water_carried_l;
  double manure_kg;
  double bedding_kg;
  double heat_kwh;
  int dressed;
  double meat_kg;
  double cost;
  double income;
} HcForecastWeek;

/**
 * HcEggSort:
 * @colour: (nullable): colour of the shell in English, %NULL when not known
 * @size: the size
 *
 * Eggs of one colour and size.
 */
typedef struct
{
  const char *colour;
  const HcEggClass *size;
} HcEggSort;

/**
 * HcMeatDay:
 * @on: the day
 * @group: index of the group in the timeline
 * @birds: birds slaughtered
 * @live_kg: their live mass together
 * @dressed_kg: what is left after dressing
 * @litres: freezer it takes
 * @freezer_litres: freezer taken by then, when nothing is eaten meanwhile
 *
 * Birds that go to the freezer.
 */
typedef struct
{
  guint32 on;
  guint group;
  int birds;
  double live_kg;
  double dressed_kg;
  double litres;
  double freezer_litres;
} HcMeatDay;

/* Immutable, atomically reference-counted. */
typedef struct _HcForecast HcForecast;

HcForecast *hc_forecast_new (HcPlan *plan, HcBook *book, guint32 from,
                             guint weeks) G_GNUC_WARN_UNUSED_RESULT;
HcForecast *hc_forecast_ref (HcForecast *self);
void hc_forecast_unref (HcForecast *self);

HcBook *hc_forecast_get_book (const HcForecast *self);
const HcTimeline *hc_forecast_get_timeline (const HcForecast *self);
guint hc_forecast_get_n_weeks (const HcForecast *self);
const HcForecastWeek *hc_forecast_get_week (const HcForecast *self, guint week);
void hc_forecast_sum (const HcForecast *self, HcForecastWeek *sum);
guint hc_forecast_get_n_egg_sorts (const HcForecast *self);
const HcEggSort *hc_forecast_get_egg_sort (const HcForecast *self, guint sort);
double hc_forecast_get_eggs (const HcForecast *self, guint week, guint sort);
double hc_forecast_get_feed_kg (const HcForecast *self, guint week, guint feed);
const GArray *hc_forecast_get_meat (const HcForecast *self);
guint32 hc_forecast_find_freezer_full (const HcForecast *self);
const HcLayLearnt *hc_forecast_get_learnt (const HcForecast *self, guint group);
const HcHeap *hc_forecast_get_heap (const HcForecast *self);

G_DEFINE_AUTOPTR_CLEANUP_FUNC (HcForecast, hc_forecast_unref)

G_END_DECLS
