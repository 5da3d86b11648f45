/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * How every counting need is judged, from how it serves birds. */
#pragma once

#include "needs/answer.h"
#include "needs/context.h"
#include "needs/serve/serving.h"

G_BEGIN_DECLS

/* Private to needs/. */
void hc_count_judge (const HcNeedContext *context, HcAnswer *answer);
gboolean hc_count_reaches (const HcNeedContext *context, HcLevel aim);
void hc_count_tell_lost_places (const HcNeedContext *context, HcOfferKind kind,
                                const char *code, HcAnswer *answer);

G_END_DECLS
