/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * One sheet of the canvas: drawn with cairo, kept until it changes. */
#pragma once

#include "drawing/ink.h"

#include <gtk/gtk.h>

G_BEGIN_DECLS

#define HC_TYPE_CANVAS_SHEET (hc_canvas_sheet_get_type ())
/**
 * HcCanvasSheet:
 *
 * GTK keeps what a widget drew until it is asked to draw again, so what seldom
 * changes has a sheet of its own and is not drawn while something is dragged.
 */
G_DECLARE_FINAL_TYPE (HcCanvasSheet, hc_canvas_sheet, HC, CANVAS_SHEET, GtkWidget)

typedef void (*HcCanvasSheetDraw) (const HcInk *ink, gpointer canvas);

/* Where on the sheet there is anything to draw, pixels; FALSE for nowhere. What
 * lies outside is not painted again when the sheet changes. */
typedef gboolean (*HcCanvasSheetExtents) (gpointer canvas, graphene_rect_t *extents);

GtkWidget *hc_canvas_sheet_new (HcCanvasSheetDraw draw, HcCanvasSheetExtents extents,
                               gpointer canvas);

G_END_DECLS
