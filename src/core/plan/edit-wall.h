/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Edits of walls: moved, made longer, built of something else. */
#pragma once

#include "plan/plan.h"

G_BEGIN_DECLS

HcPlan *hc_plan_move_wall (HcPlan *plan, const char *wall, double by_mm,
                           GError **error) G_GNUC_WARN_UNUSED_RESULT;
HcPlan *hc_plan_set_wall_length (HcPlan *plan, const char *wall, const char *pen,
                                 double length_mm, GError **error) G_GNUC_WARN_UNUSED_RESULT;
HcPlan *hc_plan_set_wall (HcPlan *plan, const char *wall, const HcWallValues *values,
                          GError **error) G_GNUC_WARN_UNUSED_RESULT;
double hc_layout_get_inside_length (const HcLayout *layout, const char *wall, const char *pen);

G_END_DECLS
