/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The mark of a level: its shape tells as much as its colour. */
#pragma once

#include "drawing/ink.h"

G_BEGIN_DECLS

void hc_draw_level_mark (const HcInk *ink, double x_mm, double y_mm, double size_mm,
                         HcLevel level);

G_END_DECLS
