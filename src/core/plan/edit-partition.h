/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Edits by which one pen becomes two, and two become one. */
#pragma once

#include "plan/plan.h"

G_BEGIN_DECLS

HcPlan *hc_plan_split_pen (HcPlan *plan, const char *pen, HcPoint one, HcPoint other,
                           const HcWallValues *partition, const HcOpeningValues *door,
                           const char *const *new_ids, GError **error) G_GNUC_WARN_UNUSED_RESULT;
HcPlan *hc_plan_join_pens (HcPlan *plan, const char *pen, const char *other,
                           GError **error) G_GNUC_WARN_UNUSED_RESULT;

G_END_DECLS
