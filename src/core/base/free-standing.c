/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Things that stand so free that the floor around them is wide enough.
 *
 * Moving edges in and out again leaves such a footprint as it was, so it is cut
 * out at the end, at no cost: in a roomy pen that is most of them. */
#include "config.h"

#include "base/free-standing.h"

#include "base/convex.h"
#include "base/nearby.h"
#include "base/ring.h"
#include "base/shape-private.h"
#include "base/shape-relate.h"

/* The cosine of the sharpest turn at a corner: a little more than a square one. */
#define SHARPEST_TURN -0.1

static gboolean
has_blunt_corners (const HcShape *footprint)
{
  guint n;
  const HcPoint *ring = hc_shape_get_ring (footprint, 0, 0, &n);

  for (guint i = 0; i < n; i++)
    {
      HcPoint in = hc_point_unit (hc_point_subtract (ring[(i + 1) % n], ring[i]));
      HcPoint out = hc_point_unit (hc_point_subtract (ring[(i + 2) % n], ring[(i + 1) % n]));

      if (hc_point_dot (in, out) < SHARPEST_TURN)
        return FALSE;
    }
  return TRUE;
}

static gboolean
stands_off_walls (HcShape *outline,
                  HcBox around)
{
  g_autoptr (HcShape) shape = hc_shape_new_box (around);

  return hc_shape_contains (outline, shape);
}

static HcNearby *
lay_out (HcShape *const *footprints,
         guint n_footprints)
{
  g_autofree HcBox *boxes = g_new (HcBox, n_footprints + 1);

  for (guint i = 0; i < n_footprints; i++)
    boxes[i] = hc_shape_get_bounds (footprints[i]);
  return hc_nearby_new (boxes, n_footprints);
}

/**
 * hc_free_standing_sort: (skip)
 * @outline: the floor of a pen
 * @footprints: (array length=n_footprints): what stands on it
 * @n_footprints: how many
 * @reach_mm: how far an edge or corner moves when the floor is made narrower
 * @free_standing: (element-type HcShape): receives those whose reach meets no
 *   other's and no wall's
 * @others: (element-type HcShape): receives all others
 */
void
hc_free_standing_sort (HcShape *outline,
                       HcShape *const *footprints,
                       guint n_footprints,
                       double reach_mm,
                       GPtrArray *free_standing,
                       GPtrArray *others)
{
  g_autoptr (HcNearby) nearby = lay_out (footprints, n_footprints);

  for (guint i = 0; i < n_footprints; i++)
    {
      HcBox around = hc_box_grow (hc_shape_get_bounds (footprints[i]), 2 * reach_mm);
      g_autoptr (GArray) near = hc_nearby_find (nearby, around);

      if (near->len == 1 && hc_shape_is_convex (footprints[i])
          && has_blunt_corners (footprints[i]) && stands_off_walls (outline, around))
        g_ptr_array_add (free_standing, footprints[i]);
      else
        g_ptr_array_add (others, footprints[i]);
    }
}

/* The part @p lies in: within its outside and in none of its holes. */
static guint
find_part (const HcShape *floor,
           HcPoint p)
{
  guint part = floor->n_parts;

  for (guint i = 0; i < floor->n_rings; i++)
    {
      const HcShapeRing *ring = &floor->rings[i];
      gboolean is_outside = i == 0 || floor->rings[i - 1].part != ring->part;

      if ((is_outside || part == ring->part)
          && hc_ring_contains_point (floor->points + ring->start, ring->n_points, p))
        part = is_outside ? ring->part : floor->n_parts;
    }
  return part;
}

static void
add_things (HcShapeBuilder *builder,
            guint part,
            GPtrArray *free_standing,
            const guint *parts)
{
  for (guint i = 0; i < free_standing->len; i++)
    if (parts[i] == part)
      {
        guint n;
        const HcPoint *corners = hc_shape_get_ring (free_standing->pdata[i], 0, 0, &n);

        hc_shape_builder_add_ring (builder, corners, n);
      }
}

static HcShape *
add_holes (const HcShape *floor,
           GPtrArray *free_standing,
           const guint *parts)
{
  HcShapeBuilder builder;

  hc_shape_builder_init (&builder);
  for (guint i = 0; i < floor->n_rings; i++)
    {
      const HcShapeRing *ring = &floor->rings[i];

      if (i == 0 || floor->rings[i - 1].part != ring->part)
        hc_shape_builder_begin_part (&builder);
      hc_shape_builder_add_ring (&builder, floor->points + ring->start, ring->n_points);
      if (i + 1 == floor->n_rings || floor->rings[i + 1].part != ring->part)
        add_things (&builder, ring->part, free_standing, parts);
    }
  return hc_shape_builder_end (&builder);
}

/**
 * hc_free_standing_cut_out: (skip)
 * @floor: the floor without the others
 * @free_standing: (element-type HcShape): things that stand free on it
 *
 * Returns: (transfer full): @floor with a hole for each of them
 */
HcShape *
hc_free_standing_cut_out (HcShape *floor,
                          GPtrArray *free_standing)
{
  g_autofree guint *parts = g_new0 (guint, free_standing->len + 1);

  if (free_standing->len == 0)
    return hc_shape_ref (floor);
  for (guint i = 0; i < free_standing->len && floor->n_parts > 1; i++)
    {
      guint n;

      parts[i] = find_part (floor, *hc_shape_get_ring (free_standing->pdata[i], 0, 0, &n));
    }
  return add_holes (floor, free_standing, parts);
}
