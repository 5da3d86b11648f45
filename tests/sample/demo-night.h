/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The demo house on its coldest night, as it is planned or spoilt. */
#pragma once

#include "climate/house-night.h"

/* Vents and windows of the plan opened so far in the cold. */
HcPlan *demo_with_vents (HcPlan *plan, double open) G_GNUC_WARN_UNUSED_RESULT;

/* All drinkers stay indoors at night. */
HcPlan *demo_with_water_inside (HcPlan *plan) G_GNUC_WARN_UNUSED_RESULT;

HcBook *demo_book (void);
HcPlan *demo_plan (void) G_GNUC_WARN_UNUSED_RESULT;
HcHouseNight *demo_night (HcPlan *plan) G_GNUC_WARN_UNUSED_RESULT;
