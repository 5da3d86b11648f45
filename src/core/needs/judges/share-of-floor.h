/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Needs that ask for a share of the floor, however many birds there are. */
#pragma once

#include "needs/answer.h"
#include "needs/context.h"

G_BEGIN_DECLS

/* Private to needs/: mm² there are of something at a level. */
typedef double (*HcAreaOffered) (const HcNeedContext *context, HcLevel level);

double hc_share_of_floor_sum (const HcNeedContext *context, HcOfferKind kind, HcLevel level);
void hc_share_of_floor_judge (const HcNeedContext *context, HcAreaOffered offered,
                              const char *figure, const char *code, HcAnswer *answer);

G_END_DECLS
