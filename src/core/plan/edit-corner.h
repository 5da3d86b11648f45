/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Edits of corners, by which pens take any shape. */
#pragma once

#include "plan/plan.h"

G_BEGIN_DECLS

HcPlan *hc_plan_insert_corner (HcPlan *plan, const char *wall, double along_mm,
                               const char *new_corner, const char *new_wall,
                               GError **error) G_GNUC_WARN_UNUSED_RESULT;
HcPlan *hc_plan_move_corner (HcPlan *plan, const char *corner, HcPoint to,
                             GError **error) G_GNUC_WARN_UNUSED_RESULT;
HcPlan *hc_plan_remove_corner (HcPlan *plan, const char *corner,
                               GError **error) G_GNUC_WARN_UNUSED_RESULT;
HcPlan *hc_plan_merge_plain_corners (HcPlan *plan) G_GNUC_WARN_UNUSED_RESULT;

G_END_DECLS
