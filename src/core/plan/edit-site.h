/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Edits of the place: units, climate, predators and local rules. */
#pragma once

#include "plan/plan.h"

G_BEGIN_DECLS

HcPlan *hc_plan_set_site (HcPlan *plan, const HcSiteValues *values,
                          GError **error) G_GNUC_WARN_UNUSED_RESULT;

G_END_DECLS
