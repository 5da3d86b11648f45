/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The air of the coldest night, where birds sleep. */
#pragma once

#include "needs/answer.h"
#include "needs/context.h"

G_BEGIN_DECLS

/* Private to needs/. */
void hc_night_air_judge (const HcNeedContext *context, HcAnswer *answer);

G_END_DECLS
