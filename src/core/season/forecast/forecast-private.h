/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A forecast while it is put together. */
#pragma once

#include "season/forecast/forecast.h"

G_BEGIN_DECLS

/* Private to season/forecast/. @eggs and @feeds have a row for each week. */
struct _HcForecast
{
  gatomicrefcount refs;
  HcPlan *plan;
  HcBook *book;
  HcStandard *standard;
  HcTimeline *timeline;
  GArray *weeks;
  GArray *sorts;
  double *eggs;
  double *feeds;
  GArray *learnt;
  GArray *meat;
  HcHeap heap;
};

#define hc_forecast_week_at(self, week) (&g_array_index ((self)->weeks, HcForecastWeek, week))

/* One stay on one day of a week. */
typedef struct
{
  guint week;
  guint32 day;
  const HcStay *stay;
  const HcGroup *group;
  double weeks;
} HcStayDay;

void hc_forecast_list_egg_sorts (HcForecast *self);
void hc_forecast_add_eggs (HcForecast *self, const HcStayDay *at, double *group_eggs);
void hc_forecast_add_feed (HcForecast *self, const HcStayDay *at);
void hc_forecast_add_water (HcForecast *self, const HcStayDay *at);
void hc_forecast_add_meat (HcForecast *self);
void hc_forecast_add_house (HcForecast *self);
void hc_forecast_add_money (HcForecast *self);

G_END_DECLS
