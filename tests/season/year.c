/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The year says of each day what the check says of that day. */
#include "config.h"

#include "demo.h"

#define FROM DEMO_FROM
#define WEEKS 30

static HcPlan *
make_plan (HcPlan *demo)
{
  HcPlan *plan = hc_plan_ref (demo);

  for (guint i = 0; i < 5; i++)
    {
      g_autoptr (HcPlan) before = plan;

      plan = demo_with_clutch (before, demo_some_kind (), demo_some_pen (),
                               g_test_rand_int_range (1, 40),
                               FROM + (guint32) g_test_rand_int_range (-60, 100));
    }
  return plan;
}

static void
assert_same (const HcCheck *check, const HcTally *tally, HcNeedId id)
{
  const HcTallied *tallied = &tally->needs[id];

  g_assert_cmpint (tallied->applies, ==, hc_check_applies (check, id));
  if (!tallied->applies)
    return;
  g_assert_cmpint (tallied->level, ==, hc_check_get_need_level (check, id));
  if (hc_need_get (id)->sort != HC_NEED_COUNTING)
    return;
  g_assert_cmpint (tallied->birds, ==, hc_check_get_birds (check, id));
  g_assert_cmpint (tallied->served, ==, hc_check_get_served (check, id, HC_LEVEL_TIGHT));
}

static void
the_year_and_the_check_agree (Demo *demo, gconstpointer data)
{
  HcCondition condition = GPOINTER_TO_INT (data);
  guint at = condition == HC_CONDITION_SHUT_IN;
  g_autoptr (HcPlan) plan = make_plan (demo->plan);
  g_autoptr (HcYear) year
      = hc_year_work_out (demo->tallier, plan, FROM, WEEKS, HC_YEAR_EVERY_NEED);

  g_assert_cmpuint (hc_year_get_n_days (year), >=, WEEKS);
  for (guint i = 0; i < hc_year_get_n_days (year); i += (guint) g_test_rand_int_range (1, 8))
    {
      g_autoptr (HcCheck) check = hc_year_check (year, demo->cache, i, condition);

      for (guint id = 0; id < HC_N_NEEDS; id++)
        assert_same (check, &hc_year_get_day (year, i)->tallies[at], id);
    }
}

/* The count alone is never lower than the whole check, and the worst day is no
 * better than any other. */
static void
no_day_is_worse_than_the_worst (Demo *demo, gconstpointer data)
{
  g_autoptr (HcPlan) plan = make_plan (demo->plan);
  g_autoptr (HcYear) year
      = hc_year_work_out (demo->tallier, plan, FROM, WEEKS, HC_YEAR_COUNTING);
  HcCondition condition;
  const HcTally *worst;
  guint index;

  g_assert_true (hc_year_find_worst (year, &index, &condition));
  worst = hc_year_day_get_worse (hc_year_get_day (year, index), NULL);
  for (guint i = 0; i < hc_year_get_n_days (year); i++)
    {
      const HcYearDay *day = hc_year_get_day (year, i);

      g_assert_false (hc_tally_is_worse (&day->tallies[0], worst));
      g_assert_false (hc_tally_is_worse (&day->tallies[1], worst));
      g_assert_cmpuint (hc_year_find_day (year, day->day), ==, i);
    }
}

/* Moving a date makes another year, and moving it back the same one: nothing
 * that is remembered of a house is about other birds. */
