/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Teeth along the stretches of wall that let something in. */
#pragma once

#include "drawing/ink.h"

#include "needs/check.h"

G_BEGIN_DECLS

void hc_draw_open_line (const HcInk *ink, const HcFindingLine *line, HcLevel level);
void hc_draw_open_lines (const HcInk *ink, const HcCheck *check);

G_END_DECLS
