/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * How long chicks need a heater. */
#pragma once

#include "book/standard.h"
#include "plan/site.h"

G_BEGIN_DECLS

int hc_heat_get_weeks (const HcStandard *standard, const HcKind *kind, const HcSiteValues *site);

G_END_DECLS
