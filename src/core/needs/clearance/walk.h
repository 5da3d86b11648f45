/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The farthest walk to feed and water. */
#pragma once

#include "needs/answer.h"
#include "needs/context.h"

G_BEGIN_DECLS

/* Private to needs/. */
void hc_walk_tell_farthest (const HcNeedContext *context, HcFittingKind kind,
                            const char *figure, const char *code, HcAnswer *answer);

G_END_DECLS
