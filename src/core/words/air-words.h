/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Pictures and charts of the air, in words for those who do not see them. */
#pragma once

#include "base/units.h"
#include "climate/chicks.h"
#include "climate/hot-help.h"
#include "climate/house-night.h"
#include "climate/night-chart.h"

G_BEGIN_DECLS

char *hc_words_air_picture (const HcHouseNight *night, HcUnits units) G_GNUC_WARN_UNUSED_RESULT;
char *hc_words_chart_row (const GArray *points, guint side, guint column, HcUnits units)
    G_GNUC_WARN_UNUSED_RESULT;
char *hc_words_avoidable (guint faults) G_GNUC_WARN_UNUSED_RESULT;
char *hc_words_hot_day (const HcHotHelp *help, HcUnits units) G_GNUC_WARN_UNUSED_RESULT;
char *hc_words_chicks (const HcPlan *plan, const HcChickNights *nights, HcUnits units)
    G_GNUC_WARN_UNUSED_RESULT;

G_END_DECLS
