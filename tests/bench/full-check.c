/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A full check of the demo plan with nothing kept from before. */
#include "config.h"

#include "bench.h"
#include "needs/check.h"
#include "yardstick.h"

#define N_RUNS 51
#define MOST_Y 3

static double
check_ms (HcPlan *plan)
{
  double start_ms = hc_processor_ms ();
  g_autoptr (HcCheckCache) cache = hc_check_cache_new ();
  g_autoptr (HcFlock) flock = hc_flock_on (plan, bench_book (), hc_plan_get_day (plan));
  g_autoptr (HcCheck) check
      = hc_check_plan (cache, plan, bench_book (), HC_CONDITION_DAY, flock);

  return hc_processor_ms () - start_ms;
}

int
main (void)
{
  double y_ms = hc_yardstick_ms ();
  g_autoptr (HcPlan) plan = bench_demo_plan ();
  double times_ms[N_RUNS];

  for (guint i = 0; i < N_RUNS; i++)
    times_ms[i] = check_ms (plan);
  bench_report ("full check of the demo plan, median",
                bench_percentile (times_ms, N_RUNS, 0.5) / y_ms, MOST_Y, "Y");
  return 0;
}
