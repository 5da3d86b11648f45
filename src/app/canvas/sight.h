/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What part of a canvas is looked at: millimetres to pixels and back. */
#pragma once

#include "base/box.h"
#include "base/point.h"

#include <glib.h>

G_BEGIN_DECLS

/**
 * HcSight:
 * @scale: pixels for one millimetre
 * @x_px: where the plan's origin is, from the left
 * @y_px: where the plan's origin is, from the top
 */
typedef struct
{
  double scale;
  double x_px;
  double y_px;
} HcSight;

#define HC_SIGHT_FARTHEST 0.004
#define HC_SIGHT_NEAREST 4.0

HcPoint hc_sight_to_mm (const HcSight *sight, double x_px, double y_px);
void hc_sight_to_px (const HcSight *sight, HcPoint mm, double *x_px, double *y_px);
HcSight hc_sight_fit (HcBox box, double width_px, double height_px, double margin_px);
HcSight hc_sight_zoomed (const HcSight *sight, double factor, double x_px, double y_px);
HcSight hc_sight_panned (const HcSight *sight, double by_x_px, double by_y_px);
gboolean hc_sight_equal (const HcSight *a, const HcSight *b);

G_END_DECLS
