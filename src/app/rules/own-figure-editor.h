/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Setting a figure of one's own, with a reason. */
#pragma once

#include "plan/rules.h"

#include <gtk/gtk.h>

G_BEGIN_DECLS

#define HC_TYPE_OWN_FIGURE_EDITOR (hc_own_figure_editor_get_type ())
/**
 * HcOwnFigureEditor:
 *
 * Signals: `set` with the value and the reason, `unset`.
 */
G_DECLARE_FINAL_TYPE (HcOwnFigureEditor, hc_own_figure_editor, HC, OWN_FIGURE_EDITOR, GtkBox)

GtkWidget *hc_own_figure_editor_new (const char *unit);
void hc_own_figure_editor_show (HcOwnFigureEditor *self, HcOwnFigure *own);

G_END_DECLS
