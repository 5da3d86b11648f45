/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The forecast written out. */
#pragma once

#include "cli/call.h"
#include "season/forecast/forecast.h"

G_BEGIN_DECLS

void hc_forecast_write_json (const HcCall *call, const HcForecast *forecast, GString *out);
void hc_forecast_write_csv (const HcForecast *forecast, GString *out);
void hc_forecast_tell (const HcCall *call, const HcForecast *forecast, GString *out);

G_END_DECLS
