/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Edits of what stands in the pens. Every edit returns a plan that shares all
 * it does not change, the same plan when nothing changed. */
#pragma once

#include "plan/plan.h"

G_BEGIN_DECLS

HcPlan *hc_plan_add_fitting (HcPlan *plan, HcFitting *fitting,
                             GError **error) G_GNUC_WARN_UNUSED_RESULT;
HcPlan *hc_plan_set_fitting (HcPlan *plan, const char *id, const HcFittingValues *values,
                             GError **error) G_GNUC_WARN_UNUSED_RESULT;
HcPlan *hc_plan_rename_fitting (HcPlan *plan, const char *id, const char *name,
                                GError **error) G_GNUC_WARN_UNUSED_RESULT;
HcPlan *hc_plan_resize_fitting (HcPlan *plan, const char *id, double width_mm, double depth_mm,
                                GError **error) G_GNUC_WARN_UNUSED_RESULT;
HcPlan *hc_plan_move_fittings (HcPlan *plan, const char *const *ids, HcPoint by,
                               GError **error) G_GNUC_WARN_UNUSED_RESULT;
HcPlan *hc_plan_raise_fittings (HcPlan *plan, const char *const *ids, double by_mm,
                                GError **error) G_GNUC_WARN_UNUSED_RESULT;
HcPlan *hc_plan_turn_fittings (HcPlan *plan, const char *const *ids, double by_deg,
                               GError **error) G_GNUC_WARN_UNUSED_RESULT;
HcPlan *hc_plan_remove_fittings (HcPlan *plan, const char *const *ids,
                                 GError **error) G_GNUC_WARN_UNUSED_RESULT;
HcPlan *hc_plan_duplicate_fittings (HcPlan *plan, const char *const *ids,
                                    const char *const *new_ids, HcPoint by,
                                    GError **error) G_GNUC_WARN_UNUSED_RESULT;

G_END_DECLS
