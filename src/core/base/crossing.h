/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Where two straight lines meet. */
#pragma once

#include "base/point.h"

G_BEGIN_DECLS

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
