/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Shapes made from shapes: joined and cut. */
#pragma once

#include "base/opening.h"
#include "base/shape.h"

G_BEGIN_DECLS

HcShape *hc_shape_union (HcShape *const *shapes,
                         guint n_shapes) G_GNUC_WARN_UNUSED_RESULT;
HcShape *hc_shape_difference (HcShape *self,
                              HcShape *taken_off) G_GNUC_WARN_UNUSED_RESULT;
HcShape *hc_shape_intersection (HcShape *self,
                                HcShape *other) G_GNUC_WARN_UNUSED_RESULT;
HcShape *hc_shape_stand_off (HcShape *self,
                             double radius_mm) G_GNUC_WARN_UNUSED_RESULT;

guint64 hc_geometry_calls (void);

G_END_DECLS
