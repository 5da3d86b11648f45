/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Where two straight lines meet. */
#pragma once

#include "base/point.h"

G_BEGIN_DECLS

/* A quick look at their boxes, before the sums that are dear. */
static inline gboolean
hc_lines_may_touch (HcPoint a,
                    HcPoint b,
                    HcPoint c,
                    HcPoint d,
                    double within_mm)
{
  return MIN (a.x_mm, b.x_mm) <= MAX (c.x_mm, d.x_mm) + within_mm
         && MIN (c.x_mm, d.x_mm) <= MAX (a.x_mm, b.x_mm) + within_mm
         && MIN (a.y_mm, b.y_mm) <= MAX (c.y_mm, d.y_mm) + within_mm
         && MIN (c.y_mm, d.y_mm) <= MAX (a.y_mm, b.y_mm) + within_mm;
}

gboolean hc_lines_touch (HcPoint a,
                         HcPoint b,
                         HcPoint c,
                         HcPoint d);
gboolean hc_lines_cross_at (HcPoint a,
                            HcPoint b,
                            HcPoint c,
                            HcPoint d,
                            double *part);

G_END_DECLS
