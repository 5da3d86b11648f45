/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Names of buttons without the underscore of their access key. */
#pragma once

#include <gtk/gtk.h>

G_BEGIN_DECLS

void hc_name_plainly (GtkWidget *widget);

G_END_DECLS
