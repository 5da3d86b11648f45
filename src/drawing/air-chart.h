/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A chart of nights over outside temperature and vent opening. */
#pragma once

#include "drawing/ink.h"

#include "climate/night-chart.h"

G_BEGIN_DECLS

/**
 * HcAirChart:
 * @points: (element-type HcNightPoint): the nights, a row for each opening
 * @side: points each way
 * @now_c: how cold it is outside on the night looked at, °C
 * @now_open: how far the vents stand open, 0 to 1
 * @coldest_c: the coldest night of the place, °C
 * @mildest_c: the cold night to plan for in its mildest week, °C
 *
 * What a chart of nights shows.
 */
typedef struct
{
  const GArray *points;
  guint side;
  double now_c;
  double now_open;
  double coldest_c;
  double mildest_c;
} HcAirChart;

void hc_draw_air_chart (const HcInk *ink, const HcAirChart *chart, double width, double height);

G_END_DECLS
