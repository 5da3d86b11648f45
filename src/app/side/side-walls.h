/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The walls of a house that can be looked at. */
#pragma once

#include "base/units.h"
#include "supply/house.h"

#include <gio/gio.h>

G_BEGIN_DECLS

const char *hc_side_walls_find_next (const HcHouse *house, const char *wall, int by);
char *hc_side_walls_name (const HcHouse *house, const char *wall) G_GNUC_WARN_UNUSED_RESULT;
GMenu *hc_side_walls_list (const HcHouse *house, HcUnits units) G_GNUC_WARN_UNUSED_RESULT;

G_END_DECLS
