/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Whose rules: every figure with its source, and the keeper's own figures. */
#pragma once

#include "document/checker.h"

#include <adwaita.h>

G_BEGIN_DECLS

#define HC_TYPE_RULES_WINDOW (hc_rules_window_get_type ())
G_DECLARE_FINAL_TYPE (HcRulesWindow, hc_rules_window, HC, RULES_WINDOW, AdwWindow)

void hc_rules_window_present (GtkWindow *parent, HcChecker *checker, const char *figure);

G_END_DECLS
