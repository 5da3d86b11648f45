/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Edits of pens and runs. */
#pragma once

#include "plan/plan.h"

G_BEGIN_DECLS

char **hc_pen_ids_new (void) G_GNUC_WARN_UNUSED_RESULT;
HcPlan *hc_plan_add_pen (HcPlan *plan, HcPenKind kind, HcPoint one, HcPoint other,
                         const char *const *new_ids, GError **error) G_GNUC_WARN_UNUSED_RESULT;
HcPlan *hc_plan_add_pen_outline (HcPlan *plan, const HcPenValues *values,
                                 const HcWallValues *walls, const HcPoint *corners,
                                 guint n_corners, const char *const *new_ids,
                                 GError **error) G_GNUC_WARN_UNUSED_RESULT;
HcPlan *hc_plan_set_pen (HcPlan *plan, const char *pen, const HcPenValues *values,
                         GError **error) G_GNUC_WARN_UNUSED_RESULT;
HcPlan *hc_plan_remove_pen (HcPlan *plan, const char *pen,
                            GError **error) G_GNUC_WARN_UNUSED_RESULT;
HcPlan *hc_plan_remove_pen_and_fittings (HcPlan *plan, const char *pen,
                                         GError **error) G_GNUC_WARN_UNUSED_RESULT;

G_END_DECLS
