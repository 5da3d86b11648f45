/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * One name picked out of several, by mouse, by arrow keys or by typing a part of it. */
#pragma once

#include <gtk/gtk.h>

G_BEGIN_DECLS

#define HC_TYPE_PICKER (hc_picker_get_type ())
/**
 * HcPicker:
 *
 * A button that shows what is picked and opens the list of the others, which is
 * built when it first opens. Signal `picked` when the keeper has picked another
 * name and the list has closed.
 */
G_DECLARE_FINAL_TYPE (HcPicker, hc_picker, HC, PICKER, GtkWidget)

GtkWidget *hc_picker_new (const char *what);
void hc_picker_set_what (HcPicker *self, const char *what);
void hc_picker_clear (HcPicker *self);
void hc_picker_offer (HcPicker *self, const char *id, const char *name, const char *about);
void hc_picker_offer_words (HcPicker *self, const char *const *words);
guint hc_picker_get_n_offered (HcPicker *self);
void hc_picker_set_picked (HcPicker *self, guint index);
guint hc_picker_get_picked (HcPicker *self);
void hc_picker_set_id (HcPicker *self, const char *id);
const char *hc_picker_get_id (HcPicker *self);

G_END_DECLS
