/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Edits of what happens through the year. */
#pragma once

#include "plan/plan.h"

G_BEGIN_DECLS

HcPlan *hc_plan_put_move (HcPlan *plan, const char *batch, HcMove *move,
                          GError **error) G_GNUC_WARN_UNUSED_RESULT;
HcPlan *hc_plan_put_leaving (HcPlan *plan, const char *batch, HcLeaving *leaving,
                             GError **error) G_GNUC_WARN_UNUSED_RESULT;
HcPlan *hc_plan_remove_from_batch (HcPlan *plan, const char *batch,
                                   const char *id) G_GNUC_WARN_UNUSED_RESULT;
HcPlan *hc_plan_put_clutch (HcPlan *plan, HcClutch *clutch,
                            GError **error) G_GNUC_WARN_UNUSED_RESULT;
HcPlan *hc_plan_put_result (HcPlan *plan, HcResult *result,
                            GError **error) G_GNUC_WARN_UNUSED_RESULT;
HcPlan *hc_plan_put_chore (HcPlan *plan, HcChore *chore,
                           GError **error) G_GNUC_WARN_UNUSED_RESULT;
HcPlan *hc_plan_put_price (HcPlan *plan, HcPrice *price,
                           GError **error) G_GNUC_WARN_UNUSED_RESULT;
HcPlan *hc_plan_put_stock (HcPlan *plan, HcStock *stock,
                           GError **error) G_GNUC_WARN_UNUSED_RESULT;
HcPlan *hc_plan_remove_clutch (HcPlan *plan, const char *id) G_GNUC_WARN_UNUSED_RESULT;
HcPlan *hc_plan_remove_result (HcPlan *plan, const char *id) G_GNUC_WARN_UNUSED_RESULT;
HcPlan *hc_plan_remove_chore (HcPlan *plan, const char *id) G_GNUC_WARN_UNUSED_RESULT;
HcPlan *hc_plan_remove_price (HcPlan *plan, const char *id) G_GNUC_WARN_UNUSED_RESULT;
HcPlan *hc_plan_remove_stock (HcPlan *plan, const char *id) G_GNUC_WARN_UNUSED_RESULT;
HcPlan *hc_plan_set_keeping (HcPlan *plan, const HcKeepingValues *values,
                             GError **error) G_GNUC_WARN_UNUSED_RESULT;

G_END_DECLS
