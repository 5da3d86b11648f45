/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The weather view: the coldest night in the house, and what to do about it. */
#pragma once

#include "app/window/panel.h"

G_BEGIN_DECLS

#define HC_TYPE_WEATHER_VIEW (hc_weather_view_get_type ())
G_DECLARE_FINAL_TYPE (HcWeatherView, hc_weather_view, HC, WEATHER_VIEW, HcPanel)

G_END_DECLS
