/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The things to add, by what birds do with them. */
#pragma once

#include "app/window/panel.h"

G_BEGIN_DECLS

#define HC_TYPE_SHELF (hc_shelf_get_type ())
G_DECLARE_FINAL_TYPE (HcShelf, hc_shelf, HC, SHELF, HcPanel)

G_END_DECLS
