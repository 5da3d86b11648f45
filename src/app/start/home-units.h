/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The units a new plan begins with: what keepers in this place measure in. */
#pragma once

#include "base/units.h"

G_BEGIN_DECLS

HcUnits hc_home_units (void);

G_END_DECLS
