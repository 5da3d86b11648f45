/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What of the weather takes longer than a frame, worked out on another thread. */
#pragma once

#include "climate/bird-range.h"
#include "climate/chicks.h"
#include "climate/hot-help.h"
#include "climate/night-chart.h"

#include <gio/gio.h>

G_BEGIN_DECLS

/**
 * HcWeatherAnswer: (skip)
 * @plan: the plan it is about
 * @night: its coldest night, with the ranges of its figures
 * @points: (element-type HcNightPoint): the chart
 * @side: points of the chart each way
 * @remedies: (element-type HcRemedy): ways to mend the air
 * @birds: with how many birds the air is well
 * @hot: the hottest day
 * @chicks: (element-type HcChickNights): chicks under heat
 *
 */
typedef struct
{
  HcPlan *plan;
  HcNight night;
  GArray *points;
  guint side;
  GPtrArray *remedies;
  HcBirdRange birds;
  HcHotHelp hot;
  GArray *chicks;
} HcWeatherAnswer;

#define HC_TYPE_WEATHER_TASK (hc_weather_task_get_type ())
/**
 * HcWeatherTask:
 *
 * Signal `answered` when there is an answer to the newest question.
 */
G_DECLARE_FINAL_TYPE (HcWeatherTask, hc_weather_task, HC, WEATHER_TASK, GObject)

HcWeatherTask *hc_weather_task_new (void) G_GNUC_WARN_UNUSED_RESULT;
void hc_weather_task_ask (HcWeatherTask *self, HcPlan *plan, HcBook *book);
const HcWeatherAnswer *hc_weather_task_get_answer (HcWeatherTask *self);

G_END_DECLS
