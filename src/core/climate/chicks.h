/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Chicks by night: the air about their heater, week by week, and what it costs. */
#pragma once

#include "climate/house-air.h"

G_BEGIN_DECLS

/**
 * HC_CHICKS_MOST_WEEKS:
 *
 * The most weeks under heat that are told.
 */
#define HC_CHICKS_MOST_WEEKS 12

/**
 * HcChickWeek:
 * @week: week of life, from 1
 * @day: the Julian day it begins on
 * @wanted_c: how warm chicks want it at the heater, °C
 * @room_c: the room on the cold night of that season, °C
 * @heater_c: how warm it is at the heater, °C
 * @is_enough: whether that is as warm as they want it
 *
 * One week under heat.
 */
typedef struct
{
  int week;
  guint32 day;
  double wanted_c;
  double room_c;
  double heater_c;
  gboolean is_enough;
} HcChickWeek;

/**
 * HcChickNights:
 * @pen: id of the pen, interned
 * @chicks: chicks under heat there
 * @watts: what their heaters draw
 * @lowest_room_c: the coldest room their makers allow, °C; -273 where none says
 * @is_room_too_cold: whether the room is colder than that in some week
 * @kwh_a_day: electricity a day
 * @kwh: electricity until the last is off heat
 * @n_weeks: weeks still under heat
 * @weeks: (array length=n_weeks): each of them
 *
 * Chicks of one pen that need a heater.
 */
typedef struct
{
  const char *pen;
  gint64 chicks;
  double watts;
  double lowest_room_c;
  gboolean is_room_too_cold;
  double kwh_a_day;
  double kwh;
  guint n_weeks;
  HcChickWeek weeks[HC_CHICKS_MOST_WEEKS];
} HcChickNights;

GArray *hc_chick_nights (HcPlan *plan, HcHouse *house, HcFlock *flock, guint32 day)
    G_GNUC_WARN_UNUSED_RESULT;

G_END_DECLS
