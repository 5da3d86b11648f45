/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The application: one process, a window for each plan. */
#pragma once

#include "book/book.h"

#include <adwaita.h>

G_BEGIN_DECLS

#define HC_TYPE_APPLICATION (hc_application_get_type ())
G_DECLARE_FINAL_TYPE (HcApplication, hc_application, HC, APPLICATION, AdwApplication)

HcApplication *hc_application_new (void);
HcBook *hc_application_get_book (HcApplication *self);
char *hc_application_list_rules_left_out (HcApplication *self) G_GNUC_WARN_UNUSED_RESULT;

G_END_DECLS
