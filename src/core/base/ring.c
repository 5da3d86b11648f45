/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Sums on a ring of corners, without any geometry library. */
#include "config.h"

#include "base/ring.h"

#include <math.h>

/* Edges whose directions differ by less than this (as a sine) count as one line. */
#define PARALLEL_SINE 1e-9

/**
 * hc_ring_area_mm2: (skip)
 * @points: (array length=n_points): the corners
 * @n_points: how many
 *
 * Returns: the area in mm²; negative when the ring turns from y towards x
 */
double
hc_ring_area_mm2 (const HcPoint *points,
                  guint n_points)
{
  double twice = 0;

  /* Measured from the first corner: far from the origin, digits would be lost. */
  for (guint i = 1; i + 1 < n_points; i++)
    twice += hc_point_cross (hc_point_subtract (points[i], points[0]),
                             hc_point_subtract (points[i + 1], points[0]));
  return twice / 2;
}

/**
 * hc_ring_contains_point: (skip)
 * @points: (array length=n_points): the corners
 * @n_points: how many
 * @p: a point
 *
 * Tells whether @p is inside, by counting the edges a ray from it crosses. A
 * point on an edge may be told either way.
 *
 * Returns: whether it is
 */
gboolean
hc_ring_contains_point (const HcPoint *points,
                        guint n_points,
                        HcPoint p)
{
  gboolean inside = FALSE;

  for (guint i = 0, j = n_points - 1; i < n_points; j = i++)
    {
      HcPoint a = points[i], b = points[j];

      if ((a.y_mm > p.y_mm) != (b.y_mm > p.y_mm)
          && p.x_mm < a.x_mm + (b.x_mm - a.x_mm) * (p.y_mm - a.y_mm) / (b.y_mm - a.y_mm))
        inside = !inside;
    }
  return inside;
}

/**
 * hc_ring_reverse: (skip)
 * @points: (array length=n_points) (inout): the corners
 * @n_points: how many
 *
 * Makes the ring turn the other way.
 */
void
hc_ring_reverse (HcPoint *points,
                 guint n_points)
{
  for (guint i = 0; i < n_points / 2; i++)
    {
      HcPoint kept = points[i];

      points[i] = points[n_points - 1 - i];
      points[n_points - 1 - i] = kept;
    }
}

static HcPoint
edge_way (const HcPoint *points,
          guint n_points,
          guint edge)
{
  return hc_point_subtract (points[(edge + 1) % n_points], points[edge % n_points]);
}

static HcPoint
inward (HcPoint way,
        double area_mm2)
{
  HcPoint left = hc_point_unit (hc_point (-way.y_mm, way.x_mm));

  return area_mm2 < 0 ? hc_point_scale (left, -1) : left;
}

/**
 * hc_ring_edge_normal: (skip)
 * @points: (array length=n_points): the corners
 * @n_points: how many
 * @edge: which edge; edge i runs from corner i to the next
 *
 * Returns: the direction of length 1 that leads square off the edge to the
 *   inside of the ring
 */
HcPoint
hc_ring_edge_normal (const HcPoint *points,
                     guint n_points,
                     guint edge)
{
  return inward (edge_way (points, n_points, edge), hc_ring_area_mm2 (points, n_points));
}

/**
 * hc_ring_edge_length_mm: (skip)
 * @points: (array length=n_points): the corners
 * @n_points: how many
 * @edge: which edge
 *
 * Returns: how long the edge is, in mm
 */
double
hc_ring_edge_length_mm (const HcPoint *points,
                        guint n_points,
                        guint edge)
{
  return hc_point_length (edge_way (points, n_points, edge));
}

/**
 * hc_ring_point_on_edge: (skip)
 * @points: (array length=n_points): the corners
 * @n_points: how many
 * @edge: which edge
 * @along_mm: how far from the edge's first corner, in mm
 *
 * Returns: the point there; beyond the ends it lies on the edge made longer
 */
HcPoint
hc_ring_point_on_edge (const HcPoint *points,
                       guint n_points,
                       guint edge,
                       double along_mm)
{
  HcPoint direction = hc_point_unit (edge_way (points, n_points, edge));

  return hc_point_add (points[edge % n_points], hc_point_scale (direction, along_mm));
}

/**
 * hc_ring_nearest_edge: (skip)
 * @points: (array length=n_points): the corners
 * @n_points: how many, at least one
 * @p: a point
 * @distance_mm: (out) (optional): how far that edge is
 *
 * Returns: the edge nearest to @p
 */
guint
hc_ring_nearest_edge (const HcPoint *points,
                      guint n_points,
                      HcPoint p,
                      double *distance_mm)
{
  double least_mm = INFINITY;
  guint nearest = 0;

  for (guint i = 0; i < n_points; i++)
    {
      double d = hc_point_distance_to_line (p, points[i], points[(i + 1) % n_points]);

      if (d < least_mm)
        {
          least_mm = d;
          nearest = i;
        }
    }
  if (distance_mm != NULL)
    *distance_mm = least_mm;
  return nearest;
}

/* The corner where two edges meet after each has moved in by its own distance. */
static HcPoint
inset_corner (HcPoint corner,
              HcPoint way_in,
              HcPoint way_out,
              double inset_in_mm,
              double inset_out_mm,
              double area_mm2)
{
  HcPoint before = hc_point_unit (way_in), after = hc_point_unit (way_out);
  HcPoint square_before = inward (before, area_mm2), square_after = inward (after, area_mm2);
  double sine = hc_point_cross (before, after);
  HcPoint start, to_next;

  if (fabs (sine) < PARALLEL_SINE)
    return hc_point_add (corner,
                         hc_point_scale (square_after, MAX (inset_in_mm, inset_out_mm)));
  start = hc_point_add (corner, hc_point_scale (square_before, inset_in_mm));
  to_next = hc_point_subtract (
      hc_point_add (corner, hc_point_scale (square_after, inset_out_mm)), start);
  return hc_point_add (start,
                       hc_point_scale (before, hc_point_cross (to_next, after) / sine));
}

/**
 * hc_ring_inset: (skip)
 * @points: (array length=n_points): the corners, either way round
 * @n_points: how many
 * @inset_mm: (array length=n_points): how far each edge moves in, in mm;
 *   negative moves it out
 *
 * Moves every edge square to itself by its own distance and joins the edges
 * again where they meet: the inside faces of walls from their centre lines.
 * Where two edges run on in one line, the corner takes the larger distance. An
 * inset larger than the ring gives a ring that is turned over or crosses
 * itself; [func@ring_find_fault] and the sign of the area tell.
 *
 * Returns: (array length=n_points) (transfer full): the new corners, as many as
 *   before, rounded
 */
HcPoint *
hc_ring_inset (const HcPoint *points,
               guint n_points,
               const double *inset_mm)
{
  HcPoint *inner = g_new (HcPoint, MAX (n_points, 1));
  double area_mm2 = hc_ring_area_mm2 (points, n_points);

  for (guint i = 0; i < n_points; i++)
    {
      guint before = (i + n_points - 1) % n_points;

      inner[i] = hc_point_rounded (
          inset_corner (points[i], edge_way (points, n_points, before),
                        edge_way (points, n_points, i), inset_mm[before], inset_mm[i], area_mm2));
    }
  return inner;
}
