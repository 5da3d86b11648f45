/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What part of the floor is looked at: millimetres to pixels and back. */
#pragma once

#include "base/box.h"
#include "base/point.h"

#include <glib.h>

G_BEGIN_DECLS

/**
 * HcView:
 * @scale: pixels for one millimetre
 * @x_px: where the plan's origin is, from the left
 * @y_px: where the plan's origin is, from the top
 */
typedef struct
{
  double scale;
  double x_px;
  double y_px;
} HcView;

#define HC_VIEW_FARTHEST 0.004
#define HC_VIEW_NEAREST 4.0

HcPoint hc_view_to_mm (const HcView *view, double x_px, double y_px);
void hc_view_to_px (const HcView *view, HcPoint mm, double *x_px, double *y_px);
HcView hc_view_fit (HcBox box, double width_px, double height_px, double margin_px);
HcView hc_view_zoomed (const HcView *view, double factor, double x_px, double y_px);
HcView hc_view_panned (const HcView *view, double by_x_px, double by_y_px);
gboolean hc_view_equal (const HcView *a, const HcView *b);

G_END_DECLS
