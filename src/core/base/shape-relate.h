/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * How two shapes lie to each other. */
#pragma once

#include "base/shape.h"

G_BEGIN_DECLS

/**
 * HC_SHAPE_TOUCH_MM:
 *
 * How near to an edge counts as on it: rounding moves the corners of a turned
 * shape by no more than a tenth of this.
 */
#define HC_SHAPE_TOUCH_MM 0.01

gboolean hc_shape_contains_point (const HcShape *self,
                                  HcPoint p);
gboolean hc_shape_contains (const HcShape *self,
                            const HcShape *other);
gboolean hc_shape_intersects (const HcShape *self,
                              const HcShape *other);
double hc_shape_get_overlap_mm2 (HcShape *self,
                                 HcShape *other);
gboolean hc_shape_overlaps (HcShape *self,
                            HcShape *other,
                            double forgiven_mm2);
double hc_shape_distance_mm (const HcShape *self,
                             const HcShape *other);
double hc_shape_find_nearest (const HcShape *self,
                              const HcShape *other,
                              HcPoint *on_self,
                              HcPoint *on_other);
double hc_shape_distance_to_point_mm (const HcShape *self,
                                      HcPoint p);
double hc_shape_distance_to_edge_mm (const HcShape *self,
                                     HcPoint p);

G_END_DECLS
