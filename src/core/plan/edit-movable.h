/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Private to core: fittings that an edit moves. */
#pragma once

#include "base/box.h"
#include "plan/edit.h"

G_BEGIN_DECLS

HcFitting *hc_edit_find_fitting (HcPlan *plan, const char *id, GError **error);
gboolean hc_edit_find_movable (HcPlan *plan, const char *const *ids, GPtrArray *found,
                               GError **error);
HcFitting *hc_edit_placed (HcFitting *fitting, HcPoint to, double turn_deg, HcPlan *plan,
                           GError **error) G_GNUC_WARN_UNUSED_RESULT;
HcPlan *hc_edit_house_all (HcPlan *plan, GPtrArray *fittings) G_GNUC_WARN_UNUSED_RESULT;
HcPoint hc_fittings_get_middle (GPtrArray *fittings);
HcBox hc_fitting_get_box (const HcFitting *fitting);
double hc_turn_within_circle (double turn_deg);

G_END_DECLS
