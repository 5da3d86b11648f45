/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Closed lines round an area, which may still lie across each other. */
#include "config.h"

#include "base/loops.h"

#include "base/ring.h"
#include "base/shape-private.h"

HcLoops *
hc_loops_new (void)
{
  HcLoops *self = g_new (HcLoops, 1);

  self->edges = g_array_new (FALSE, FALSE, sizeof (HcLoopEdge));
  self->ends = g_array_new (FALSE, FALSE, sizeof (guint));
  return self;
}

void
hc_loops_free (HcLoops *self)
{
  g_array_unref (self->edges);
  g_array_unref (self->ends);
  g_free (self);
}

void
hc_loops_add_edge (HcLoops *self,
                   HcPoint corner,
                   HcPoint way)
{
  HcLoopEdge edge = { corner, way };

  g_array_append_val (self->edges, edge);
}

void
hc_loops_end_loop (HcLoops *self)
{
  g_array_append_val (self->ends, self->edges->len);
}

const HcLoopEdge *
hc_loops_get (const HcLoops *self,
              guint loop,
              guint *n_edges)
{
  guint start = loop == 0 ? 0 : g_array_index (self->ends, guint, loop - 1);

  *n_edges = g_array_index (self->ends, guint, loop) - start;
  return &g_array_index (self->edges, HcLoopEdge, start);
}

/* Adds the rings of a shape; inside out, what it covers is what they leave out. */
void
hc_loops_add_shape (HcLoops *self,
                    const HcShape *shape,
                    gboolean inside_out)
{
  for (guint i = 0; i < shape->n_rings; i++)
    {
      const HcPoint *points = shape->points + shape->rings[i].start;
      guint n = shape->rings[i].n_points;

      for (guint j = 0; j < n; j++)
        {
          HcPoint from = points[inside_out ? n - j : j];
          HcPoint to = points[inside_out ? n - j - 1 : j + 1];

          hc_loops_add_edge (self, from, hc_point_unit (hc_point_subtract (to, from)));
        }
      hc_loops_end_loop (self);
    }
}

static HcPoint *
copy_corners (const HcLoops *loops,
              guint loop,
              guint *n_corners)
{
  const HcLoopEdge *edges = hc_loops_get (loops, loop, n_corners);
  HcPoint *corners = g_new (HcPoint, *n_corners);

  for (guint i = 0; i < *n_corners; i++)
    corners[i] = edges[i].corner;
  return corners;
}

/* A hole may touch its outside in a corner, but not along an edge. */
static gboolean
is_hole_in (const HcLoops *loops,
            guint hole,
            const HcPoint *outside,
            guint n_corners)
{
  guint n;
  const HcLoopEdge *edges = hc_loops_get (loops, hole, &n);
  HcPoint middle = hc_point_between (edges[0].corner, edges[1].corner, 0.5);

  return hc_ring_contains_point (outside, n_corners, middle);
}

/* Takes the holes out of @holes that lie in this outside. */
static void
add_part (HcShapeBuilder *builder,
          const HcLoops *loops,
          guint outside,
          GArray *holes)
{
  guint n;
  g_autofree HcPoint *corners = copy_corners (loops, outside, &n);

  hc_shape_builder_begin_part (builder);
  hc_shape_builder_add_ring (builder, corners, n);
  for (guint i = holes->len; i-- > 0;)
    if (is_hole_in (loops, g_array_index (holes, guint, i), corners, n))
      {
        guint n_in_hole;
        g_autofree HcPoint *hole
            = copy_corners (loops, g_array_index (holes, guint, i), &n_in_hole);

        hc_shape_builder_add_ring (builder, hole, n_in_hole);
        g_array_remove_index (holes, i);
      }
}

typedef struct
{
  double area_mm2;
  guint loop;
} Outside;

static int
compare_areas (gconstpointer a,
               gconstpointer b)
{
  const Outside *one = a, *other = b;

  if (one->area_mm2 != other->area_mm2)
    return one->area_mm2 < other->area_mm2 ? -1 : 1;
  return one->loop < other->loop ? -1 : one->loop > other->loop;
}

static void
sort_loops (const HcLoops *loops,
            GArray *outsides,
            GArray *holes)
{
  for (guint i = 0; i < loops->ends->len; i++)
    {
      guint n;
      g_autofree HcPoint *corners = copy_corners (loops, i, &n);
      Outside outside = { hc_ring_area_mm2 (corners, n), i };

      if (outside.area_mm2 > 0)
        g_array_append_val (outsides, outside);
      else
        g_array_append_val (holes, i);
    }
  g_array_sort (outsides, compare_areas);
}

/* Makes a shape of loops that do not cross. A hole is taken off the smallest
 * outside that it lies in. */
HcShape *
hc_loops_to_shape (const HcLoops *self)
{
  g_autoptr (GArray) outsides = g_array_new (FALSE, FALSE, sizeof (Outside));
  g_autoptr (GArray) holes = g_array_new (FALSE, FALSE, sizeof (guint));
  HcShapeBuilder builder;

  hc_shape_builder_init (&builder);
  sort_loops (self, outsides, holes);
  for (guint i = 0; i < outsides->len; i++)
    add_part (&builder, self, g_array_index (outsides, Outside, i).loop, holes);
  return hc_shape_builder_end (&builder);
}
