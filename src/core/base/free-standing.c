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

/* No reach of another thing meets its own, and none of a wall. */
static gboolean
stands_free (HcShape *outline,
             HcShape *const *footprints,
             guint n_footprints,
             guint footprint,
             double reach_mm)
{
  HcBox around
      = hc_box_grow (hc_shape_get_bounds (footprints[footprint]), 2 * reach_mm);

  for (guint i = 0; i < n_footprints; i++)
    if (i != footprint && hc_box_touches (around, hc_shape_get_bounds (footprints[i])))
      return FALSE;
  return hc_shape_is_convex (footprints[footprint])
         && has_blunt_corners (footprints[footprint]) && stands_off_walls (outline, around);
}

/**
 * hc_free_standing_sort: (skip)
 * @outline: the floor of a pen
 * @footprints: (array length=n_footprints): what stands on it
 * @n_footprints: how many
 * @reach_mm: how far an edge or corner moves when the floor is made narrower
 * @free_standing: (element-type HcShape): receives those that stand free
 * @others: (element-type HcShape): receives the others
 */
void
hc_free_standing_sort (HcShape *outline,
                       HcShape *const *footprints,
                       guint n_footprints,
                       double reach_mm,
                       GPtrArray *free_standing,
                       GPtrArray *others)
{
  for (guint i = 0; i < n_footprints; i++)
    g_ptr_array_add (stands_free (outline, footprints, n_footprints, i, reach_mm)
                         ? free_standing
                         : others,
                     footprints[i]);
}

static gboolean
is_in_part (const HcShape *floor,
            guint part,
            HcPoint p)
{
  for (guint ring = 0; ring < hc_shape_get_n_rings (floor, part); ring++)
    {
      guint n;
      const HcPoint *points = hc_shape_get_ring (floor, part, ring, &n);

      if (hc_ring_contains_point (points, n, p) != (ring == 0))
        return FALSE;
    }
  return TRUE;
}

static void
add_ring (HcShapeBuilder *builder,
          const HcShape *shape,
          guint part,
          guint ring)
{
  guint n;
  const HcPoint *points = hc_shape_get_ring (shape, part, ring, &n);

  hc_shape_builder_add_ring (builder, points, n);
}

static void
add_part (HcShapeBuilder *builder,
          const HcShape *floor,
          guint part,
          GPtrArray *free_standing)
{
  hc_shape_builder_begin_part (builder);
  for (guint ring = 0; ring < hc_shape_get_n_rings (floor, part); ring++)
    add_ring (builder, floor, part, ring);
  for (guint i = 0; i < free_standing->len; i++)
    {
      guint n;
      const HcPoint *corners = hc_shape_get_ring (free_standing->pdata[i], 0, 0, &n);

      if (is_in_part (floor, part, corners[0]))
        add_ring (builder, free_standing->pdata[i], 0, 0);
    }
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
  HcShapeBuilder builder;

  if (free_standing->len == 0)
    return hc_shape_ref (floor);
  hc_shape_builder_init (&builder);
  for (guint part = 0; part < hc_shape_get_n_parts (floor); part++)
    add_part (&builder, floor, part, free_standing);
  return hc_shape_builder_end (&builder);
}
