/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * An area of floor: a value that can be shared between threads. */
#include "config.h"

#include "base/shape.h"

#include "base/shape-private.h"

#include <math.h>

/* Enough for a feeder's edge to be within half a millimetre of round. */
#define CIRCLE_CORNERS 32

G_DEFINE_BOXED_TYPE (HcShape, hc_shape, hc_shape_ref, hc_shape_unref)

/**
 * hc_shape_new_empty:
 *
 * Returns: (transfer full): the shape that covers nothing
 */
HcShape *
hc_shape_new_empty (void)
{
  return hc_shape_new_polygon (NULL, 0);
}

/**
 * hc_shape_new_polygon:
 * @points: (array length=n_points): its corners in order, either way round,
 *   the first not repeated
 * @n_points: how many
 *
 * Makes a shape of one part. Repeated corners are left out; a ring without
 * area makes an empty shape. A ring that crosses itself has no clear inside:
 * ask [func@ring_find_fault] first.
 *
 * Returns: (transfer full): the shape
 */
HcShape *
hc_shape_new_polygon (const HcPoint *points,
                      guint n_points)
{
  HcShapeBuilder builder;

  g_return_val_if_fail (points != NULL || n_points == 0, NULL);

  hc_shape_builder_init (&builder);
  hc_shape_builder_begin_part (&builder);
  hc_shape_builder_add_ring (&builder, points, n_points);
  return hc_shape_builder_end (&builder);
}

/**
 * hc_shape_new_rectangle:
 * @centre: its middle
 * @width_mm: its size along x before turning
 * @depth_mm: its size along y before turning
 * @turn_deg: how far it is turned, from x towards y, in degrees
 *
 * Returns: (transfer full): the rectangle; empty when a side is not positive
 */
HcShape *
hc_shape_new_rectangle (HcPoint centre,
                        double width_mm,
                        double depth_mm,
                        double turn_deg)
{
  double x = width_mm / 2, y = depth_mm / 2;
  HcPoint corners[] = { { -x, -y }, { x, -y }, { x, y }, { -x, y } };

  if (!(width_mm > 0) || !(depth_mm > 0))
    return hc_shape_new_empty ();
  for (guint i = 0; i < G_N_ELEMENTS (corners); i++)
    corners[i] = hc_point_add (centre, hc_point_turn (corners[i], turn_deg));
  return hc_shape_new_polygon (corners, G_N_ELEMENTS (corners));
}

/**
 * hc_shape_new_circle:
 * @centre: its middle
 * @diameter_mm: its diameter
 *
 * Makes a polygon of 32 corners with the area of the true circle (its corners
 * lie a third of a hundredth of the radius outside).
 *
 * Returns: (transfer full): the circle; empty when the diameter is not positive
 */
HcShape *
hc_shape_new_circle (HcPoint centre,
                     double diameter_mm)
{
  double step = 2 * G_PI / CIRCLE_CORNERS;
  double radius_mm = diameter_mm / 2 * sqrt (step / sin (step));
  HcPoint corners[CIRCLE_CORNERS];

  if (!(diameter_mm > 0))
    return hc_shape_new_empty ();
  for (guint i = 0; i < CIRCLE_CORNERS; i++)
    corners[i] = hc_point (centre.x_mm + radius_mm * cos (i * step),
                           centre.y_mm + radius_mm * sin (i * step));
  return hc_shape_new_polygon (corners, CIRCLE_CORNERS);
}

/**
 * hc_shape_new_box:
 * @box: a box
 *
 * Returns: (transfer full): the shape that fills it
 */
HcShape *
hc_shape_new_box (HcBox box)
{
  return hc_shape_new_rectangle (hc_box_centre (box), box.width_mm, box.depth_mm, 0);
}

/**
 * hc_shape_ref:
 * @self: a shape
 *
 * Takes a reference. Safe from any thread.
 *
 * Returns: (transfer full): @self
 */
HcShape *
hc_shape_ref (HcShape *self)
{
  g_return_val_if_fail (self != NULL, NULL);

  g_atomic_ref_count_inc (&self->ref_count);
  return self;
}

/**
 * hc_shape_unref:
 * @self: (transfer full): a shape
 *
 * Gives a reference back; the last one frees the shape.
 */
void
hc_shape_unref (HcShape *self)
{
  g_return_if_fail (self != NULL);

  if (!g_atomic_ref_count_dec (&self->ref_count))
    return;
  g_free (self->points);
  g_free (self->rings);
  g_free (self);
}

/**
 * hc_shape_is_empty:
 * @self: a shape
 *
 * Returns: whether it covers nothing
 */
gboolean
hc_shape_is_empty (const HcShape *self)
{
  g_return_val_if_fail (self != NULL, TRUE);
  return self->n_parts == 0;
}

