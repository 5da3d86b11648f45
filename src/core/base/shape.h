/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * An area of floor: a value that can be shared between threads. */
#pragma once

#include "base/box.h"

G_BEGIN_DECLS

#define HC_TYPE_SHAPE (hc_shape_get_type ())

/**
 * HcShape:
 *
 * An area of the plan: any number of parts, each with any number of holes.
 *
 * A shape never changes. Its corners lie on a grid of 0.001 mm; the outside of
 * a part turns from the x axis towards the y axis, holes turn the other way.
 */
typedef struct _HcShape HcShape;

GType hc_shape_get_type (void);

HcShape *hc_shape_new_empty (void) G_GNUC_WARN_UNUSED_RESULT;
HcShape *hc_shape_new_polygon (const HcPoint *points,
                               guint n_points) G_GNUC_WARN_UNUSED_RESULT;
HcShape *hc_shape_new_rectangle (HcPoint centre,
                                 double width_mm,
                                 double depth_mm,
                                 double turn_deg) G_GNUC_WARN_UNUSED_RESULT;
HcShape *hc_shape_new_circle (HcPoint centre,
                              double diameter_mm) G_GNUC_WARN_UNUSED_RESULT;
HcShape *hc_shape_new_box (HcBox box) G_GNUC_WARN_UNUSED_RESULT;

HcShape *hc_shape_ref (HcShape *self) G_GNUC_WARN_UNUSED_RESULT;
void hc_shape_unref (HcShape *self);

gboolean hc_shape_is_empty (const HcShape *self);
gboolean hc_shape_equal (const HcShape *self,
                         const HcShape *other);
double hc_shape_get_area_mm2 (const HcShape *self);
double hc_shape_get_perimeter_mm (const HcShape *self);
HcBox hc_shape_get_bounds (const HcShape *self);
guint hc_shape_get_n_parts (const HcShape *self);
guint hc_shape_get_n_rings (const HcShape *self,
                            guint part);
const HcPoint *hc_shape_get_ring (const HcShape *self,
                                  guint part,
                                  guint ring,
                                  guint *n_points);

HcShape *hc_shape_get_part (const HcShape *self,
                            guint part) G_GNUC_WARN_UNUSED_RESULT;

HcShape *hc_shape_turn_and_move (const HcShape *self,
                                 double turn_deg,
                                 HcPoint move) G_GNUC_WARN_UNUSED_RESULT;

G_DEFINE_AUTOPTR_CLEANUP_FUNC (HcShape, hc_shape_unref)

G_END_DECLS