static void
what_is_remembered_changes_nothing (Demo *demo, gconstpointer data)
{
  g_autoptr (HcPlan) plan = make_plan (demo->plan);
  g_autoptr (HcPlan) moved = demo_with_clutch (plan, "duck", "hens", 30, FROM + 40);
  g_autoptr (HcYear) first
      = hc_year_work_out (demo->tallier, plan, FROM, WEEKS, HC_YEAR_COUNTING);
  g_autoptr (HcYear) other
      = hc_year_work_out (demo->tallier, moved, FROM, WEEKS, HC_YEAR_COUNTING);
  g_autoptr (HcTallier) fresh = hc_tallier_new (demo->cache, demo->book);
  g_autoptr (HcYear) cold = hc_year_work_out (fresh, moved, FROM, WEEKS, HC_YEAR_COUNTING);

  g_assert_cmpuint (hc_year_get_n_days (other), ==, hc_year_get_n_days (cold));
  for (guint i = 0; i < hc_year_get_n_days (cold); i++)
    for (guint id = 0; id < HC_N_NEEDS; id++)
      {
        const HcTallied *one = &hc_year_get_day (other, i)->tallies[0].needs[id];
        const HcTallied *two = &hc_year_get_day (cold, i)->tallies[0].needs[id];

        g_assert_cmpint (one->level, ==, two->level);
        g_assert_cmpint (one->served, ==, two->served);
        g_assert_cmpfloat (one->offered, ==, two->offered);
        g_assert_cmpfloat (one->required, ==, two->required);
      }
}

/* Chickens hatch in 21 days: common practice, no source. */
static void
what_happens_is_told_by_its_day (Demo *demo, gconstpointer data)
{
  g_autoptr (HcPlan) plan = demo_with_clutch (demo->plan, "medium_layer", "brooder", 24, FROM + 70);
  g_autoptr (HcYear) year
      = hc_year_work_out (demo->tallier, plan, FROM, WEEKS, HC_YEAR_COUNTING);
  const GArray *events = hc_year_get_events (year);
  gboolean set = FALSE, hatched = FALSE, off_heat = FALSE;

  for (guint i = 0; i < events->len; i++)
    {
      const HcEvent *event = &g_array_index (events, HcEvent, i);

      set = set || (event->what == HC_EVENT_SET && event->on == FROM + 70 && event->count == 24);
      hatched = hatched || (event->what == HC_EVENT_HATCH && event->on == FROM + 91);
      off_heat = off_heat || (event->what == HC_EVENT_OFF_HEAT && event->on == FROM + 91 + 56);
      if (i > 0)
        g_assert_cmpuint (event->on, >=, g_array_index (events, HcEvent, i - 1).on);
    }
  g_assert_true (set);
  g_assert_true (hatched);
  g_assert_true (off_heat);
}

static void
an_empty_house_has_no_worst_day (Demo *demo, gconstpointer data)
{
  HcPlanValues values = *hc_plan_get (demo->plan);
  g_autoptr (HcParts) none = hc_parts_new ();
  g_autoptr (HcPlan) plan = NULL;
  g_autoptr (HcYear) year = NULL;
  HcCondition condition;
  guint index;

  values.batches = none;
  plan = hc_plan_with (demo->plan, &values);
  year = hc_year_work_out (demo->tallier, plan, FROM, 4, HC_YEAR_COUNTING);
  g_assert_cmpuint (hc_year_get_n_days (year), ==, 4);
  g_assert_false (hc_year_find_worst (year, &index, &condition));
}

static void
add (const char *name, int condition, void (*test) (Demo *, gconstpointer))
{
  g_autofree char *path = g_strconcat ("/season/year/", name, NULL);

  g_test_add (path, Demo, GINT_TO_POINTER (condition), demo_set_up, test, demo_tear_down);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  add ("agrees-with-the-check/day", HC_CONDITION_DAY, the_year_and_the_check_agree);
  add ("agrees-with-the-check/shut-in", HC_CONDITION_SHUT_IN, the_year_and_the_check_agree);
  add ("no-day-is-worse-than-the-worst", 0, no_day_is_worse_than_the_worst);
  add ("what-is-remembered-changes-nothing", 0, what_is_remembered_changes_nothing);
  add ("what-happens-is-told-by-its-day", 0, what_happens_is_told_by_its_day);
  add ("an-empty-house-has-no-worst-day", 0, an_empty_house_has_no_worst_day);
  return g_test_run ();
}
