/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The one door to the geometry engine: conversion and overlay.
 *
 * No function here returns NULL: what the engine cannot do becomes an empty
 * geometry. */
#include "config.h"

#include "base/geos.h"

#include "base/shape-ops.h"
#include "base/shape-private.h"

/* Overlays in full precision are several times faster; what they refuse or get
 * wrong is done again on the grid that the corners of shapes lie on. */
#define FULL_PRECISION 0.0
#define GRID_MM 0.001
#define ROUNDING_MM2 1.0

/* Enough for a round corner to be within half a per cent of round. */
#define ROUND_SEGMENTS 8

static guint64 n_calls;

static void
finish_context (gpointer context)
{
  GEOS_finish_r (context);
}

static GPrivate context_of_thread = G_PRIVATE_INIT (finish_context);

static GEOSContextHandle_t
get_context (void)
{
  GEOSContextHandle_t context = g_private_get (&context_of_thread);

  if (context == NULL)
    {
      context = GEOS_init_r ();
      g_private_set (&context_of_thread, context);
    }
  return context;
}

void
hc_count_geometry_call (void)
{
  __atomic_fetch_add (&n_calls, 1, __ATOMIC_RELAXED);
}

/**
 * hc_geometry_calls: (skip)
 *
 * Counts the overlays this process has made, by the geometry engine or without
 * it, in all threads: what is left alone must not raise it.
 *
 * Returns: how many
 */
guint64
hc_geometry_calls (void)
{
  return __atomic_load_n (&n_calls, __ATOMIC_RELAXED);
}

void
hc_geos_free (GEOSGeometry *geometry)
{
  if (geometry != NULL)
    GEOSGeom_destroy_r (get_context (), geometry);
}

static GEOSGeometry *
or_empty (GEOSGeometry *geometry)
{
  return geometry != NULL ? geometry : GEOSGeom_createEmptyPolygon_r (get_context ());
}

static GEOSGeometry *
ring_to_geos (const HcShape *shape,
              guint ring)
{
  const HcPoint *points = shape->points + shape->rings[ring].start;
  GEOSCoordSequence *corners = GEOSCoordSeq_copyFromBuffer_r (
      get_context (), &points->x_mm, shape->rings[ring].n_points + 1, FALSE, FALSE);

  return GEOSGeom_createLinearRing_r (get_context (), corners);
}

/* Makes the polygon of the part that starts at *ring and moves on past it. */
static GEOSGeometry *
part_to_geos (const HcShape *shape,
              guint *ring)
{
  guint part = shape->rings[*ring].part;
  GEOSGeometry *outside = ring_to_geos (shape, (*ring)++);
  g_autoptr (GPtrArray) holes = g_ptr_array_new ();

  for (; *ring < shape->n_rings && shape->rings[*ring].part == part; (*ring)++)
    g_ptr_array_add (holes, ring_to_geos (shape, *ring));
  return GEOSGeom_createPolygon_r (get_context (), outside, (GEOSGeometry **) holes->pdata,
                                   holes->len);
}

/* Puts the parts of all shapes side by side; they may lie on each other. */
GEOSGeometry *
hc_geos_from_shapes (HcShape *const *shapes,
                     guint n_shapes)
{
  g_autoptr (GPtrArray) parts = g_ptr_array_new ();

  for (guint i = 0; i < n_shapes; i++)
    for (guint ring = 0; ring < shapes[i]->n_rings;)
      g_ptr_array_add (parts, part_to_geos (shapes[i], &ring));
  return or_empty (GEOSGeom_createCollection_r (get_context (), GEOS_MULTIPOLYGON,
                                                (GEOSGeometry **) parts->pdata, parts->len));
}

GEOSGeometry *
hc_geos_from_shape (const HcShape *shape)
{
  HcShape *const one = (HcShape *) shape;

  return hc_geos_from_shapes (&one, 1);
}

static void
add_ring_from_geos (HcShapeBuilder *builder,
                    const GEOSGeometry *ring)
{
  GEOSContextHandle_t context = get_context ();
  const GEOSCoordSequence *corners = GEOSGeom_getCoordSeq_r (context, ring);
  g_autofree HcPoint *points = NULL;
  guint n_points = 0;

  if (corners == NULL || !GEOSCoordSeq_getSize_r (context, corners, &n_points) || n_points < 4)
    return;
  points = g_new (HcPoint, n_points);
  if (GEOSCoordSeq_copyToBuffer_r (context, corners, &points->x_mm, FALSE, FALSE))
    hc_shape_builder_add_ring (builder, points, n_points - 1);
}

