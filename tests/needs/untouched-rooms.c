/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What an edit leaves alone costs no geometry. */
#include "config.h"

#include "base/shape-ops.h"
#include "needs/check.h"
#include "plan-maker.h"
#include "plan/edit-fitting.h"
#include "plan/edit-plan.h"

#define N_PENS 6
#define TOUCHED 3

typedef struct
{
  HcBook *book;
  HcCheckCache *cache;
} Desk;

/* @before: (nullable): the plan judged before a drag that @plan is a step of */
static HcCheck *
judge (Desk *desk, HcPlan *plan, HcCheck *before, guint64 *calls)
{
  guint64 start = hc_geometry_calls ();
  g_autoptr (HcFlock) flock = hc_flock_on (plan, desk->book, hc_plan_get_day (plan));
  HcCheck *check
      = before != NULL
            ? hc_check_follow (before, desk->cache, plan, desk->book, flock)
            : hc_check_plan (desk->cache, plan, desk->book, HC_CONDITION_DAY, flock);

  *calls = hc_geometry_calls () - start;
  return check;
}

static void
desk_init (Desk *desk)
{
  g_autoptr (GError) error = NULL;

  desk->book = hc_book_load_default (&error);
  g_assert_no_error (error);
  desk->cache = hc_check_cache_new ();
}

static void
desk_clear (Desk *desk)
{
  hc_check_cache_free (desk->cache);
  hc_book_unref (desk->book);
}

/* Nothing stands in any pen but the touched one. */
static HcPlan *
with_other_pens_empty (HcPlan *plan)
{
  HcLayout *layout = hc_plan_get_layout (plan);
  HcLayoutValues values = *hc_layout_get (layout);
  g_autoptr (HcParts) pens = hc_parts_new ();
  g_autoptr (HcParts) nothing = hc_parts_new ();
  g_autoptr (HcLayout) cleared = NULL;

  for (guint i = 0; i < values.pens->len; i++)
    {
      HcPenValues pen = *hc_pen_get (values.pens->pdata[i]);

      if (i != TOUCHED)
        pen.fittings = nothing;
      g_ptr_array_add (pens, hc_pen_new (hc_pen_get_id (values.pens->pdata[i]), &pen));
    }
  values.pens = pens;
  cleared = hc_layout_with (layout, &values);
  return hc_plan_with_layout (plan, cleared);
}

static HcPlan *
with_a_move (HcPlan *plan)
{
  HcPen *pen = hc_layout_get (hc_plan_get_layout (plan))->pens->pdata[TOUCHED];
  const char *const ids[] = { hc_fitting_get_id (hc_pen_get (pen)->fittings->pdata[0]), NULL };
  g_autoptr (GError) error = NULL;
  HcPlan *moved = hc_plan_move_fittings (plan, ids, hc_point (10, 20), &error);

  g_assert_no_error (error);
  return moved;
}

/* The calls of a step of a drag, after everything was looked at once. */
static guint64
count_calls_of_a_move (HcPlan *plan, guint64 *calls_before)
{
  g_autoptr (HcPlan) moved = with_a_move (plan);
  g_autoptr (HcCheck) before = NULL;
  g_autoptr (HcCheck) after = NULL;
  guint64 calls;
  Desk desk;

  desk_init (&desk);
  before = judge (&desk, plan, NULL, calls_before);
  after = judge (&desk, moved, before, &calls);
  desk_clear (&desk);
  return calls;
}

static void
test_other_rooms_cost_a_move_nothing (void)
{
  g_autoptr (HcPlan) full = plan_maker_make (g_test_rand_int (), N_PENS, 20 * N_PENS);
  g_autoptr (HcPlan) sparse = with_other_pens_empty (full);
  guint64 full_before, sparse_before;
  guint64 calls = count_calls_of_a_move (full, &full_before);

  g_assert_cmpuint (calls, ==, count_calls_of_a_move (sparse, &sparse_before));
  g_assert_cmpuint (calls, <, full_before);
}

static void
test_words_cost_nothing (void)
{
  g_autoptr (HcPlan) plan = plan_maker_make (g_test_rand_int (), N_PENS, 20 * N_PENS);
  g_autoptr (HcPlan) renamed = hc_plan_set_title (plan, "Another name");
  g_autoptr (HcCheck) before = NULL;
  g_autoptr (HcCheck) after = NULL;
  guint64 calls;
  Desk desk;

  desk_init (&desk);
  before = judge (&desk, plan, NULL, &calls);
  g_assert_cmpuint (calls, >, 0);
  after = judge (&desk, renamed, NULL, &calls);
  g_assert_cmpuint (calls, ==, 0);
  desk_clear (&desk);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/untouched-rooms/other-rooms-cost-a-move-nothing",
                   test_other_rooms_cost_a_move_nothing);
  g_test_add_func ("/untouched-rooms/words-cost-nothing", test_words_cost_nothing);
  return g_test_run ();
}
