/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The distances between things that rules ask for, to place by. */
#pragma once

#include "book/standard.h"
#include "plan/snap.h"

G_BEGIN_DECLS

double hc_standard_get_nest_below_mm (const HcStandard *standard, HcLevel level);
HcSnapRules hc_standard_get_distances (const HcStandard *standard, HcLevel level);

G_END_DECLS
