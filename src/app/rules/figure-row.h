/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * One figure: what is asked for whom, who says so, and the keeper's own. */
#pragma once

#include "book/book.h"
#include "plan/rules.h"

#include <gtk/gtk.h>

G_BEGIN_DECLS

#define HC_TYPE_FIGURE_ROW (hc_figure_row_get_type ())
/**
 * HcFigureRow:
 *
 * Signals: `set` with a value and a reason when the keeper sets a figure of
 * their own, `unset` when they go back to the rules.
 */
G_DECLARE_FINAL_TYPE (HcFigureRow, hc_figure_row, HC, FIGURE_ROW, GtkListBoxRow)

GtkWidget *hc_figure_row_new (HcBook *book, HcStandard *from, const HcLimit *limit,
                              const HcDemand *demand);
const char *hc_figure_row_get_figure (HcFigureRow *self);
const char *hc_figure_row_get_heading (HcFigureRow *self);
gboolean hc_figure_row_matches (HcFigureRow *self, const char *text);
void hc_figure_row_show_own (HcFigureRow *self, HcOwnFigure *own);
void hc_figure_row_open (HcFigureRow *self);

G_END_DECLS
