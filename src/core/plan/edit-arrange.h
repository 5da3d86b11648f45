/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Edits of several fittings at once, and of one many times. */
#pragma once

#include "plan/plan.h"

G_BEGIN_DECLS

/**
 * HcAlign:
 * @HC_ALIGN_LEFT: left edges in one line, that of the leftmost
 * @HC_ALIGN_RIGHT: right edges in one line
 * @HC_ALIGN_TOP: upper edges on the page in one line
 * @HC_ALIGN_BOTTOM: lower edges on the page in one line
 * @HC_ALIGN_MIDDLE_UPRIGHT: middles on one line up the page
 * @HC_ALIGN_MIDDLE_LEVEL: middles on one line across the page
 */
typedef enum
{
  HC_ALIGN_LEFT,
  HC_ALIGN_RIGHT,
  HC_ALIGN_TOP,
  HC_ALIGN_BOTTOM,
  HC_ALIGN_MIDDLE_UPRIGHT,
  HC_ALIGN_MIDDLE_LEVEL,
} HcAlign;

/**
 * HcPageWay:
 * @HC_WAY_ACROSS: from left to right on the page
 * @HC_WAY_DOWN: from top to bottom
 */
typedef enum
{
  HC_WAY_ACROSS,
  HC_WAY_DOWN,
} HcPageWay;

HcPlan *hc_plan_align_fittings (HcPlan *plan, const char *const *ids, HcAlign align,
                                GError **error) G_GNUC_WARN_UNUSED_RESULT;
HcPlan *hc_plan_spread_fittings (HcPlan *plan, const char *const *ids, HcPageWay way,
                                 GError **error) G_GNUC_WARN_UNUSED_RESULT;
HcPlan *hc_plan_mirror_fittings (HcPlan *plan, const char *const *ids, HcPageWay way,
                                 GError **error) G_GNUC_WARN_UNUSED_RESULT;
HcPlan *hc_plan_lock_fittings (HcPlan *plan, const char *const *ids, gboolean locked,
                               GError **error) G_GNUC_WARN_UNUSED_RESULT;
HcPlan *hc_plan_repeat_along_wall (HcPlan *plan, const char *id, const char *wall, guint times,
                                   double spacing_mm, const char *const *new_ids,
                                   GError **error) G_GNUC_WARN_UNUSED_RESULT;

G_END_DECLS
