/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A place on the floor plan. */
#pragma once

#include <glib-object.h>

G_BEGIN_DECLS

#define HC_TYPE_POINT (hc_point_get_type ())

/**
 * HcPoint:
 * @x_mm: how far along the plan's width, in mm
 * @y_mm: how far along the plan's depth, in mm
 *
 * A place on the floor, or the way from one place to another.
 */
typedef struct
{
  double x_mm;
  double y_mm;
} HcPoint;

GType hc_point_get_type (void);

HcPoint *hc_point_copy (const HcPoint *self);
void hc_point_free (HcPoint *self);

/**
 * hc_point: (skip)
 * @x_mm: along the width, in mm
 * @y_mm: along the depth, in mm
 *
 * Returns: the point, not rounded
 */
static inline HcPoint
hc_point (double x_mm,
          double y_mm)
{
  return (HcPoint){ x_mm, y_mm };
}

/**
 * hc_point_equal: (skip)
 * @a: a point
 * @b: another
 *
 * Returns: whether both coordinates are the same to the last digit
 */
static inline gboolean
hc_point_equal (HcPoint a,
                HcPoint b)
{
  return a.x_mm == b.x_mm && a.y_mm == b.y_mm;
}

/**
 * hc_point_add: (skip)
 * @a: a point
 * @b: a way
 *
 * Returns: where @b leads from @a
 */
static inline HcPoint
hc_point_add (HcPoint a,
              HcPoint b)
{
  return (HcPoint){ a.x_mm + b.x_mm, a.y_mm + b.y_mm };
}

/**
 * hc_point_subtract: (skip)
 * @a: a point
 * @b: another
 *
 * Returns: the way from @b to @a
 */
static inline HcPoint
hc_point_subtract (HcPoint a,
                   HcPoint b)
{
  return (HcPoint){ a.x_mm - b.x_mm, a.y_mm - b.y_mm };
}

/**
 * hc_point_scale: (skip)
 * @p: a way
 * @factor: how many times as long
 *
 * Returns: the way made longer or shorter
 */
static inline HcPoint
hc_point_scale (HcPoint p,
                double factor)
{
  return (HcPoint){ p.x_mm * factor, p.y_mm * factor };
}

/**
 * hc_point_between: (skip)
 * @a: where the line starts
 * @b: where it ends
 * @part: 0 for @a, 1 for @b, 0.5 for the middle
 *
 * Returns: the point that part of the way along
 */
static inline HcPoint
hc_point_between (HcPoint a,
                  HcPoint b,
                  double part)
{
  return (HcPoint){ a.x_mm + (b.x_mm - a.x_mm) * part, a.y_mm + (b.y_mm - a.y_mm) * part };
}

/**
 * hc_point_dot: (skip)
 * @a: a way
 * @b: another
 *
 * Returns: their scalar product, in mm²
 */
static inline double
hc_point_dot (HcPoint a,
              HcPoint b)
{
  return a.x_mm * b.x_mm + a.y_mm * b.y_mm;
}

/**
 * hc_point_cross: (skip)
 * @a: a way
 * @b: another
 *
 * Returns: the area they span, in mm²; positive when @b is turned from @a
 *   towards the y axis
 */
static inline double
hc_point_cross (HcPoint a,
                HcPoint b)
{
  return a.x_mm * b.y_mm - a.y_mm * b.x_mm;
}

HcPoint hc_point_rounded (HcPoint p);
HcPoint hc_point_turn (HcPoint p,
                       double turn_deg);
HcPoint hc_point_turn_about (HcPoint p,
                             HcPoint centre,
                             double turn_deg);
HcPoint hc_point_unit (HcPoint p);
double hc_point_length (HcPoint p);
double hc_point_distance (HcPoint a,
                          HcPoint b);
double hc_point_along (HcPoint p,
                       HcPoint a,
                       HcPoint b);
double hc_point_distance_to_line (HcPoint p,
                                  HcPoint a,
                                  HcPoint b);

G_END_DECLS
