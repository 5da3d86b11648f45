/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Every week's night and day in the house. */
#pragma once

#include "climate/hot-day.h"
#include "climate/night.h"

G_BEGIN_DECLS

/**
 * HcYearNight:
 * @day: the Julian day the week begins on
 * @outside_c: the cold night outside, °C
 * @inside_c: the same night at the roost that is worst off, °C
 * @humidity: humidity there
 * @faults: what can be mended where birds sleep, a set of #HcNightFault
 * @cold: what cold alone does
 * @hot_outside_c: the hot day outside, °C
 * @hot_inside_c: the same day inside, °C
 * @heat: what that does
 *
 * One week. Indicative: the seasons are one plain wave.
 */
typedef struct
{
  guint32 day;
  double outside_c;
  double inside_c;
  double humidity;
  guint faults;
  HcColdRisk cold;
  double hot_outside_c;
  double hot_inside_c;
  HcHeatRisk heat;
} HcYearNight;

/**
 * HcYearNights:
 *
 * Works out one week after another of one house; what does not change from week to
 * week is kept.
 */
typedef struct _HcYearNights HcYearNights;

HcYearNights *hc_year_nights_new (HcPlan *plan, HcHouse *house) G_GNUC_WARN_UNUSED_RESULT;
void hc_year_nights_free (HcYearNights *self);
void hc_year_nights_work_out (HcYearNights *self, HcFlock *flock, guint32 day,
                              HcYearNight *week);

G_DEFINE_AUTOPTR_CLEANUP_FUNC (HcYearNights, hc_year_nights_free)

G_END_DECLS
