/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * One figure: what is asked for whom, who says so, and the keeper's own. */
#pragma once

#include "app/rules/figure-entry.h"

#include "plan/rules.h"

#include <gtk/gtk.h>

G_BEGIN_DECLS

#define HC_TYPE_FIGURE_ROW (hc_figure_row_get_type ())
G_DECLARE_FINAL_TYPE (HcFigureRow, hc_figure_row, HC, FIGURE_ROW, GtkListBoxRow)

GtkWidget *hc_figure_row_new (const HcFigureEntry *entry, gboolean read_only);
const char *hc_figure_row_get_figure (HcFigureRow *self);
const HcFigureEntry *hc_figure_row_get_entry (HcFigureRow *self);
void hc_figure_row_show_own (HcFigureRow *self, HcOwnFigure *own);
void hc_figure_row_open (HcFigureRow *self);

G_END_DECLS
