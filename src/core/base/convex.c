/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Shapes without dents or holes, which can be overlaid with a few sums. */
#include "config.h"

#include "base/convex.h"

#include "base/ring.h"
#include "base/shape-private.h"

/* Larger shapes are left to the geometry engine. */
#define MOST_CORNERS 64

/* Each cut adds at most one corner. */
#define ROOM_FOR_CORNERS (2 * MOST_CORNERS + 2)

/**
 * hc_shape_is_convex: (skip)
 * @self: a shape
 *
 * Returns: whether it is one small part without dents and holes
 */
gboolean
hc_shape_is_convex (const HcShape *self)
{
  guint n = self->n_rings == 1 ? self->rings[0].n_points : 0;

  if (n == 0 || n > MOST_CORNERS)
    return FALSE;
  for (guint i = 0; i < n; i++)
    {
      HcPoint before = hc_point_subtract (self->points[i + 1], self->points[i]);
      HcPoint after = hc_point_subtract (self->points[(i + 1) % n + 1], self->points[i + 1]);

      if (hc_point_cross (before, after) < 0)
        return FALSE;
    }
  return TRUE;
}

/* Keeps the part of a ring on the inner side of the line from a to b. */
static guint
cut_along (const HcPoint *ring,
           guint n_points,
           HcPoint a,
           HcPoint b,
           HcPoint *kept)
{
  HcPoint way = hc_point_subtract (b, a);
  guint n_kept = 0;

  for (guint i = 0; i < n_points && n_kept + 2 <= ROOM_FOR_CORNERS; i++)
    {
      HcPoint here = ring[i], next = ring[(i + 1) % n_points];
      double here_side = hc_point_cross (way, hc_point_subtract (here, a));
      double next_side = hc_point_cross (way, hc_point_subtract (next, a));

      if (here_side >= 0)
        kept[n_kept++] = here;
      if ((here_side > 0 && next_side < 0) || (here_side < 0 && next_side > 0))
        kept[n_kept++] = hc_point_between (here, next, here_side / (here_side - next_side));
    }
  return n_kept;
}

/**
 * hc_convex_overlap_mm2: (skip)
 * @self: a shape without dents
 * @other: another
 *
 * Cuts the one along each edge of the other: I. E. Sutherland, G. W. Hodgman,
 * Reentrant polygon clipping, Communications of the ACM 17, 1974.
 *
 * Returns: the area both cover, in mm²
 */
double
hc_convex_overlap_mm2 (const HcShape *self,
                       const HcShape *other)
{
  HcPoint rings[2][ROOM_FOR_CORNERS];
  guint n = self->rings[0].n_points, now = 0;
  HcEdgeWalk walk = hc_edge_walk (other);
  HcPoint a, b;

  for (guint i = 0; i < n; i++)
    rings[0][i] = self->points[i];
  while (n > 0 && hc_edge_walk_next (&walk, &a, &b))
    {
      n = cut_along (rings[now], n, a, b, rings[1 - now]);
      now = 1 - now;
    }
  return MAX (hc_ring_area_mm2 (rings[now], n), 0);
}
