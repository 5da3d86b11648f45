/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What heaters in a room can and cannot do. */
#pragma once

#include "needs/answer.h"
#include "needs/context.h"

G_BEGIN_DECLS

/* Private to needs/. */
gint64 hc_heater_count_chicks (const HcNeedContext *context, const HcFittingValues *values);
void hc_heaters_tell_cold_rooms (const HcNeedContext *context, HcAnswer *answer);
void hc_heaters_tell_no_cool_end (const HcNeedContext *context, HcAnswer *answer);

G_END_DECLS
