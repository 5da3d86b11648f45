/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The rules a plan is judged by, with the keeper's own figures in them. */
#pragma once

#include "book/book.h"
#include "plan/plan.h"

G_BEGIN_DECLS

HcStandard *hc_plan_get_own_standard (const HcPlan *plan, HcBook *book) G_GNUC_WARN_UNUSED_RESULT;

G_END_DECLS
