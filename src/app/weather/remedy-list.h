/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Ways to mend what is wrong, to look at and to do. */
#pragma once

#include "app/window/panel.h"

G_BEGIN_DECLS

#define HC_TYPE_REMEDY_LIST (hc_remedy_list_get_type ())
/**
 * HcRemedyList:
 *
 * Shows remedies of a plan, a row each: what, why, what is left then, and buttons to see
 * it on the plan before it is done.
 */
G_DECLARE_FINAL_TYPE (HcRemedyList, hc_remedy_list, HC, REMEDY_LIST, GtkBox)

void hc_remedy_list_show (HcRemedyList *self, HcPanel *panel, HcPlan *plan,
                          GPtrArray *remedies);
void hc_remedy_list_stop_trying (HcRemedyList *self);

G_END_DECLS
