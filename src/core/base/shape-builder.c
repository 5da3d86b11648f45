/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Puts a shape together ring by ring, keeping the promises every shape makes. */
#include "config.h"

#include "base/shape-private.h"

#include "base/ring.h"

void
hc_shape_builder_init (HcShapeBuilder *self)
{
  self->points = g_array_new (FALSE, FALSE, sizeof (HcPoint));
  self->rings = g_array_new (FALSE, FALSE, sizeof (HcShapeRing));
  self->n_parts = 0;
  self->state = HC_SHAPE_NEXT_IS_OUTSIDE;
}

/* The next ring is the outside of a part; those after it are its holes. */
void
hc_shape_builder_begin_part (HcShapeBuilder *self)
{
  self->state = HC_SHAPE_NEXT_IS_OUTSIDE;
}

static void
append_rounded (GArray *points,
                guint start,
                HcPoint p)
{
  HcPoint rounded = hc_point_rounded (p);

  if (points->len > start
      && hc_point_equal (g_array_index (points, HcPoint, points->len - 1), rounded))
    return;
  g_array_append_val (points, rounded);
}

static void
close_ring (HcShapeBuilder *self,
            guint start,
            guint n_points,
            gboolean is_outside)
{
  HcPoint *points = &g_array_index (self->points, HcPoint, start);
  HcPoint first;
  HcShapeRing ring = { start, n_points, self->n_parts - 1 };

  if ((hc_ring_area_mm2 (points, n_points) > 0) != is_outside)
    hc_ring_reverse (points, n_points);
  first = points[0];
  g_array_append_val (self->points, first);
  g_array_append_val (self->rings, ring);
}

/* Appends the corners without repeats and tells how many were kept. */
static guint
append_corners (HcShapeBuilder *self,
                const HcPoint *points,
                guint n_points)
{
  guint start = self->points->len;
  guint kept;

  for (guint i = 0; i < n_points; i++)
    append_rounded (self->points, start, points[i]);
  kept = self->points->len - start;
  while (kept > 1
         && hc_point_equal (g_array_index (self->points, HcPoint, start),
                            g_array_index (self->points, HcPoint, start + kept - 1)))
    kept--;
  g_array_set_size (self->points, start + kept);
  return kept;
}

/* Drops a ring without area; a part whose outside was dropped loses its holes. */
void
hc_shape_builder_add_ring (HcShapeBuilder *self,
                           const HcPoint *points,
                           guint n_points)
{
  guint start = self->points->len;
  gboolean is_outside = self->state == HC_SHAPE_NEXT_IS_OUTSIDE;
  guint kept;

  if (self->state == HC_SHAPE_PART_IS_DROPPED)
    return;
  kept = append_corners (self, points, n_points);
  if (kept < 3 || hc_ring_area_mm2 (&g_array_index (self->points, HcPoint, start), kept) == 0)
    {
      g_array_set_size (self->points, start);
      if (is_outside)
        self->state = HC_SHAPE_PART_IS_DROPPED;
      return;
    }
  if (is_outside)
    self->n_parts++;
  self->state = HC_SHAPE_NEXT_IS_HOLE;
  close_ring (self, start, kept, is_outside);
}

static void
measure (HcShape *shape)
{
  shape->bounds = hc_box_empty ();
  for (guint i = 0; i < shape->n_rings; i++)
    {
      const HcPoint *points = shape->points + shape->rings[i].start;
      guint n_points = shape->rings[i].n_points;

      shape->area_mm2 += hc_ring_area_mm2 (points, n_points);
      shape->bounds = hc_box_join (shape->bounds, hc_box_around (points, n_points));
    }
}

HcShape *
hc_shape_builder_end (HcShapeBuilder *self)
{
  HcShape *shape = g_new0 (HcShape, 1);

  g_atomic_ref_count_init (&shape->ref_count);
  shape->n_rings = self->rings->len;
  shape->n_parts = self->n_parts;
  shape->points = (HcPoint *) (void *) g_array_free (self->points, FALSE);
  shape->rings = (HcShapeRing *) (void *) g_array_free (self->rings, FALSE);
  measure (shape);
  return shape;
}
