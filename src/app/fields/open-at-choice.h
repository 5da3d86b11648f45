/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Lists to choose from that open where the choice stands. */
#pragma once

#include <gtk/gtk.h>

G_BEGIN_DECLS

void hc_open_at_choice (GtkDropDown *drop_down);

G_END_DECLS
