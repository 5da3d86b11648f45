/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What benchmarks share: plans from a seed, times, and a line for each figure. */
#pragma once

#include "book/book.h"
#include "plan/plan.h"

G_BEGIN_DECLS

HcBook *bench_book (void);
HcPlan *bench_demo_plan (void) G_GNUC_WARN_UNUSED_RESULT;
HcPlan *bench_plan (guint n_pens, guint n_fittings) G_GNUC_WARN_UNUSED_RESULT;

/* Sorts @figures; @part is 0.5 for the median. */
double bench_percentile (double *figures, guint n_figures, double part);

/* Prints a figure beside its bar, and whether it keeps within it. */
void bench_report (const char *what, double figure, double bar, const char *unit);

G_END_DECLS
