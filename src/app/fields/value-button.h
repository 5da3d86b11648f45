/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Buttons that show a value and open a choice: what a screen reader says. */
#pragma once

#include <gtk/gtk.h>

G_BEGIN_DECLS

void hc_name_value_button (GtkWidget *widget, const char *what, const char *value);

G_END_DECLS
