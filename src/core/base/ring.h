/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Sums on a ring of corners, without any geometry library. */
#pragma once

#include "base/point.h"

G_BEGIN_DECLS

/**
 * HcRingFault:
 * @HC_RING_SOUND: the ring bounds an area
 * @HC_RING_TOO_FEW_CORNERS: fewer than three corners
 * @HC_RING_REPEATED_CORNER: two corners are the same place
 * @HC_RING_SELF_CROSSING: two edges cross or lie on each other
 * @HC_RING_NO_AREA: all corners lie on one line
 *
 * What keeps a ring of corners from bounding a floor.
 */
typedef enum
{
  HC_RING_SOUND,
  HC_RING_TOO_FEW_CORNERS,
  HC_RING_REPEATED_CORNER,
  HC_RING_SELF_CROSSING,
  HC_RING_NO_AREA,
} HcRingFault;

HcRingFault hc_ring_find_fault (const HcPoint *points,
                                guint n_points,
                                guint *first,
                                guint *second);

double hc_ring_area_mm2 (const HcPoint *points,
                         guint n_points);
gboolean hc_ring_contains_point (const HcPoint *points,
                                 guint n_points,
                                 HcPoint p);
void hc_ring_reverse (HcPoint *points,
                      guint n_points);
HcPoint hc_ring_edge_normal (const HcPoint *points,
                             guint n_points,
                             guint edge);
double hc_ring_edge_length_mm (const HcPoint *points,
                               guint n_points,
                               guint edge);
HcPoint hc_ring_point_on_edge (const HcPoint *points,
                               guint n_points,
                               guint edge,
                               double along_mm);
guint hc_ring_nearest_edge (const HcPoint *points,
                            guint n_points,
                            HcPoint p,
                            double *distance_mm);
HcPoint *hc_ring_inset (const HcPoint *points,
                        guint n_points,
                        const double *inset_mm) G_GNUC_WARN_UNUSED_RESULT;

G_END_DECLS
