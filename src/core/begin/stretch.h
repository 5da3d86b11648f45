/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A ready house made to the keeper's measures. */
#pragma once

#include "plan/plan.h"

G_BEGIN_DECLS

/**
 * HC_STRETCH_LEAST:
 *
 * The smallest share of its own measures a ready house can have.
 */
#define HC_STRETCH_LEAST 0.95

/**
 * HC_STRETCH_MOST:
 *
 * The largest.
 */
#define HC_STRETCH_MOST 2.0

void hc_ready_house_get_outside (const HcPlan *plan, double *width_mm, double *length_mm);
HcPlan *hc_ready_house_stretch (HcPlan *plan, double width_mm, double length_mm,
                                GError **error) G_GNUC_WARN_UNUSED_RESULT;

G_END_DECLS
