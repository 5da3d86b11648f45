/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A place on the floor plan, and the little sums done with places. */
#include "config.h"

#include "base/point.h"

#include "base/whole.h"

#include <math.h>

G_DEFINE_BOXED_TYPE (HcPoint, hc_point, hc_point_copy, hc_point_free)

/**
 * hc_point_copy:
 * @self: a point
 *
 * Returns: (transfer full): the same point in memory of its own
 */
HcPoint *
hc_point_copy (const HcPoint *self)
{
  return g_memdup2 (self, sizeof *self);
}

/**
 * hc_point_free:
 * @self: (transfer full): a point made by [method@Point.copy]
 *
 * Frees it.
 */
void
hc_point_free (HcPoint *self)
{
  g_free (self);
}

/**
 * hc_point_rounded: (skip)
 * @p: a point
 *
 * Returns: @p with both coordinates rounded to 0.001 mm
 */
HcPoint
hc_point_rounded (HcPoint p)
{
  return (HcPoint){ hc_mm (p.x_mm), hc_mm (p.y_mm) };
}

/* Quarter turns are exact, so that a turned box still has square corners. */
static void
sine_and_cosine (double turn_deg,
                 double *sine,
                 double *cosine)
{
  static const double quarter_sines[] = { 0, 1, 0, -1 };
  double quarters = turn_deg / 90;

  if (quarters == floor (quarters) && fabs (quarters) < 1e9)
    {
      int quarter = (int) (((gint64) quarters % 4 + 4) % 4);

      *sine = quarter_sines[quarter];
      *cosine = quarter_sines[(quarter + 1) % 4];
      return;
    }
  *sine = sin (turn_deg * G_PI / 180);
  *cosine = cos (turn_deg * G_PI / 180);
}

/**
 * hc_point_turn: (skip)
 * @p: a way
 * @turn_deg: how far to turn, from the x axis towards the y axis, in degrees
 *
 * Returns: the way turned about the origin; quarter turns are exact
 */
HcPoint
hc_point_turn (HcPoint p,
               double turn_deg)
{
  double sine, cosine;

  sine_and_cosine (turn_deg, &sine, &cosine);
  return (HcPoint){ p.x_mm * cosine - p.y_mm * sine, p.x_mm * sine + p.y_mm * cosine };
}

/**
 * hc_point_turn_about: (skip)
 * @p: a point
 * @centre: what it turns about
 * @turn_deg: how far, as in [method@Point.turn]
 *
 * Returns: where @p comes to lie
 */
HcPoint
hc_point_turn_about (HcPoint p,
                     HcPoint centre,
                     double turn_deg)
{
  return hc_point_add (centre, hc_point_turn (hc_point_subtract (p, centre), turn_deg));
}

/**
 * hc_point_unit: (skip)
 * @p: a way
 *
 * Returns: the same direction with a length of 1; (0, 0) stays as it is
 */
HcPoint
hc_point_unit (HcPoint p)
{
  double length = hc_point_length (p);

  return length > 0 ? hc_point_scale (p, 1 / length) : p;
}

/**
 * hc_point_length: (skip)
 * @p: a way
 *
 * Returns: how long it is, in mm
 */
double
hc_point_length (HcPoint p)
{
  return hypot (p.x_mm, p.y_mm);
}

/**
 * hc_point_distance: (skip)
 * @a: a point
 * @b: another
 *
 * Returns: how far apart they are, in mm
 */
double
hc_point_distance (HcPoint a,
                   HcPoint b)
{
  return hypot (a.x_mm - b.x_mm, a.y_mm - b.y_mm);
}

/**
 * hc_point_along: (skip)
 * @p: a point
 * @a: where the line starts
 * @b: where it ends
 *
 * Drops @p square onto the line from @a to @b.
 *
 * Returns: the part of the way where it lands, held between 0 and 1
 */
double
hc_point_along (HcPoint p,
                HcPoint a,
                HcPoint b)
{
  HcPoint way = hc_point_subtract (b, a);
  double square = hc_point_dot (way, way);

  if (square <= 0)
    return 0;
  return CLAMP (hc_point_dot (hc_point_subtract (p, a), way) / square, 0, 1);
}

/**
 * hc_point_distance_to_line: (skip)
 * @p: a point
 * @a: where the line starts
 * @b: where it ends
 *
 * Returns: how far @p is from the nearest point between @a and @b, in mm
 */
double
hc_point_distance_to_line (HcPoint p,
                           HcPoint a,
                           HcPoint b)
{
  return hc_point_distance (p, hc_point_between (a, b, hc_point_along (p, a, b)));
}
