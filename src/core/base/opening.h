/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The floor that counts: what is wide enough for a bird. */
#pragma once

#include "base/shape.h"

G_BEGIN_DECLS

HcShape *hc_shape_opening (HcShape *self,
                           double least_width_mm) G_GNUC_WARN_UNUSED_RESULT;
HcShape *hc_shape_free_floor (HcShape *outline,
                              HcShape *const *footprints,
                              guint n_footprints,
                              double least_width_mm) G_GNUC_WARN_UNUSED_RESULT;

G_END_DECLS
