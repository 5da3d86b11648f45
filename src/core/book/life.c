/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Curves over a bird's life, and the curve of lay. */
#include "config.h"

#include "book/life.h"

#define WEEKS_IN_YEAR 52
#define FIRST_PERCENT 5.0
#define HALF_PERCENT 50.0

/**
 * hc_curve_get:
 * @self: a curve
 * @weeks: age in weeks, with fractions
 *
 * Returns: its value at that age
 */
double
hc_curve_get (const HcCurve *self, double weeks)
{
  const HcCurvePoint *at = self->points;
  guint i = 1;

  if (self->n_points == 0 || weeks <= at[0].week)
    return self->n_points > 0 ? at[0].value : 0;
  while (i < self->n_points && at[i].week < weeks)
    i++;
  if (i == self->n_points)
    return at[i - 1].value;
  return at[i - 1].value
         + (at[i].value - at[i - 1].value) * (weeks - at[i - 1].week)
               / (at[i].week - at[i - 1].week);
}

static double
between (double weeks, int from, int to, double low, double high)
{
  return to > from ? low + (high - low) * (weeks - from) / (to - from) : high;
}

/* Lay of the first year, as it would go on without a moult. */
static double
get_first_percent (const HcLay *self, double weeks)
{
  if (weeks < self->start_week)
    return 0;
  if (weeks < self->half_week)
    return between (weeks, self->start_week, self->half_week, FIRST_PERCENT, HALF_PERCENT);
  if (weeks < self->peak_week)
    return between (weeks, self->half_week, self->peak_week, HALF_PERCENT, self->peak_percent);
  return MAX (self->peak_percent - self->weekly_loss_percent * (weeks - self->peak_week), 0);
}

/**
 * hc_lay_is_moulting:
 * @self: the lay of a kind
 * @weeks: age in weeks, with fractions
 *
 * Returns: whether hens of that age moult at the end of a year of lay
 */
gboolean
hc_lay_is_moulting (const HcLay *self, double weeks)
{
  int in_year;

  if (self->start_week == 0 || weeks < self->start_week)
    return FALSE;
  in_year = (int) (weeks - self->start_week) % WEEKS_IN_YEAR;
  return in_year >= WEEKS_IN_YEAR - self->moult_weeks;
}

/**
 * hc_lay_get_percent:
 * @self: the lay of a kind
 * @weeks: age in weeks, with fractions
 *
 * Rises from the first eggs over half lay to the peak, falls week by week,
 * stops for the moult and begins each further year at that year's share of the
 * peak. Light and season are not in it.
 *
 * Returns: eggs for 100 hens a day
 */
double
hc_lay_get_percent (const HcLay *self, double weeks)
{
  guint year;
  double into;

  if (self->start_week == 0 || self->n_years == 0 || weeks < self->start_week
      || hc_lay_is_moulting (self, weeks))
    return 0;
  year = (guint) ((weeks - self->start_week) / WEEKS_IN_YEAR);
  into = weeks - year * WEEKS_IN_YEAR;
  if (year > 0)
    into = MAX (into, self->peak_week);
  return get_first_percent (self, into) * self->years_percent[MIN (year, self->n_years - 1)]
         / 100;
}

/**
 * hc_lay_get_first_year:
 * @self: the lay of a kind
 *
 * Returns: eggs of one hen in her first year of lay, moult included, in full
 *   light
 */
double
hc_lay_get_first_year (const HcLay *self)
{
  double eggs = 0;

  for (int week = 0; week < WEEKS_IN_YEAR; week++)
    eggs += 7 * hc_lay_get_percent (self, self->start_week + week + 0.5) / 100;
  return eggs;
}

/**
 * hc_lay_get_egg_share:
 * @self: the lay of a kind
 * @weeks: age in weeks, with fractions
 *
 * Returns: the mass of an egg of a hen of that age, of a full one
 */
double
hc_lay_get_egg_share (const HcLay *self, double weeks)
{
  double laid = CLAMP ((weeks - self->start_week) / MAX (self->full_egg_weeks, 1), 0, 1);

  return (self->first_egg_percent + (100 - self->first_egg_percent) * laid) / 100;
}
