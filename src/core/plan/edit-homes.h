/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Private to core: which pen a fitting stands in. */
#pragma once

#include "plan/edit.h"

G_BEGIN_DECLS

void hc_edit_house_fitting (const HcLayout *layout, HcLayoutValues *values, HcFitting *fitting);
void hc_edit_take_fitting (HcLayoutValues *values, const char *id);
HcPlan *hc_edit_rehouse_all (HcPlan *plan) G_GNUC_WARN_UNUSED_RESULT;

G_END_DECLS
