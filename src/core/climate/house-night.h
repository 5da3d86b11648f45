/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A plan's house with its birds on one night, and all that is known of its air. */
#pragma once

#include "climate/night.h"
#include "plan/plan.h"

G_BEGIN_DECLS

/**
 * HcHouseNight:
 * @plan: the plan
 * @ask: what is asked: house, birds, place, weather
 * @air: (nullable): the house for the solver; %NULL where nothing is under a roof
 * @night: the night, without the ranges of its figures
 *
 * One night of a plan. It holds what it is made from.
 */
typedef struct
{
  HcPlan *plan;
  HcHouseAirAsk ask;
  HcHouseAir *air;
  HcNight night;
} HcHouseNight;

HcHouseNight *hc_house_night_new (HcPlan *plan, HcHouse *house, HcFlock *flock,
                                  const HcWeather *weather) G_GNUC_WARN_UNUSED_RESULT;
void hc_house_night_free (HcHouseNight *self);
void hc_house_night_settle_again (HcHouseNight *self);
gboolean hc_house_night_find_space (const HcHouseNight *self, const char *pen, guint *space);
gboolean hc_house_night_is_jet (const HcHouseNight *self, guint way);

G_DEFINE_AUTOPTR_CLEANUP_FUNC (HcHouseNight, hc_house_night_free)

G_END_DECLS
