/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The names of a picker, looked through with arrow keys or by typing. */
#pragma once

#include <gtk/gtk.h>

G_BEGIN_DECLS

#define HC_TYPE_PICKER_LIST (hc_picker_list_get_type ())
/**
 * HcPickerList:
 *
 * Signal `chosen` with the place of the name the keeper has chosen; `given-up`
 * when the keeper wants none.
 */
G_DECLARE_FINAL_TYPE (HcPickerList, hc_picker_list, HC, PICKER_LIST, GtkBox)

GtkWidget *hc_picker_list_new (const char *what);
void hc_picker_list_add (HcPickerList *self, const char *name, const char *about);
void hc_picker_list_begin (HcPickerList *self, guint picked);

G_END_DECLS