static void
add_part_from_geos (HcShapeBuilder *builder,
                    const GEOSGeometry *polygon)
{
  GEOSContextHandle_t context = get_context ();
  int n_holes = GEOSGetNumInteriorRings_r (context, polygon);

  hc_shape_builder_begin_part (builder);
  add_ring_from_geos (builder, GEOSGetExteriorRing_r (context, polygon));
  for (int i = 0; i < n_holes; i++)
    add_ring_from_geos (builder, GEOSGetInteriorRingN_r (context, polygon, i));
}

HcShape *
hc_geos_to_shape (const GEOSGeometry *geometry)
{
  GEOSContextHandle_t context = get_context ();
  int n_parts = GEOSGetNumGeometries_r (context, geometry);
  HcShapeBuilder builder;

  hc_shape_builder_init (&builder);
  for (int i = 0; i < n_parts; i++)
    {
      const GEOSGeometry *part = GEOSGetGeometryN_r (context, geometry, i);

      if (GEOSGeomTypeId_r (context, part) == GEOS_POLYGON && !GEOSisEmpty_r (context, part))
        add_part_from_geos (&builder, part);
    }
  return hc_shape_builder_end (&builder);
}

static GEOSGeometry *
try_overlay (HcOverlay overlay,
             const GEOSGeometry *a,
             const GEOSGeometry *b,
             double grid_mm)
{
  GEOSContextHandle_t context = get_context ();

  hc_count_geometry_call ();
  switch (overlay)
    {
    case HC_OVERLAY_DIFFERENCE:
      return GEOSDifferencePrec_r (context, a, b, grid_mm);
    case HC_OVERLAY_INTERSECTION:
      return GEOSIntersectionPrec_r (context, a, b, grid_mm);
    default:
      g_return_val_if_reached (NULL);
    }
}

static double
measure_mm2 (const GEOSGeometry *geometry)
{
  double area_mm2 = 0;

  GEOSArea_r (get_context (), geometry, &area_mm2);
  return area_mm2;
}

/* Where edges all but coincide, full precision may mix up inside and outside. A
 * wrong difference shows in its area; a wrong intersection need not, so those are
 * always made on the grid. */
static gboolean
is_sound_difference (const GEOSGeometry *a,
                     const GEOSGeometry *b,
                     const GEOSGeometry *result)
{
  double before_mm2, after_mm2;

  if (result == NULL)
    return FALSE;
  before_mm2 = measure_mm2 (a);
  after_mm2 = measure_mm2 (result);
  return after_mm2 <= before_mm2 + ROUNDING_MM2
         && after_mm2 >= before_mm2 - measure_mm2 (b) - ROUNDING_MM2;
}

/* Corners moved to the grid may have made edges cross that only touched. */
static GEOSGeometry *
mend (const GEOSGeometry *geometry)
{
  return or_empty (GEOSisValid_r (get_context (), geometry) == 1
                       ? GEOSGeom_clone_r (get_context (), geometry)
                       : GEOSMakeValid_r (get_context (), geometry));
}

static GEOSGeometry *
overlay_on_grid (HcOverlay overlay,
                 const GEOSGeometry *a,
                 const GEOSGeometry *b)
{
  g_autoptr (GEOSGeometry) mended_a = mend (a);
  g_autoptr (GEOSGeometry) mended_b = mend (b);

  return or_empty (try_overlay (overlay, mended_a, mended_b, GRID_MM));
}

GEOSGeometry *
hc_geos_overlay (HcOverlay overlay,
                 const GEOSGeometry *a,
                 const GEOSGeometry *b)
{
  g_autoptr (GEOSGeometry) result = NULL;

  if (overlay != HC_OVERLAY_DIFFERENCE)
    return overlay_on_grid (overlay, a, b);
  result = try_overlay (overlay, a, b, FULL_PRECISION);
  if (is_sound_difference (a, b, result))
    return g_steal_pointer (&result);
  return overlay_on_grid (overlay, a, b);
}

static GEOSGeometry *
try_join (const GEOSGeometry *parts,
          double grid_mm)
{
  hc_count_geometry_call ();
  return GEOSUnaryUnionPrec_r (get_context (), parts, grid_mm);
}

/* Unites parts that may lie on each other. */
GEOSGeometry *
hc_geos_join (const GEOSGeometry *parts)
{
  GEOSGeometry *result = try_join (parts, FULL_PRECISION);
  g_autoptr (GEOSGeometry) mended = NULL;

  if (result != NULL)
    return result;
  mended = or_empty (GEOSMakeValid_r (get_context (), parts));
  return or_empty (try_join (mended, GRID_MM));
}

/* Moves the edges in by @radius_mm, round about corners that stick in. */
GEOSGeometry *
hc_geos_stand_off (const GEOSGeometry *geometry,
                   double radius_mm)
{
  hc_count_geometry_call ();
  return or_empty (GEOSBuffer_r (get_context (), geometry, -radius_mm, ROUND_SEGMENTS));
}
