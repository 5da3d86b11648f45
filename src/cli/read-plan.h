/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Plans from files and from standard input. */
#pragma once

#include "plan/plan.h"

G_BEGIN_DECLS

HcPlan *hc_read_plan (const char *name, GError **error) G_GNUC_WARN_UNUSED_RESULT;

G_END_DECLS
