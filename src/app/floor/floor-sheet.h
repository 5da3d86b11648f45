/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * One sheet of the floor: drawn with cairo, kept until it changes. */
#pragma once

#include "drawing/ink.h"

#include <gtk/gtk.h>

G_BEGIN_DECLS

#define HC_TYPE_FLOOR_SHEET (hc_floor_sheet_get_type ())
/**
 * HcFloorSheet:
 *
 * GTK keeps what a widget drew until it is asked to draw again, so what seldom
 * changes has a sheet of its own and is not drawn while something is dragged.
 */
G_DECLARE_FINAL_TYPE (HcFloorSheet, hc_floor_sheet, HC, FLOOR_SHEET, GtkWidget)

typedef void (*HcFloorSheetDraw) (const HcInk *ink, gpointer floor);

/* Where on the sheet there is anything to draw, pixels; FALSE for nowhere. What
 * lies outside is not painted again when the sheet changes. */
typedef gboolean (*HcFloorSheetExtents) (gpointer floor, graphene_rect_t *extents);

GtkWidget *hc_floor_sheet_new (HcFloorSheetDraw draw, HcFloorSheetExtents extents,
                               gpointer floor);

G_END_DECLS
