/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Private to core: edits that would leave something impossible are refused. */
#pragma once

#include "plan/plan.h"

G_BEGIN_DECLS

HcPlan *hc_edit_possible (HcPlan *after, GError **error) G_GNUC_WARN_UNUSED_RESULT;

G_END_DECLS
