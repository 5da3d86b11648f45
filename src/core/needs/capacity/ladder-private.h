/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A ladder with or without the additions that would lift its rungs. */
#pragma once

#include "needs/ladder.h"

G_BEGIN_DECLS

/* Private to needs/. */
HcLadder *hc_ladder_climb_only (HcCheckCache *cache, HcPlan *plan, HcBook *book, HcFlock *flock,
                                HcLadderQuestion question, const char *kind,
                                HcCondition condition, HcLevel aim,
                                gboolean lifts) G_GNUC_WARN_UNUSED_RESULT;

G_END_DECLS
