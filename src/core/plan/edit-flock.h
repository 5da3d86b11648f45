/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Edits of the groups of birds. */
#pragma once

#include "plan/plan.h"

G_BEGIN_DECLS

HcPlan *hc_plan_add_batch (HcPlan *plan, HcBatch *batch,
                           GError **error) G_GNUC_WARN_UNUSED_RESULT;
HcPlan *hc_plan_set_batch (HcPlan *plan, const char *id, const HcBatchValues *values,
                           GError **error) G_GNUC_WARN_UNUSED_RESULT;
HcPlan *hc_plan_remove_batch (HcPlan *plan, const char *id) G_GNUC_WARN_UNUSED_RESULT;

G_END_DECLS
