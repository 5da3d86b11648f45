/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Sentences about a night in the house. */
#pragma once

#include "base/units.h"
#include "climate/bird-range.h"
#include "climate/hot-day.h"
#include "climate/night-chart.h"

G_BEGIN_DECLS

const char *hc_words_night_fault (HcNightFault fault);
const char *hc_words_cold_risk (HcColdRisk risk);
const char *hc_words_heat_risk (HcHeatRisk risk);
const char *hc_words_air_fault (HcAirFault fault);
char *hc_words_vent_advice (HcVentAdvice advice, double open, const HcNight *night) G_GNUC_WARN_UNUSED_RESULT;
char *hc_words_night_note (const HcNight *night) G_GNUC_WARN_UNUSED_RESULT;
char *hc_words_bird_range (const HcBirdRange *range, gint64 birds) G_GNUC_WARN_UNUSED_RESULT;
char *hc_words_night (const HcNightSpace *space, HcUnits units) G_GNUC_WARN_UNUSED_RESULT;

G_END_DECLS
