/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Everything to do falls on its day, is known again, and can be ticked off. */
#include "config.h"

#include "../sample/season-sample.h"
#include "season/chores/tasks.h"

static void
set_up (SeasonSample *sample, gconstpointer data)
{
  season_sample_init (sample);
}

static void
tear_down (SeasonSample *sample, gconstpointer data)
{
  season_sample_clear (sample);
}

static const HcTask *
find (const GArray *tasks, HcTaskWhat what, guint nth)
{
  for (guint i = 0; i < tasks->len; i++)
    if (g_array_index (tasks, HcTask, i).what == what && nth-- == 0)
      return &g_array_index (tasks, HcTask, i);
  return NULL;
}

static GArray *
list (const SeasonSample *sample, HcPlan **plan)
{
  *plan = season_sample_plan (sample);
  return hc_tasks_of (*plan, sample->book, SAMPLE_DAY - 30, 60);
}

/* Chickens: candled after 7 and 14 days, turning stops after 18, hatched after
 * 21: common practice, no source. */
static void
eggs_are_looked_after_by_their_day (SeasonSample *sample, gconstpointer data)
{
  g_autoptr (HcPlan) plan = NULL;
  g_autoptr (GArray) tasks = NULL;

  season_sample_add_clutch (sample, "e", "medium_layer", SAMPLE_DAY, 24);
  tasks = list (sample, &plan);
  g_assert_cmpuint (find (tasks, HC_TASK_SET, 0)->on, ==, SAMPLE_DAY);
  g_assert_cmpuint (find (tasks, HC_TASK_CANDLE, 0)->on, ==, SAMPLE_DAY + 7);
  g_assert_cmpuint (find (tasks, HC_TASK_CANDLE, 1)->on, ==, SAMPLE_DAY + 14);
  g_assert_cmpuint (find (tasks, HC_TASK_STOP_TURNING, 0)->on, ==, SAMPLE_DAY + 18);
  g_assert_cmpuint (find (tasks, HC_TASK_HATCH, 0)->on, ==, SAMPLE_DAY + 21);
  g_assert_cmpuint (find (tasks, HC_TASK_OFF_HEAT, 0)->on, ==, SAMPLE_DAY + 21 + 56);
  g_assert_cmpuint (find (tasks, HC_TASK_RAISE_PLATE, 0)->on, ==, SAMPLE_DAY + 28);
  g_assert_nonnull (find (tasks, HC_TASK_RAISE_PLATE, 6));
  g_assert_null (find (tasks, HC_TASK_RAISE_PLATE, 7));
}

static void
moves_and_harvests_are_there (SeasonSample *sample, gconstpointer data)
{
  g_autoptr (HcPlan) plan = NULL;
  g_autoptr (GArray) tasks = NULL;

  season_sample_add_batch (sample, "b", "meat_slow", 10, 10, SAMPLE_DAY - 20);
  season_sample_add_move (sample, "b", SAMPLE_DAY + 30, "two", 0, 0);
  season_sample_add_leaving (sample, "b", SAMPLE_DAY + 70, HC_LEAVING_HARVESTED, 4, 5);
  season_sample_add_leaving (sample, "b", SAMPLE_DAY + 75, HC_LEAVING_DIED, 1, 0);
  season_sample_add_leaving (sample, "b", SAMPLE_DAY + 80, HC_LEAVING_SOLD, 2, 0);
  tasks = list (sample, &plan);
  g_assert_cmpint (find (tasks, HC_TASK_MOVE, 0)->count, ==, 20);
  g_assert_cmpstr (find (tasks, HC_TASK_MOVE, 0)->pen, ==, "two");
  g_assert_cmpint (find (tasks, HC_TASK_HARVEST, 0)->count, ==, 9);
  g_assert_cmpuint (find (tasks, HC_TASK_SELL, 0)->on, ==, SAMPLE_DAY + 80);
  g_assert_null (find (tasks, HC_TASK_HARVEST, 1));
}

