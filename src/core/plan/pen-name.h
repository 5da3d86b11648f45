/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Private to core: names for new pens. */
#pragma once

#include "plan/plan.h"

G_BEGIN_DECLS

char *hc_pen_name_new (HcPlan *plan, HcPenKind kind) G_GNUC_WARN_UNUSED_RESULT;

G_END_DECLS
