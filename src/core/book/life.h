/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The life of a kind of bird: what it eats, drinks and lays as it ages, how it
 * hatches and what it gives on the table. */
#pragma once

#include "book/kind.h"

G_BEGIN_DECLS

/**
 * HcGrounds:
 * @evidence: what stands behind the facts
 * @source: (nullable): what was published about them
 * @note: (nullable): a remark in English
 *
 * Who says so.
 */
typedef struct
{
  HcEvidence evidence;
  const HcSource *source;
  const char *note;
} HcGrounds;

/**
 * HcCurvePoint:
 * @week: completed weeks since the hatch
 * @value: the value then
 */
typedef struct
{
  double week;
  double value;
} HcCurvePoint;

/**
 * HC_CURVE_POINTS:
 *
 * The most points a curve of a life has.
 */
#define HC_CURVE_POINTS 16

/**
 * HC_LIFE_YEARS:
 *
 * The most years of lay that are told apart.
 */
#define HC_LIFE_YEARS 12

/**
 * HcCurve:
 * @points: by rising week; straight between them, level before and after
 * @n_points: how many
 * @grounds: who says so
 */
typedef struct
{
  HcCurvePoint points[HC_CURVE_POINTS];
  guint n_points;
  HcGrounds grounds;
} HcCurve;

/**
 * HcHatching:
 * @days: days from setting to hatching
 * @days_low: the earliest
 * @days_high: the latest
 * @stop_turning_day: the day turning stops
 * @candle_days: days eggs are looked through, 0 for none
 * @fertile_low_percent: one setting in ten has a smaller share of fertile eggs
 * @fertile_high_percent: one setting in ten has a larger one
 * @hatch_low_percent: one setting in ten hatches a smaller share of them
 * @hatch_high_percent: one setting in ten hatches a larger one
 * @females_per_male: females a male keeps fertile
 * @grounds: who says so
 */
typedef struct
{
  int days;
  int days_low;
  int days_high;
  int stop_turning_day;
  int candle_days[2];
  double fertile_low_percent;
  double fertile_high_percent;
  double hatch_low_percent;
  double hatch_high_percent;
  double females_per_male;
  HcGrounds grounds;
} HcHatching;

/**
 * HcLay:
 * @start_week: the age at which one hen in twenty lays, weeks; 0 for birds not
 *   kept for eggs
 * @half_week: the age at which half of them lay
 * @peak_week: the age of most eggs
 * @peak_percent: eggs for 100 hens a day then
 * @weekly_loss_percent: fewer eggs for 100 hens a day each week after
 * @years_percent: eggs of each year of lay, the best being 100
 * @n_years: how many years are told apart
 * @light_hours: hours of light that full lay takes
 * @dark_percent: lay on days of eight hours of light
 * @moult_weeks: weeks without eggs at the end of each year of lay
 * @first_egg_percent: mass of the first eggs, of full ones
 * @full_egg_weeks: weeks of lay until eggs have their full mass
 * @egg_spread_percent: standard deviation of the mass of eggs, of their mean
 * @season_from_day: day of a northern year lay begins on, 0 for all year
 * @season_to_day: day of a northern year it ends on
 * @grounds: who says so
 */
typedef struct
{
  int start_week;
  int half_week;
  int peak_week;
  double peak_percent;
  double weekly_loss_percent;
  double years_percent[HC_LIFE_YEARS];
  guint n_years;
  double light_hours;
  double dark_percent;
  int moult_weeks;
  double first_egg_percent;
  int full_egg_weeks;
  double egg_spread_percent;
  int season_from_day;
  int season_to_day;
  HcGrounds grounds;
} HcLay;

/**
 * HcMeat:
 * @dressing_percent: share of the live bird that is left after dressing
 * @harvest_from_week: the first week it is worth harvesting in
 * @harvest_to_week: after this week it is tough
 * @litres_per_kg: freezer taken by a kilogram of dressed bird
 * @grounds: who says so
 */
typedef struct
{
  double dressing_percent;
  int harvest_from_week;
  int harvest_to_week;
  double litres_per_kg;
  HcGrounds grounds;
} HcMeat;

/**
 * HcHotDays:
 * @above_c: air warmer than this makes birds drink more, °C
 * @low_times: how many times as much, at least
 * @high_times: how many times as much, at most
 * @grounds: who says so
 */
typedef struct
{
  double above_c;
  double low_times;
  double high_times;
  HcGrounds grounds;
} HcHotDays;

/**
 * HcLife:
 * @id: id of the kind of bird, interned
 * @feed: feed of a bird, g a day
 * @water: water of a bird at 20 °C, ml a day
 * @hot_days: what it drinks in the heat
 * @hatching: how it hatches
 * @lay: what it lays
 * @meat: what it gives on the table
 * @kept_years: years of lay after which it is spent
 * @manure_dry_g: dry mass of the droppings of a grown bird, g a day
 *
 * The life of a kind of bird. It lives as long as its book.
 */
typedef struct
{
  const char *id;
  HcCurve feed;
  HcCurve water;
  HcHotDays hot_days;
  HcHatching hatching;
  HcLay lay;
  HcMeat meat;
  int kept_years;
  double manure_dry_g;
} HcLife;

/**
 * HcCompost:
 * @id: its id, interned
 * @name: its English name
 * @carbon_to_nitrogen: carbon for one of nitrogen, by mass
 * @moisture_percent: water in it
 * @nitrogen_percent: nitrogen in its dry mass
 * @density_kg_m3: mass of a loose cubic metre
 * @grounds: who says so
 *
 * What goes on a compost heap.
 */
typedef struct
{
  const char *id;
  const char *name;
  double carbon_to_nitrogen;
  double moisture_percent;
  double nitrogen_percent;
  double density_kg_m3;
  HcGrounds grounds;
} HcCompost;

double hc_curve_get (const HcCurve *self, double weeks);
double hc_lay_get_percent (const HcLay *self, double weeks);
gboolean hc_lay_is_moulting (const HcLay *self, double weeks);
double hc_lay_get_first_year (const HcLay *self);
double hc_lay_get_egg_share (const HcLay *self, double weeks);

G_END_DECLS
