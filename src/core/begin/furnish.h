/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Fits a bare house out until every need is good or there is no room for more. */
#pragma once

#include "book/book.h"
#include "plan/plan.h"

G_BEGIN_DECLS

HcPlan *hc_furnish (HcPlan *bare, HcBook *book) G_GNUC_WARN_UNUSED_RESULT;

G_END_DECLS
