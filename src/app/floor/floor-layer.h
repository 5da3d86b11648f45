/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * One layer of the floor: drawn with cairo, kept until it changes. */
#pragma once

#include "drawing/ink.h"

#include <gtk/gtk.h>

G_BEGIN_DECLS

#define HC_TYPE_FLOOR_LAYER (hc_floor_layer_get_type ())
/**
 * HcFloorLayer:
 *
 * GTK keeps what a widget drew until it is asked to draw again, so what seldom
 * changes has a layer of its own and is not drawn while something is dragged.
 */
G_DECLARE_FINAL_TYPE (HcFloorLayer, hc_floor_layer, HC, FLOOR_LAYER, GtkWidget)

typedef void (*HcFloorLayerDraw) (const HcInk *ink, gpointer floor);

GtkWidget *hc_floor_layer_new (HcFloorLayerDraw draw, gpointer floor);

G_END_DECLS
