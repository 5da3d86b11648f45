/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Whether a plan is one that everything else can work with. */
#pragma once

#include "plan/fault.h"
#include "plan/plan.h"

G_BEGIN_DECLS

gboolean hc_plan_find_fault (const HcPlan *plan,
                             HcFault *fault);
gboolean hc_plan_is_sound (const HcPlan *plan,
                           GError **error);

G_END_DECLS
