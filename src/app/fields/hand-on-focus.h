/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Widgets that hand the focus on to the one among their children that takes keys. */
#pragma once

#include <gtk/gtk.h>

G_BEGIN_DECLS

gboolean hc_hand_on_focus (GtkWidget *widget, GtkWidget *child);

G_END_DECLS
