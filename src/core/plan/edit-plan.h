/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Edits of the plan's own page: title, notes, day. */
#pragma once

#include "plan/plan.h"

G_BEGIN_DECLS

HcPlan *hc_plan_set_title (HcPlan *plan, const char *title) G_GNUC_WARN_UNUSED_RESULT;
HcPlan *hc_plan_set_notes (HcPlan *plan, const char *notes) G_GNUC_WARN_UNUSED_RESULT;
HcPlan *hc_plan_set_day (HcPlan *plan, guint32 as_of) G_GNUC_WARN_UNUSED_RESULT;
HcPlan *hc_plan_copy_as (HcPlan *plan, const char *uid,
                         const char *title) G_GNUC_WARN_UNUSED_RESULT;

G_END_DECLS
