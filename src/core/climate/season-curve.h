/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * How warm nights and days are through the year of a place. */
#pragma once

#include "book/book.h"
#include "plan/site.h"

G_BEGIN_DECLS

/**
 * HcSeasonDay:
 * @night_c: the cold night to plan for in that season, °C
 * @day_c: the hot day to plan for, °C
 *
 * The hardest weather of a time of year.
 */
typedef struct
{
  double night_c;
  double day_c;
} HcSeasonDay;

HcSeasonDay hc_season_day (const HcBook *book, const HcSiteValues *site, double latitude_deg,
                           guint32 day);

G_END_DECLS
