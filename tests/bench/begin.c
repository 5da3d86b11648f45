/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A plan from three answers, for as many birds as a large house carries. */
#include "config.h"

#include "begin/three-questions.h"
#include "bench.h"
#include "yardstick.h"

#define N_RUNS 15
#define MOST_Y 30

static double
begin_ms (const HcWantedBirds *birds)
{
  HcAnswers answers = { 8000, 12000, birds, 1, -10, TRUE, HC_UNITS_METRIC };
  double start_ms = hc_processor_ms ();
  g_autoptr (HcPlan) plan = hc_plan_from_answers (bench_book (), &answers, "begin", NULL);

  g_assert_nonnull (plan);
  return hc_processor_ms () - start_ms;
}

int
main (void)
{
  const HcWantedBirds birds[]
      = { { "rhode-island-red", 200 }, { "pekin-duck", 200 }, { "broiler-cross-fast", 200 } };

  for (guint i = 0; i < G_N_ELEMENTS (birds); i++)
    {
      g_autofree char *what
          = g_strdup_printf ("three questions, %d %s in 12 by 8 m, median", birds[i].count,
                             birds[i].breed);
      double y_ms = hc_yardstick_ms ();
      double times_ms[N_RUNS];

      for (guint run = 0; run < N_RUNS; run++)
        times_ms[run] = begin_ms (&birds[i]);
      bench_report (what, bench_percentile (times_ms, N_RUNS, 0.5) / y_ms, MOST_Y, "Y");
    }
  return 0;
}
