/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Edits of whose figures the plan is judged by. */
#pragma once

#include "plan/plan.h"

G_BEGIN_DECLS

HcPlan *hc_plan_set_standard (HcPlan *plan, const char *standard) G_GNUC_WARN_UNUSED_RESULT;
HcPlan *hc_plan_set_own_figure (HcPlan *plan, const char *new_id, const char *figure,
                                double value, const char *reason,
                                GError **error) G_GNUC_WARN_UNUSED_RESULT;
HcPlan *hc_plan_unset_own_figure (HcPlan *plan, const char *figure) G_GNUC_WARN_UNUSED_RESULT;
HcOwnFigure *hc_plan_find_own_figure (const HcPlan *plan, const char *figure);

G_END_DECLS
