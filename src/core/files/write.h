/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Plan files: plan to text. */
#pragma once

#include "plan/plan.h"

G_BEGIN_DECLS

char *hc_plan_write (const HcPlan *plan,
                     gsize *length,
                     GError **error) G_GNUC_WARN_UNUSED_RESULT;

G_END_DECLS
