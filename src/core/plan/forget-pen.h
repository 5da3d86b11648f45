/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Private to core: what becomes of birds and eggs whose pen goes. */
#pragma once

#include "plan/plan.h"

G_BEGIN_DECLS

HcPlan *hc_edit_forget_pen (HcPlan *plan, const char *pen,
                            const char *heir) G_GNUC_WARN_UNUSED_RESULT;

G_END_DECLS
