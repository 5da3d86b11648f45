/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A name in the list of a picker, and a line on what it is. */
#pragma once

#include "app/fields/name-search.h"

#include <gtk/gtk.h>

G_BEGIN_DECLS

#define HC_TYPE_PICKER_ROW (hc_picker_row_get_type ())
G_DECLARE_FINAL_TYPE (HcPickerRow, hc_picker_row, HC, PICKER_ROW, GtkListBoxRow)

GtkWidget *hc_picker_row_new (guint index, const char *name, const char *about);
guint hc_picker_row_get_index (HcPickerRow *self);
void hc_picker_row_set_picked (HcPickerRow *self, gboolean picked);
void hc_picker_row_search (HcPickerRow *self, const char *typed);
HcNameRank hc_picker_row_get_rank (HcPickerRow *self);

G_END_DECLS
