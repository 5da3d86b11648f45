/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The window of one plan. */
#pragma once

#include "app/application.h"
#include "document/checker.h"

G_BEGIN_DECLS

#define HC_TYPE_WINDOW (hc_window_get_type ())
G_DECLARE_FINAL_TYPE (HcWindow, hc_window, HC, WINDOW, AdwApplicationWindow)

HcWindow *hc_window_new (HcApplication *application);
void hc_window_open_file (HcWindow *self, GFile *file);
void hc_window_take_document (HcWindow *self, HcDocument *document);
HcDocument *hc_window_get_document (HcWindow *self);
HcChecker *hc_window_get_checker (HcWindow *self);
void hc_window_write_draft_now (HcWindow *self);
char *hc_window_take_wall (HcWindow *self) G_GNUC_WARN_UNUSED_RESULT;
double hc_window_get_scale (HcWindow *self);
void hc_window_say (HcWindow *self, const char *sentence);

G_END_DECLS
