/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Ways to mend what a check found. */
#pragma once

#include "mend/remedy.h"
#include "needs/check.h"

G_BEGIN_DECLS

GPtrArray *hc_mend_finding (HcCheckCache *cache, HcBook *book, HcCheck *check, HcNeedId need,
                            const HcFinding *finding) G_GNUC_WARN_UNUSED_RESULT;

gboolean hc_mend_knows (const char *id);

G_END_DECLS
