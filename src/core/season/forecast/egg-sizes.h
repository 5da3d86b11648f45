/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Which sizes eggs come in. */
#pragma once

#include "book/book.h"

G_BEGIN_DECLS

double hc_egg_class_get_share (const HcBook *book, const HcEggClass *class, double mean_g,
                               double spread_percent);
const HcEggClass *hc_egg_class_of (const HcBook *book, HcUnits units, double egg_g);

G_END_DECLS
