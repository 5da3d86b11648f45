/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A full check of one pen that grows with what stands in it: ten times the
 * things in ten times the floor take little more than ten times the time. */
#include "config.h"

#include "bench.h"
#include "needs/check.h"
#include "plan/edit-fitting.h"
#include "yardstick.h"

#include <math.h>

#define N_RUNS 5
#define N_BARS 1000
#define MOST_SECONDS_OF_BARS 1

static double
check_ms (HcPlan *plan)
{
  double times_ms[N_RUNS];

  for (guint i = 0; i < N_RUNS; i++)
    {
      double start_ms = hc_processor_ms ();
      g_autoptr (HcCheckCache) cache = hc_check_cache_new ();
      g_autoptr (HcFlock) flock = hc_flock_on (plan, bench_book (), hc_plan_get_day (plan));
      g_autoptr (HcCheck) check
          = hc_check_plan (cache, plan, bench_book (), HC_CONDITION_DAY, flock);

      times_ms[i] = hc_processor_ms () - start_ms;
    }
  return bench_percentile (times_ms, N_RUNS, 0.5);
}

static HcPlan *
with_fittings (HcPlan *plan, HcParts *fittings)
{
  HcLayout *layout = hc_plan_get_layout (plan);
  HcLayoutValues values = *hc_layout_get (layout);
  g_autoptr (HcParts) pens = hc_parts_new ();
  HcPenValues pen = *hc_pen_get (values.pens->pdata[0]);
  g_autoptr (HcLayout) other = NULL;

  pen.fittings = fittings;
  g_ptr_array_add (pens, hc_pen_new (hc_pen_get_id (values.pens->pdata[0]), &pen));
  values.pens = pens;
  other = hc_layout_with (layout, &values);
  return hc_plan_with_layout (plan, other);
}

/* All that stands there turned into roosts of two bars. */
static HcPlan *
make_plan_of_bars (guint n_bars)
{
  g_autoptr (HcPlan) plan = bench_plan (1, n_bars / 2);
  HcParts *before = hc_pen_get (hc_layout_get (hc_plan_get_layout (plan))->pens->pdata[0])->fittings;
  g_autoptr (HcParts) roosts = hc_parts_new ();

  for (guint i = 0; i < before->len; i++)
    {
      HcFittingValues values = *hc_fitting_get (before->pdata[i]);

      values.kind = HC_FITTING_ROOST;
      values.bars = 2;
      g_ptr_array_add (roosts, hc_fitting_new (hc_fitting_get_id (before->pdata[i]), &values));
    }
  return with_fittings (plan, roosts);
}

int
main (void)
{
  static const guint sizes[] = { 10, 100, 1000 };
  double times_ms[G_N_ELEMENTS (sizes)];
  g_autoptr (HcPlan) bars = make_plan_of_bars (N_BARS);

  for (guint i = 0; i < G_N_ELEMENTS (sizes); i++)
    {
      g_autoptr (HcPlan) plan = bench_plan (1, sizes[i]);

      times_ms[i] = check_ms (plan);
      g_print ("%u fittings in one pen: %.3g times the check of 10\n", sizes[i],
               times_ms[i] / times_ms[0]);
    }
  for (guint i = 1; i < G_N_ELEMENTS (sizes); i++)
    {
      g_autofree char *what = g_strdup_printf ("growth from %u to %u fittings, against n log n",
                                               sizes[i - 1], sizes[i]);
      double allowed = sizes[i] * log (sizes[i]) / (sizes[i - 1] * log (sizes[i - 1]));

      bench_report (what, times_ms[i] / times_ms[i - 1] / allowed, 1, "times");
    }
  bench_report ("a pen of 1,000 bars", check_ms (bars) / 1000, MOST_SECONDS_OF_BARS, "s");
  return 0;
}
