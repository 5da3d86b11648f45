/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The figures a new house is built by: the strictest its birds ask for, and the
 * book's where they ask for none. */
#pragma once

#include "base/box.h"
#include "book/book.h"
#include "plan/plan.h"

G_BEGIN_DECLS

double hc_house_figure (const HcPlan *plan, HcBook *book, const char *name, double otherwise);
double hc_house_measure (HcBook *book, const char *id);
gboolean hc_house_is_small (HcBook *book, HcBox inside);
gboolean hc_house_has (const HcPlan *plan, HcBook *book, gboolean (*is) (const HcKind *kind));

G_END_DECLS
