/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * How to fix one thing: a button for each way, tried out on the floor while it
 * is pointed at. */
#pragma once

#include "needs/check.h"

#include <gtk/gtk.h>

G_BEGIN_DECLS

#define HC_TYPE_FIX_LIST (hc_fix_list_get_type ())
G_DECLARE_FINAL_TYPE (HcFixList, hc_fix_list, HC, FIX_LIST, GtkBox)

GtkWidget *hc_fix_list_new (void);
void hc_fix_list_ask (HcFixList *self, const HcCheck *check, HcNeedId need,
                         const HcFinding *finding);

G_END_DECLS