static gboolean
rings_equal (const HcShape *self,
             const HcShape *other,
             guint ring)
{
  const HcShapeRing *a = &self->rings[ring];
  const HcShapeRing *b = &other->rings[ring];

  if (a->n_points != b->n_points || a->part != b->part)
    return FALSE;
  for (guint i = 0; i < a->n_points; i++)
    if (!hc_point_equal (self->points[a->start + i], other->points[b->start + i]))
      return FALSE;
  return TRUE;
}

/**
 * hc_shape_equal:
 * @self: a shape
 * @other: another
 *
 * Tells whether both are written the same: the same rings with the same corners
 * in the same order. Two shapes that cover the same floor may still differ.
 *
 * Returns: whether they are
 */
gboolean
hc_shape_equal (const HcShape *self,
                const HcShape *other)
{
  g_return_val_if_fail (self != NULL && other != NULL, FALSE);

  if (self == other)
    return TRUE;
  if (self->n_rings != other->n_rings || self->n_parts != other->n_parts)
    return FALSE;
  for (guint i = 0; i < self->n_rings; i++)
    if (!rings_equal (self, other, i))
      return FALSE;
  return TRUE;
}

/**
 * hc_shape_get_area_mm2:
 * @self: a shape
 *
 * Returns: what it covers, holes taken off, in mm²
 */
double
hc_shape_get_area_mm2 (const HcShape *self)
{
  g_return_val_if_fail (self != NULL, 0);
  return self->area_mm2;
}

/**
 * hc_shape_get_perimeter_mm:
 * @self: a shape
 *
 * Returns: the length of all its edges, those of holes included, in mm
 */
double
hc_shape_get_perimeter_mm (const HcShape *self)
{
  HcEdgeWalk walk;
  HcPoint a, b;
  double length_mm = 0;

  g_return_val_if_fail (self != NULL, 0);

  walk = hc_edge_walk (self);
  while (hc_edge_walk_next (&walk, &a, &b))
    length_mm += hc_point_distance (a, b);
  return length_mm;
}

/**
 * hc_shape_get_bounds: (skip)
 * @self: a shape
 *
 * Returns: the smallest box around it
 */
HcBox
hc_shape_get_bounds (const HcShape *self)
{
  g_return_val_if_fail (self != NULL, hc_box_empty ());
  return self->bounds;
}

/**
 * hc_shape_get_n_parts:
 * @self: a shape
 *
 * Returns: how many separate parts it has
 */
guint
hc_shape_get_n_parts (const HcShape *self)
{
  g_return_val_if_fail (self != NULL, 0);
  return self->n_parts;
}

static guint
first_ring_of_part (const HcShape *self,
                    guint part)
{
  guint ring = 0;

  while (ring < self->n_rings && self->rings[ring].part < part)
    ring++;
  return ring;
}

/**
 * hc_shape_get_n_rings:
 * @self: a shape
 * @part: which part
 *
 * Returns: how many rings the part has: its outside and its holes
 */
guint
hc_shape_get_n_rings (const HcShape *self,
                      guint part)
{
  g_return_val_if_fail (self != NULL && part < self->n_parts, 0);
  return first_ring_of_part (self, part + 1) - first_ring_of_part (self, part);
}

/**
 * hc_shape_get_ring:
 * @self: a shape
 * @part: which part
 * @ring: 0 for the outside, 1 and up for the holes
 * @n_points: (out): how many corners
 *
 * Returns: (array length=n_points) (transfer none): the corners in order, the
 *   first not repeated
 */
const HcPoint *
hc_shape_get_ring (const HcShape *self,
                   guint part,
                   guint ring,
                   guint *n_points)
{
  const HcShapeRing *found;

  g_return_val_if_fail (self != NULL && n_points != NULL, NULL);
  g_return_val_if_fail (ring < hc_shape_get_n_rings (self, part), NULL);

  found = &self->rings[first_ring_of_part (self, part) + ring];
  *n_points = found->n_points;
  return self->points + found->start;
}

/**
 * hc_shape_turn_and_move:
 * @self: a shape
 * @turn_deg: how far to turn it about the origin, in degrees
 * @move: where the origin goes
 *
 * Returns: (transfer full): the shape, turned and then moved
 */
HcShape *
hc_shape_turn_and_move (const HcShape *self,
                        double turn_deg,
                        HcPoint move)
{
  HcShapeBuilder builder;
  guint part = G_MAXUINT;

  g_return_val_if_fail (self != NULL, NULL);

  hc_shape_builder_init (&builder);
  for (guint i = 0; i < self->n_rings; i++)
    {
      const HcShapeRing *ring = &self->rings[i];
      g_autofree HcPoint *placed = g_new (HcPoint, ring->n_points);

      for (guint j = 0; j < ring->n_points; j++)
        placed[j] = hc_point_add (hc_point_turn (self->points[ring->start + j], turn_deg), move);
      if (ring->part != part)
        hc_shape_builder_begin_part (&builder);
      part = ring->part;
      hc_shape_builder_add_ring (&builder, placed, ring->n_points);
    }
  return hc_shape_builder_end (&builder);
}
