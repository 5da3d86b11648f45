/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Edits of buildings, and of which pen is part of which. */
#pragma once

#include "plan/plan.h"

G_BEGIN_DECLS

HcPlan *hc_plan_put_building (HcPlan *plan, HcBuilding *building) G_GNUC_WARN_UNUSED_RESULT;
HcPlan *hc_plan_remove_building (HcPlan *plan, const char *id,
                                 GError **error) G_GNUC_WARN_UNUSED_RESULT;
HcPlan *hc_plan_give_building (HcPlan *plan, const char *pen, const char *building,
                               GError **error) G_GNUC_WARN_UNUSED_RESULT;

G_END_DECLS