static void
the_lamp_goes_on_when_days_are_short (SeasonSample *sample, gconstpointer data)
{
  g_autoptr (HcPlan) plan = NULL;
  g_autoptr (GArray) tasks = NULL;

  sample->keeping.light_hours = 14;
  season_sample_add_batch (sample, "b", "light_layer", 10, 0, SAMPLE_DAY - 300);
  tasks = list (sample, &plan);
  g_assert_cmpuint (find (tasks, HC_TASK_LIGHT_OFF, 0)->on, <,
                    find (tasks, HC_TASK_LIGHT_ON, 0)->on);
  g_assert_nonnull (find (tasks, HC_TASK_MESH_CHECK, 0));
}

/* Whatever day something moves to, its id stays; no two share one. */
static void
ids_stay_when_days_move (SeasonSample *sample, gconstpointer data)
{
  g_autoptr (HcPlan) plan = NULL;
  g_autoptr (HcPlan) moved = NULL;
  g_autoptr (GArray) tasks = NULL;
  g_autoptr (GArray) later = NULL;
  g_autoptr (GHashTable) uids = g_hash_table_new_full (g_str_hash, g_str_equal, g_free, NULL);

  season_sample_add_batch (sample, "b", "meat_slow", 10, 10, SAMPLE_DAY - 20);
  season_sample_add_move (sample, "b", SAMPLE_DAY + 30, "two", 0, 0);
  season_sample_add_clutch (sample, "e", "medium_layer", SAMPLE_DAY, 24);
  season_sample_repeat (sample, "e", 4, 5, 0);
  tasks = list (sample, &plan);
  for (guint i = 0; i < tasks->len; i++)
    g_assert_true (g_hash_table_add (
        uids, hc_task_get_uid (&g_array_index (tasks, HcTask, i), plan)));
  season_sample_add_clutch (sample, "e", "medium_layer", SAMPLE_DAY + 9, 24);
  season_sample_repeat (sample, "e", 4, 5, 0);
  later = list (sample, &moved);
  for (guint i = 0; i < later->len; i++)
    {
      g_autofree char *uid = hc_task_get_uid (&g_array_index (later, HcTask, i), moved);

      g_assert_true (g_hash_table_contains (uids, uid));
    }
}

static HcPlan *
with_chore (HcPlan *plan, const char *what, const char *of, guint32 on, guint32 done)
{
  HcPlanValues values = *hc_plan_get (plan);
  HcChoreValues chore = { (char *) what, (char *) of, on, (char *) "Paint the door", done };
  g_autoptr (HcChore) part = hc_chore_new ("k", &chore);
  g_autoptr (HcParts) chores = hc_parts_with (values.chores, part);

  values.chores = chores;
  return hc_plan_with (plan, &values);
}

static void
a_tick_is_seen_and_own_chores_are_kept (SeasonSample *sample, gconstpointer data)
{
  g_autoptr (HcPlan) plan = NULL;
  g_autoptr (HcPlan) ticked = NULL;
  g_autoptr (HcPlan) own = NULL;
  g_autoptr (GArray) tasks = NULL;
  g_autoptr (GArray) with_own = NULL;

  season_sample_add_clutch (sample, "e", "medium_layer", SAMPLE_DAY, 24);
  plan = season_sample_plan (sample);
  ticked = with_chore (plan, "candle", "e", SAMPLE_DAY + 7, SAMPLE_DAY + 8);
  tasks = hc_tasks_of (ticked, sample->book, SAMPLE_DAY, 10);
  g_assert_cmpuint (find (tasks, HC_TASK_CANDLE, 0)->done, ==, SAMPLE_DAY + 8);
  g_assert_cmpuint (find (tasks, HC_TASK_CANDLE, 1)->done, ==, 0);
  own = with_chore (plan, "", "", SAMPLE_DAY + 3, 0);
  with_own = hc_tasks_of (own, sample->book, SAMPLE_DAY, 10);
  g_assert_cmpstr (find (with_own, HC_TASK_OWN, 0)->name, ==, "Paint the door");
}

static void
add (const char *name, void (*test) (SeasonSample *, gconstpointer))
{
  g_autofree char *path = g_strconcat ("/season/tasks/", name, NULL);

  g_test_add (path, SeasonSample, NULL, set_up, test, tear_down);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  add ("eggs", eggs_are_looked_after_by_their_day);
  add ("birds", moves_and_harvests_are_there);
  add ("seasons", the_lamp_goes_on_when_days_are_short);
  add ("ids", ids_stay_when_days_move);
  add ("ticks", a_tick_is_seen_and_own_chores_are_kept);
  return g_test_run ();
}
