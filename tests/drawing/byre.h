/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The small byre that drawings are tested on. */
#pragma once

#include "needs/check.h"

G_BEGIN_DECLS

HcPlan *test_byre_load (void);
HcCheck *test_byre_check (HcPlan *plan, HcCondition condition);

G_END_DECLS
