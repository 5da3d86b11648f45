/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A thing dragged among 300 in 10 pens: each move is an edit and a check. */
#include "config.h"

#include "base/shape-ops.h"
#include "bench.h"
#include "needs/check.h"
#include "plan/edit-fitting.h"
#include "yardstick.h"

#define N_PENS 10
#define N_FITTINGS 300
#define N_MOVES 1000
#define MOVES_A_THING 50
#define STEP_MM 7
#define MOST_Y_WITHIN 1.5
#define MOST_Y_ACROSS 2.5

typedef struct
{
  HcPlan *plan;
  HcCheckCache *cache;
  HcCheck *before;
  double y_ms;
  double times_y[N_MOVES];
  guint64 geometry_calls;
} Drag;

static HcFlock *
get_flock (const Drag *drag)
{
  return hc_flock_on (drag->plan, bench_book (), hc_plan_get_day (drag->plan));
}

/* As the window does it while a drag lasts: needs that settle wait for its end. */
static void
check (Drag *drag)
{
  g_autoptr (HcFlock) flock = get_flock (drag);
  g_autoptr (HcCheck) answers
      = hc_check_follow (drag->before, drag->cache, drag->plan, bench_book (), flock);
}

static HcPen *
get_pen (const Drag *drag, guint pen)
{
  return hc_layout_get (hc_plan_get_layout (drag->plan))->pens->pdata[pen];
}

/* The yardstick is laid on anew with each thing: a machine's pace changes. */
static char *
take_up_fitting (Drag *drag, GRand *chance, guint pen)
{
  HcParts *fittings = hc_pen_get (get_pen (drag, pen))->fittings;
  int fitting = g_rand_int_range (chance, 0, (int) fittings->len);

  drag->y_ms = hc_yardstick_ms ();
  return g_strdup (hc_fitting_get_id (fittings->pdata[fitting]));
}

static double
move (Drag *drag, const char *id, HcPoint by)
{
  const char *const ids[] = { id, NULL };
  double start_ms = hc_processor_ms ();
  g_autoptr (GError) error = NULL;
  HcPlan *moved = hc_plan_move_fittings (drag->plan, ids, by, &error);

  if (moved == NULL)
    g_error ("%s", error->message);
  hc_plan_unref (drag->plan);
  drag->plan = moved;
  check (drag);
  return (hc_processor_ms () - start_ms) / drag->y_ms;
}

static void
drag_init (Drag *drag)
{
  g_autoptr (HcFlock) flock = NULL;

  drag->plan = bench_plan (N_PENS, N_FITTINGS);
  flock = get_flock (drag);
  drag->cache = hc_check_cache_new ();
  drag->before
      = hc_check_plan (drag->cache, drag->plan, bench_book (), HC_CONDITION_DAY, flock);
  drag->geometry_calls = hc_geometry_calls ();
}

static void
drag_finish (Drag *drag, const char *what, double bar)
{
  g_autofree char *last = g_strconcat (what, ", 99th percentile", NULL);

  g_print ("%s, median: %.3g Y, %.1f GEOS calls a move\n", what,
           bench_percentile (drag->times_y, N_MOVES, 0.5),
           (double) (hc_geometry_calls () - drag->geometry_calls) / N_MOVES);
  bench_report (last, bench_percentile (drag->times_y, N_MOVES, 0.99), bar, "Y");
  hc_check_unref (drag->before);
  hc_check_cache_free (drag->cache);
  hc_plan_unref (drag->plan);
}

/* To and fro, in one room after the other. */
static void
drag_within (void)
{
  g_autoptr (GRand) chance = g_rand_new_with_seed (1);
  g_autofree char *id = NULL;
  Drag drag;

  drag_init (&drag);
  for (guint i = 0; i < N_MOVES; i++)
    {
      double way = i % MOVES_A_THING < MOVES_A_THING / 2 ? STEP_MM : -STEP_MM;

      if (i % MOVES_A_THING == 0)
        {
          g_free (id);
          id = take_up_fitting (&drag, chance, i / MOVES_A_THING % N_PENS);
        }
      drag.times_y[i] = move (&drag, id, hc_point (way, way / 2));
    }
  drag_finish (&drag, "drag within one room", MOST_Y_WITHIN);
}

/* Every move takes the thing into the next pen, or back, and on a little. */
static void
drag_across (void)
{
  g_autoptr (GRand) chance = g_rand_new_with_seed (2);
  g_autofree char *id = NULL;
  Drag drag;
  double side_mm;

  drag_init (&drag);
  side_mm = hc_corner_get (hc_layout_get (hc_plan_get_layout (drag.plan))->corners->pdata[2])
                ->x_mm;
  for (guint i = 0; i < N_MOVES; i++)
    {
      if (i % MOVES_A_THING == 0)
        {
          g_free (id);
          id = take_up_fitting (&drag, chance, i / MOVES_A_THING % (N_PENS - 1));
        }
      drag.times_y[i]
          = move (&drag, id, hc_point (i % 2 == 0 ? side_mm : STEP_MM - side_mm, 0));
    }
  drag_finish (&drag, "drag across rooms", MOST_Y_ACROSS);
}

int
main (void)
{
  drag_within ();
  drag_across ();
  return 0;
}
