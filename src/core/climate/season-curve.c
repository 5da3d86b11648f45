/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * How warm nights and days are through the year of a place: one plain wave. */
#include "config.h"

#include "climate/season-curve.h"

#include <math.h>

#define DAYS_A_YEAR 365.2425

/* Midwinter of the north: 25 January; of the south half a year later. */
#define COLDEST_DAY_OF_YEAR 25

static double
find (const HcBook *book, const char *id)
{
  return hc_book_get_air_figure (book, id)->value;
}

/* 0 in the coldest week, 1 in the hottest. */
static double
get_summer (double latitude_deg, guint32 day)
{
  double shift = latitude_deg < 0 ? DAYS_A_YEAR / 2 : 0;
  double since = fmod ((double) day - COLDEST_DAY_OF_YEAR - shift, DAYS_A_YEAR);

  return (1 - cos (2 * G_PI * since / DAYS_A_YEAR)) / 2;
}

/**
 * hc_season_day: (skip)
 * @book: the book
 * @site: the place
 * @latitude_deg: how far north; south is negative
 * @day: a Julian day
 *
 * Indicative: one wave from the coldest night to the hottest day, nights so much colder
 * than days as the book has it. Real years have spells.
 *
 * Returns: the hardest night and day of that season
 */
HcSeasonDay
hc_season_day (const HcBook *book, const HcSiteValues *site, double latitude_deg, guint32 day)
{
  double range_k = find (book, "day_range_k");
  double summer = get_summer (latitude_deg, day);
  double hot_c = MAX (site->hottest_day_c, site->coldest_night_c);
  double mildest_night_c = MAX (hot_c - range_k, site->coldest_night_c);
  double coolest_day_c = MIN (site->coldest_night_c + range_k, hot_c);

  return (HcSeasonDay){ site->coldest_night_c + summer * (mildest_night_c - site->coldest_night_c),
                        coolest_day_c + summer * (hot_c - coolest_day_c) };
}
