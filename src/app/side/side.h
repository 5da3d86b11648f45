/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The house from the side, cut open, with things to choose, raise and lower. */
#pragma once

#include "app/canvas/canvas.h"

G_BEGIN_DECLS

#define HC_TYPE_SIDE (hc_side_get_type ())
/**
 * HcSide:
 *
 * Its millimetres run along the cut and down from the floor. Signal `looked`
 * when it looks at another wall, or from elsewhere.
 */
G_DECLARE_FINAL_TYPE (HcSide, hc_side, HC, SIDE, HcCanvas)

const char *hc_side_get_wall (HcSide *self);
void hc_side_look_at (HcSide *self, const char *wall);
void hc_side_look_on (HcSide *self, int by);
double hc_side_get_distance (HcSide *self);
void hc_side_set_distance (HcSide *self, double distance_mm);
gboolean hc_side_show_parts (HcSide *self, const char *const *ids);

G_END_DECLS
