/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What benchmarks share: plans from a seed, times, and a line for each figure. */
#include "config.h"

#include "bench.h"

#include "files/read.h"
#include "plan-maker.h"

#include <math.h>
#include <stdlib.h>

#define SEED 20260000

static HcBook *book;

static void
forget_book (void)
{
  hc_book_unref (book);
}

HcBook *
bench_book (void)
{
  g_autoptr (GError) error = NULL;

  if (book != NULL)
    return book;
  book = hc_book_load_default (&error);
  if (book == NULL)
    g_error ("%s", error->message);
  atexit (forget_book);
  return book;
}

HcPlan *
bench_demo_plan (void)
{
  g_autofree char *path
      = g_build_filename (BENCH_DATA, "demo", "skerry-croft.hencote", NULL);
  g_autofree char *text = NULL;
  g_autoptr (GError) error = NULL;
  g_autoptr (HcPlanFile) file = NULL;
  gsize length;

  if (g_file_get_contents (path, &text, &length, &error))
    file = hc_plan_file_read (text, length, &error);
  if (file == NULL)
    g_error ("%s", error->message);
  return hc_plan_ref (file->plan);
}

HcPlan *
bench_plan (guint n_pens, guint n_fittings)
{
  return plan_maker_make (SEED, n_pens, n_fittings);
}

static int
compare_figures (const void *a, const void *b)
{
  double one = *(const double *) a, other = *(const double *) b;

  return (one > other) - (one < other);
}

double
bench_percentile (double *figures, guint n_figures, double part)
{
  qsort (figures, n_figures, sizeof *figures, compare_figures);
  return figures[MIN ((guint) floor (part * n_figures), n_figures - 1)];
}

void
bench_report (const char *what, double figure, double bar, const char *unit)
{
  g_print ("%s: %.3g %s, bar %g: %s\n", what, figure, unit, bar,
           figure <= bar ? "within" : "over");
}
