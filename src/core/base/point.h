/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A place on the floor plan. */
#pragma once

#include <glib-object.h>

G_BEGIN_DECLS

#define HC_TYPE_POINT (hc_point_get_type ())

/**
 * HcPoint:
 * @x_mm: how far along the plan's width, in mm
 * @y_mm: how far along the plan's depth, in mm
 *
 * A place on the floor, or the way from one place to another.
 */
typedef struct
{
  double x_mm;
  double y_mm;
} HcPoint;

GType hc_point_get_type (void);

HcPoint *hc_point_copy (const HcPoint *self);
void hc_point_free (HcPoint *self);

HcPoint hc_point (double x_mm,
                  double y_mm);
HcPoint hc_point_rounded (HcPoint p);
gboolean hc_point_equal (HcPoint a,
                         HcPoint b);
HcPoint hc_point_add (HcPoint a,
                      HcPoint b);
HcPoint hc_point_subtract (HcPoint a,
                           HcPoint b);
HcPoint hc_point_scale (HcPoint p,
                        double factor);
HcPoint hc_point_between (HcPoint a,
                          HcPoint b,
                          double part);
HcPoint hc_point_turn (HcPoint p,
                       double turn_deg);
HcPoint hc_point_turn_about (HcPoint p,
                             HcPoint centre,
                             double turn_deg);
HcPoint hc_point_unit (HcPoint p);
double hc_point_length (HcPoint p);
double hc_point_distance (HcPoint a,
                          HcPoint b);
double hc_point_dot (HcPoint a,
                     HcPoint b);
double hc_point_cross (HcPoint a,
                       HcPoint b);
double hc_point_along (HcPoint p,
                       HcPoint a,
                       HcPoint b);
double hc_point_distance_to_line (HcPoint p,
                                  HcPoint a,
                                  HcPoint b);

G_END_DECLS
