/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * How a shape is laid out, and how one is put together ring by ring. */
#pragma once

#include "base/shape.h"

G_BEGIN_DECLS

typedef struct
{
  guint start;
  guint n_points;
  guint part;
} HcShapeRing;

/* The points of a ring stand at points[start …start + n_points - 1], and once
 * more the first one, so that a ring can be handed on closed. */
struct _HcShape
{
  gatomicrefcount ref_count;
  HcPoint *points;
  HcShapeRing *rings;
  guint n_rings;
  guint n_parts;
  HcBox bounds;
  double area_mm2;
};

typedef enum
{
  HC_SHAPE_NEXT_IS_OUTSIDE,
  HC_SHAPE_NEXT_IS_HOLE,
  HC_SHAPE_PART_IS_DROPPED,
} HcShapeBuilderState;

typedef struct
{
  GArray *points;
  GArray *rings;
  guint n_parts;
  HcShapeBuilderState state;
} HcShapeBuilder;

void hc_shape_builder_init (HcShapeBuilder *self);
void hc_shape_builder_begin_part (HcShapeBuilder *self);
void hc_shape_builder_add_ring (HcShapeBuilder *self,
                                const HcPoint *points,
                                guint n_points);
HcShape *hc_shape_builder_end (HcShapeBuilder *self) G_GNUC_WARN_UNUSED_RESULT;

gboolean hc_shape_is_inside_rings (const HcShape *shape,
                                   HcPoint p);
gboolean hc_shape_is_on_edge (const HcShape *shape,
                              HcPoint p);

/* Walks the edges of all rings: `for (HcEdgeWalk w = …; hc_edge_walk_next (&w, &a, &b);)` */
typedef struct
{
  const HcShape *shape;
  guint ring;
  guint corner;
} HcEdgeWalk;

static inline HcEdgeWalk
hc_edge_walk (const HcShape *shape)
{
  return (HcEdgeWalk){ shape, 0, 0 };
}

static inline gboolean
hc_edge_walk_next (HcEdgeWalk *walk,
                   HcPoint *a,
                   HcPoint *b)
{
  const HcShapeRing *ring;

  if (walk->ring == walk->shape->n_rings)
    return FALSE;
  ring = &walk->shape->rings[walk->ring];
  *a = walk->shape->points[ring->start + walk->corner];
  *b = walk->shape->points[ring->start + walk->corner + 1];
  if (++walk->corner == ring->n_points)
    {
      walk->ring++;
      walk->corner = 0;
    }
  return TRUE;
}

G_END_DECLS
