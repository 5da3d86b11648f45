/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * How two shapes lie to each other. */
#include "config.h"

#include "base/shape-relate.h"

#include "base/convex.h"
#include "base/crossing.h"
#include "base/ring.h"
#include "base/shape-ops.h"
#include "base/shape-private.h"

/* Tells inside from outside; a point on an edge may be told either way. */
gboolean
hc_shape_is_inside_rings (const HcShape *shape,
                          HcPoint p)
{
  gboolean inside = FALSE;

  for (guint i = 0; i < shape->n_rings; i++)
    if (hc_ring_contains_point (shape->points + shape->rings[i].start, shape->rings[i].n_points,
                                p))
      inside = !inside;
  return inside;
}

/* Tells whether a point is within HC_SHAPE_TOUCH_MM of an edge. */
gboolean
hc_shape_is_on_edge (const HcShape *shape,
                     HcPoint p)
{
  HcEdgeWalk walk = hc_edge_walk (shape);
  HcPoint a, b;

  while (hc_edge_walk_next (&walk, &a, &b))
    if (hc_lines_may_touch (a, b, p, p, HC_SHAPE_TOUCH_MM)
        && hc_point_distance_to_line (p, a, b) <= HC_SHAPE_TOUCH_MM)
      return TRUE;
  return FALSE;
}

/**
 * hc_shape_contains_point:
 * @self: a shape
 * @p: a point
 *
 * Returns: whether @p is inside or on the edge
 */
gboolean
hc_shape_contains_point (const HcShape *self,
                         HcPoint p)
{
  g_return_val_if_fail (self != NULL, FALSE);

  if (!hc_box_contains_point (hc_box_grow (self->bounds, HC_SHAPE_TOUCH_MM), p))
    return FALSE;
  return hc_shape_is_inside_rings (self, p) || hc_shape_is_on_edge (self, p);
}

static gboolean
edges_touch (const HcShape *self,
             const HcShape *other)
{
  HcEdgeWalk walk = hc_edge_walk (self);
  HcPoint a, b, c, d;

  while (hc_edge_walk_next (&walk, &a, &b))
    for (HcEdgeWalk across = hc_edge_walk (other); hc_edge_walk_next (&across, &c, &d);)
      if (hc_lines_touch (a, b, c, d))
        return TRUE;
  return FALSE;
}

static gboolean
holds_a_part_of (const HcShape *self,
                 const HcShape *other)
{
  for (guint i = 0; i < other->n_rings; i++)
    if (hc_shape_is_inside_rings (self, other->points[other->rings[i].start]))
      return TRUE;
  return FALSE;
}

/**
 * hc_shape_intersects:
 * @self: a shape
 * @other: another
 *
 * Returns: whether they have at least a point in common
 */
gboolean
hc_shape_intersects (const HcShape *self,
                     const HcShape *other)
{
  g_return_val_if_fail (self != NULL && other != NULL, FALSE);

  return hc_box_touches (self->bounds, other->bounds)
         && (edges_touch (self, other) || holds_a_part_of (self, other)
             || holds_a_part_of (other, self));
}

/**
 * hc_shape_get_overlap_mm2:
 * @self: a shape
 * @other: another
 *
 * Measures what both cover. For shapes without dents, most fittings, this asks
 * nothing of the geometry engine.
 *
 * Returns: the area, in mm²
 */
double
hc_shape_get_overlap_mm2 (HcShape *self,
                          HcShape *other)
{
  g_autoptr (HcShape) both = NULL;

  g_return_val_if_fail (self != NULL && other != NULL, 0);

  if (!hc_box_touches (self->bounds, other->bounds))
    return 0;
  if (hc_shape_is_convex (self) && hc_shape_is_convex (other))
    return hc_convex_overlap_mm2 (self, other);
  both = hc_shape_intersection (self, other);
  return hc_shape_get_area_mm2 (both);
}

/**
 * hc_shape_overlaps:
 * @self: a shape
 * @other: another
 * @forgiven_mm2: how much they may share without counting, in mm²
 *
 * Returns: whether they lie on each other by more than that
 */
gboolean
hc_shape_overlaps (HcShape *self,
                   HcShape *other,
                   double forgiven_mm2)
{
  return hc_shape_get_overlap_mm2 (self, other) > forgiven_mm2;
}
