/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Five years of 20 groups and 50 settings of eggs in the demo house, again
 * after a date was moved. */
#include "config.h"

#include "bench.h"
#include "climate/year-nights.h"
#include "season/year.h"
#include "yardstick.h"

#define N_RUNS 15
#define N_BATCHES 20
#define N_CLUTCHES 50
#define WEEKS 260
/* 2026-03-01 */
#define FROM 739676
#define MOST_MS 20
#define MOST_AIR_MS 200

static const char *const kinds[]
    = { "medium_layer", "heavy_breed", "bantam", "duck", "meat_slow", "light_layer" };

static const char *const pens[] = { "hens", "brooder", "ducks", "ark-house" };

/* Each group is grown in a year and a half and gone in three. */
static HcBatch *
make_batch (guint i, guint32 from)
{
  g_autofree char *id = g_strdup_printf ("group-%u", i);
  HcLeavingValues leaving = { from + 400 + i * 60, HC_LEAVING_SOLD };
  g_autoptr (HcLeaving) gone = hc_leaving_new ("gone", &leaving);
  g_autoptr (HcParts) none = hc_parts_new ();
  g_autoptr (HcParts) leavings = hc_parts_with (none, gone);
  HcBatchValues values;

  hc_batch_values_init (&values);
  values.kind = (char *) kinds[i % G_N_ELEMENTS (kinds)];
  values.females = 6;
  values.males = 1;
  values.hatched = from + i * 60 - 300;
  values.pen = (char *) pens[i % G_N_ELEMENTS (pens)];
  values.leavings = leavings;
  return hc_batch_new (id, &values);
}

static HcClutch *
make_clutch (guint i, guint32 set_on)
{
  g_autofree char *id = g_strdup_printf ("eggs-%u", i);
  HcStepValues move = { 8, HC_STEP_MOVE, HC_STEP_ALL, (char *) "ark-house" };
  HcStepValues harvest = { 18, HC_STEP_HARVEST, HC_STEP_ALL, NULL };
  g_autoptr (HcStep) one = hc_step_new ("move", &move);
  g_autoptr (HcStep) other = hc_step_new ("harvest", &harvest);
  g_autoptr (HcParts) none = hc_parts_new ();
  g_autoptr (HcParts) first = hc_parts_with (none, one);
  g_autoptr (HcParts) both = hc_parts_with (first, other);
  HcClutchValues values;

  hc_clutch_values_init (&values);
  values.kind = (char *) kinds[i % G_N_ELEMENTS (kinds)];
  values.set_on = set_on;
  values.eggs = 24;
  values.pen = (char *) "brooder";
  values.steps = both;
  return hc_clutch_new (id, &values);
}

static HcPlan *
make_plan (HcPlan *demo, guint32 from, guint moved)
{
  HcPlanValues values = *hc_plan_get (demo);
  g_autoptr (HcParts) batches = hc_parts_new ();
  g_autoptr (HcParts) clutches = hc_parts_new ();

  for (guint i = 0; i < N_BATCHES; i++)
    g_ptr_array_add (batches, make_batch (i, from));
  for (guint i = 0; i < N_CLUTCHES; i++)
    g_ptr_array_add (clutches, make_clutch (i, from + i * 36 + (i == 25 ? moved : 0)));
  values.batches = batches;
  values.clutches = clutches;
  return hc_plan_with (demo, &values);
}

/* Every week's cold night and hot day, with the birds of that week. */
static double
time_nights_ms (HcPlan *plan)
{
  double start_ms = hc_processor_ms ();
  g_autoptr (HcYearNights) nights = hc_year_nights_new (plan, NULL);

  for (guint32 day = FROM; day < FROM + 7 * WEEKS; day += 7)
    {
      g_autoptr (HcFlock) flock = hc_flock_on (plan, bench_book (), day);
      HcYearNight week;

      hc_year_nights_work_out (nights, flock, day, &week);
    }
  return hc_processor_ms () - start_ms;
}

int
main (void)
{
  g_autoptr (HcCheckCache) cache = hc_check_cache_new ();
  g_autoptr (HcTallier) tallier = hc_tallier_new (cache, bench_book ());
  g_autoptr (HcPlan) demo = bench_demo_plan ();
  g_autoptr (HcPlan) for_air = make_plan (demo, FROM, 0);
  double times_ms[N_RUNS];

  for (guint i = 0; i < N_RUNS; i++)
    {
      g_autoptr (HcPlan) plan = make_plan (demo, FROM, i);
      double start_ms = hc_processor_ms ();
      g_autoptr (HcYear) year = hc_year_work_out (tallier, plan, FROM, WEEKS, HC_YEAR_COUNTING);

      times_ms[i] = hc_processor_ms () - start_ms;
    }
  bench_report ("five years, again after a date was moved, median",
                bench_percentile (times_ms + 1, N_RUNS - 1, 0.5), MOST_MS, "ms");
  bench_report ("cold nights and hot days of five years", time_nights_ms (for_air), MOST_AIR_MS,
                "ms");
  return 0;
}
