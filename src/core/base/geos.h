/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The one door to the geometry engine: conversion and overlay. */
#pragma once

#include "base/shape.h"

#include <geos_c.h>

G_BEGIN_DECLS

typedef enum
{
  HC_OVERLAY_DIFFERENCE,
  HC_OVERLAY_INTERSECTION,
} HcOverlay;

GEOSGeometry *hc_geos_from_shapes (HcShape *const *shapes,
                                   guint n_shapes) G_GNUC_WARN_UNUSED_RESULT;
GEOSGeometry *hc_geos_from_shape (const HcShape *shape) G_GNUC_WARN_UNUSED_RESULT;
HcShape *hc_geos_to_shape (const GEOSGeometry *geometry) G_GNUC_WARN_UNUSED_RESULT;
void hc_geos_free (GEOSGeometry *geometry);

GEOSGeometry *hc_geos_overlay (HcOverlay overlay,
                               const GEOSGeometry *a,
                               const GEOSGeometry *b) G_GNUC_WARN_UNUSED_RESULT;
GEOSGeometry *hc_geos_join (const GEOSGeometry *parts) G_GNUC_WARN_UNUSED_RESULT;
GEOSGeometry *hc_geos_stand_off (const GEOSGeometry *geometry,
                                 double radius_mm) G_GNUC_WARN_UNUSED_RESULT;

void hc_count_geometry_call (void);

G_DEFINE_AUTOPTR_CLEANUP_FUNC (GEOSGeometry, hc_geos_free)

G_END_DECLS
