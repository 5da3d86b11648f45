/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Edits of variants: other layouts of the same house. */
#pragma once

#include "plan/plan.h"

G_BEGIN_DECLS

HcPlan *hc_plan_add_variant (HcPlan *plan, const char *new_id, const char *name,
                             GError **error) G_GNUC_WARN_UNUSED_RESULT;
HcPlan *hc_plan_choose_variant (HcPlan *plan, const char *variant,
                                GError **error) G_GNUC_WARN_UNUSED_RESULT;
HcPlan *hc_plan_rename_variant (HcPlan *plan, const char *variant, const char *name,
                                GError **error) G_GNUC_WARN_UNUSED_RESULT;
HcPlan *hc_plan_remove_variant (HcPlan *plan, const char *variant,
                                GError **error) G_GNUC_WARN_UNUSED_RESULT;

G_END_DECLS
