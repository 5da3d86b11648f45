/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Edits of doors, pop holes, windows and vents. */
#pragma once

#include "plan/plan.h"

G_BEGIN_DECLS

HcPlan *hc_plan_add_opening (HcPlan *plan, HcOpening *opening,
                             GError **error) G_GNUC_WARN_UNUSED_RESULT;
HcPlan *hc_plan_set_opening (HcPlan *plan, const char *id, const HcOpeningValues *values,
                             GError **error) G_GNUC_WARN_UNUSED_RESULT;
HcPlan *hc_plan_slide_opening (HcPlan *plan, const char *id, const char *wall, double along_mm,
                               GError **error) G_GNUC_WARN_UNUSED_RESULT;
HcPlan *hc_plan_remove_openings (HcPlan *plan, const char *const *ids,
                                 GError **error) G_GNUC_WARN_UNUSED_RESULT;

G_END_DECLS
