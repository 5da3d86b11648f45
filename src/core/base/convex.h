/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Shapes without dents or holes, which can be overlaid with a few sums. */
#pragma once

#include "base/shape.h"

G_BEGIN_DECLS

gboolean hc_shape_is_convex (const HcShape *self);
double hc_convex_overlap_mm2 (const HcShape *self,
                              const HcShape *other);

G_END_DECLS
