/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Shapes made from shapes: joined and cut. */
#include "config.h"

#include "base/shape-ops.h"

#include "base/geos.h"

static gboolean
may_overlap (const HcShape *a,
             const HcShape *b)
{
  return !hc_shape_is_empty (a) && !hc_shape_is_empty (b)
         && hc_box_touches (hc_shape_get_bounds (a), hc_shape_get_bounds (b));
}

/**
 * hc_shape_union: (skip)
 * @shapes: (array length=n_shapes): shapes, which may lie on each other
 * @n_shapes: how many
 *
 * Returns: (transfer full): what at least one of them covers
 */
HcShape *
hc_shape_union (HcShape *const *shapes,
                guint n_shapes)
{
  g_autoptr (GEOSGeometry) parts = NULL;
  g_autoptr (GEOSGeometry) joined = NULL;

  if (n_shapes == 0)
    return hc_shape_new_empty ();
  parts = hc_geos_from_shapes (shapes, n_shapes);
  joined = hc_geos_join (parts);
  return hc_geos_to_shape (joined);
}

static HcShape *
overlay (HcOverlay kind,
         HcShape *a,
         HcShape *b)
{
  g_autoptr (GEOSGeometry) first = hc_geos_from_shape (a);
  g_autoptr (GEOSGeometry) second = hc_geos_from_shape (b);
  g_autoptr (GEOSGeometry) result = hc_geos_overlay (kind, first, second);

  return hc_geos_to_shape (result);
}

/**
 * hc_shape_difference:
 * @self: a shape
 * @taken_off: another
 *
 * Returns: (transfer full): what @self covers and @taken_off does not; @self
 *   when they are apart
 */
HcShape *
hc_shape_difference (HcShape *self,
                     HcShape *taken_off)
{
  g_return_val_if_fail (self != NULL && taken_off != NULL, NULL);

  if (!may_overlap (self, taken_off))
    return hc_shape_ref (self);
  return overlay (HC_OVERLAY_DIFFERENCE, self, taken_off);
}

/**
 * hc_shape_intersection:
 * @self: a shape
 * @other: another
 *
 * Returns: (transfer full): what both cover
 */
HcShape *
hc_shape_intersection (HcShape *self,
                       HcShape *other)
{
  g_return_val_if_fail (self != NULL && other != NULL, NULL);

  if (!may_overlap (self, other))
    return hc_shape_new_empty ();
  return overlay (HC_OVERLAY_INTERSECTION, self, other);
}

/**
 * hc_shape_stand_off: (skip)
 * @self: a shape
 * @radius_mm: half the width of somebody round who stands in it, in mm
 *
 * Returns: (transfer full): where the middle of them can be
 */
HcShape *
hc_shape_stand_off (HcShape *self,
                    double radius_mm)
{
  g_autoptr (GEOSGeometry) before = NULL;
  g_autoptr (GEOSGeometry) after = NULL;

  g_return_val_if_fail (self != NULL && radius_mm > 0, NULL);

  if (hc_shape_is_empty (self))
    return hc_shape_ref (self);
  before = hc_geos_from_shape (self);
  after = hc_geos_stand_off (before, radius_mm);
  return hc_geos_to_shape (after);
}
