/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A slider that opens and shuts vents. */
#pragma once

#include "climate/house-night.h"

#include <gtk/gtk.h>

G_BEGIN_DECLS

#define HC_TYPE_VENT_HANDLE (hc_vent_handle_get_type ())
/**
 * HcVentHandle:
 *
 * One vent, or all of them, and how far they stand open. Signal `moved` while the
 * slider moves, `settled` when it has stood still for a moment.
 */
G_DECLARE_FINAL_TYPE (HcVentHandle, hc_vent_handle, HC, VENT_HANDLE, GtkBox)

void hc_vent_handle_show (HcVentHandle *self, const HcHouseNight *night);
void hc_vent_handle_move (HcVentHandle *self, HcHouseNight *night);
HcPlan *hc_vent_handle_edit (HcVentHandle *self, HcPlan *plan,
                             GError **error) G_GNUC_WARN_UNUSED_RESULT;
gboolean hc_vent_handle_is_moving (HcVentHandle *self);
void hc_vent_handle_settle (HcVentHandle *self);
double hc_vent_handle_get_open (HcVentHandle *self);

G_END_DECLS
