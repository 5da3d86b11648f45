/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The line of one need: who is served, how well, and what is wrong. */
#pragma once

#include "base/units.h"
#include "needs/check.h"

#include <gtk/gtk.h>

G_BEGIN_DECLS

#define HC_TYPE_NEED_ROW (hc_need_row_get_type ())
G_DECLARE_FINAL_TYPE (HcNeedRow, hc_need_row, HC, NEED_ROW, GtkListBoxRow)

GtkWidget *hc_need_row_new (HcNeedId need);
gboolean hc_need_row_show (HcNeedRow *self, const HcCheck *check, HcUnits units);
HcNeedId hc_need_row_get_need (HcNeedRow *self);
HcLevel hc_need_row_get_level (HcNeedRow *self);

G_END_DECLS
