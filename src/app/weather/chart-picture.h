/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The chart of nights on the screen. */
#pragma once

#include "app/fields/picture.h"

#include "drawing/air-chart.h"

G_BEGIN_DECLS

#define HC_TYPE_CHART_PICTURE (hc_chart_picture_get_type ())
G_DECLARE_FINAL_TYPE (HcChartPicture, hc_chart_picture, HC, CHART_PICTURE, HcPicture)

void hc_chart_picture_show (HcChartPicture *self, const HcAirChart *chart);
void hc_chart_picture_mark (HcChartPicture *self, double open);

G_END_DECLS
