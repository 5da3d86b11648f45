/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * How far shapes are from each other, and where they are nearest. */
#include "config.h"

#include "base/shape-private.h"
#include "base/shape-relate.h"

#include <math.h>

typedef struct
{
  double distance_mm;
  HcPoint on_self;
  HcPoint on_other;
} Nearest;

static void
try_points (Nearest *nearest,
            HcPoint on_self,
            HcPoint on_other)
{
  double d = hc_point_distance (on_self, on_other);

  if (d < nearest->distance_mm)
    *nearest = (Nearest){ d, on_self, on_other };
}

/* Lines that do not cross are nearest at an end of one of them. */
static void
try_edges (Nearest *nearest,
           HcPoint a,
           HcPoint b,
           HcPoint c,
           HcPoint d)
{
  try_points (nearest, a, hc_point_between (c, d, hc_point_along (a, c, d)));
  try_points (nearest, b, hc_point_between (c, d, hc_point_along (b, c, d)));
  try_points (nearest, hc_point_between (a, b, hc_point_along (c, a, b)), c);
  try_points (nearest, hc_point_between (a, b, hc_point_along (d, a, b)), d);
}

/**
 * hc_shape_find_nearest: (skip)
 * @self: a shape
 * @other: another
 * @on_self: (out) (optional): where the edge of @self is nearest to that of @other
 * @on_other: (out) (optional): where the edge of @other is nearest to that of @self
 *
 * Finds where two shapes that lie apart are nearest to each other.
 *
 * Returns: how far apart they are, in mm; 0 when they touch or overlap, infinite
 *   when one is empty
 */
double
hc_shape_find_nearest (const HcShape *self,
                       const HcShape *other,
                       HcPoint *on_self,
                       HcPoint *on_other)
{
  Nearest nearest = { INFINITY, { 0, 0 }, { 0, 0 } };
  HcEdgeWalk walk;
  HcPoint a, b, c, d;

  g_return_val_if_fail (self != NULL && other != NULL, INFINITY);

  walk = hc_edge_walk (self);
  while (hc_edge_walk_next (&walk, &a, &b))
    for (HcEdgeWalk across = hc_edge_walk (other); hc_edge_walk_next (&across, &c, &d);)
      try_edges (&nearest, a, b, c, d);
  if (on_self != NULL)
    *on_self = nearest.on_self;
  if (on_other != NULL)
    *on_other = nearest.on_other;
  return hc_shape_intersects (self, other) ? 0 : nearest.distance_mm;
}

/**
 * hc_shape_distance_mm:
 * @self: a shape
 * @other: another
 *
 * Returns: how far apart they are, in mm; 0 when they touch or overlap, infinite
 *   when one is empty
 */
double
hc_shape_distance_mm (const HcShape *self,
                      const HcShape *other)
{
  return hc_shape_find_nearest (self, other, NULL, NULL);
}

/**
 * hc_shape_distance_to_edge_mm:
 * @self: a shape
 * @p: a point, inside or outside
 *
 * Returns: how far @p is from the nearest edge, in mm; infinite when the shape is
 *   empty
 */
double
hc_shape_distance_to_edge_mm (const HcShape *self,
                              HcPoint p)
{
  HcEdgeWalk walk;
  HcPoint a, b;
  double least_mm = INFINITY;

  g_return_val_if_fail (self != NULL, INFINITY);

  walk = hc_edge_walk (self);
  while (hc_edge_walk_next (&walk, &a, &b))
    least_mm = MIN (least_mm, hc_point_distance_to_line (p, a, b));
  return least_mm;
}

/**
 * hc_shape_distance_to_point_mm:
 * @self: a shape
 * @p: a point
 *
 * Returns: how far @p is from the shape, in mm; 0 inside, infinite when empty
 */
double
hc_shape_distance_to_point_mm (const HcShape *self,
                               HcPoint p)
{
  return hc_shape_contains_point (self, p) ? 0 : hc_shape_distance_to_edge_mm (self, p);
}
