/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * An upright box around a part of the plan. */
#pragma once

#include "base/point.h"

G_BEGIN_DECLS

#define HC_TYPE_BOX (hc_box_get_type ())

/**
 * HcBox:
 * @x_mm: the smallest x inside, in mm
 * @y_mm: the smallest y inside, in mm
 * @width_mm: how far it reaches along x, in mm
 * @depth_mm: how far it reaches along y, in mm
 *
 * A box along the axes of the plan. One with a negative width holds nothing.
 */
typedef struct
{
  double x_mm;
  double y_mm;
  double width_mm;
  double depth_mm;
} HcBox;

GType hc_box_get_type (void);

HcBox *hc_box_copy (const HcBox *self);
void hc_box_free (HcBox *self);

HcBox hc_box_empty (void);
HcBox hc_box_around (const HcPoint *points,
                     guint n_points);
HcBox hc_box_join (HcBox a,
                   HcBox b);
HcBox hc_box_grow (HcBox box,
                   double by_mm);
gboolean hc_box_is_empty (HcBox box);
gboolean hc_box_touches (HcBox a,
                         HcBox b);
gboolean hc_box_contains_point (HcBox box,
                                HcPoint p);
HcPoint hc_box_centre (HcBox box);
double hc_box_distance (HcBox a,
                        HcBox b);

G_END_DECLS
