/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What lets daylight into the rooms of a space. */
#pragma once

#include "needs/context.h"

G_BEGIN_DECLS

/* Private to needs/: mm² of glass in windows, doors, walls and roofs. */
double hc_daylight_sum (const HcNeedContext *context, HcLevel level);

G_END_DECLS
