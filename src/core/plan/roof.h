/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The roof over a pen: how high it is where, and how large. */
#pragma once

#include "plan/layout.h"

G_BEGIN_DECLS

/**
 * HcRoof: (skip)
 * @eaves_mm: height of its underside at the eaves
 * @ridge_mm: height of its underside along its highest line
 * @across: the way it is looked at, of length 1: up a lean-to, across a ridge
 * @from_mm: where it begins, measured along @across
 * @ridge_at_mm: where its highest line is, measured along @across
 * @to_mm: where it ends, measured along @across
 *
 * One roof lies over all pens of a building that touch and say the same of
 * their roof. A lean-to has its highest line where it ends.
 */
typedef struct
{
  double eaves_mm;
  double ridge_mm;
  HcPoint across;
  double from_mm;
  double ridge_at_mm;
  double to_mm;
} HcRoof;

GArray *hc_layout_get_roofs (const HcLayout *layout) G_GNUC_WARN_UNUSED_RESULT;
HcRoof hc_layout_get_roof (const HcLayout *layout, const char *pen);
gboolean hc_roof_equal (const HcRoof *one, const HcRoof *other);

gboolean hc_roof_is_sloped (const HcRoof *roof);
double hc_roof_get_height_mm (const HcRoof *roof, HcPoint at);
gboolean hc_roof_find_band (const HcRoof *roof, double height_mm, double *from_mm,
                            double *to_mm);

double hc_roof_get_area_mm2 (const HcRoof *roof, const HcPoint *ring, guint n_points);
double hc_roof_get_wall_area_mm2 (const HcRoof *roof, HcPoint from, HcPoint to);
double hc_roof_get_highest_mm (const HcRoof *roof, HcPoint from, HcPoint to);
double hc_roof_get_volume_mm3 (const HcRoof *roof, const HcPoint *ring, guint n_points);

G_END_DECLS
