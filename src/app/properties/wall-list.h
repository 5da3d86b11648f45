/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The walls of the pen selected: their lengths inside, and what they are. */
#pragma once

#include "app/window/panel.h"

G_BEGIN_DECLS

#define HC_TYPE_WALL_LIST (hc_wall_list_get_type ())
G_DECLARE_FINAL_TYPE (HcWallList, hc_wall_list, HC, WALL_LIST, GtkBox)

void hc_wall_list_show (HcWallList *self, HcPanel *panel, HcPen *pen);

G_END_DECLS
