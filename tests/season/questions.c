/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Every answer passes, and one more fails, in a plan that really has it. */
#include "config.h"

#include "demo.h"

#include "plan/edit-season.h"
#include "season/ask/question.h"
#include "season/daylight.h"

static HcYearQuestion
ask (HcAsk what)
{
  return (HcYearQuestion) { .ask = what, .from = DEMO_FROM,
                            .weeks = (guint) g_test_rand_int_range (6, 40), .chance = 0.9 };
}

static gboolean
answer (Demo *demo, const HcYearQuestion *question, HcPlan *plan, HcYearAnswer *answer)
{
  g_autoptr (GError) error = NULL;
  gboolean asked = hc_year_question_answer (question, demo->tallier, plan, answer, &error);

  g_assert_true (asked == (error == NULL));
  return asked;
}

/* Whether nobody goes short in @with on account of what @without lacks. */
static gboolean
is_carried (Demo *demo, const HcYearQuestion *question, HcPlan *with, HcPlan *without)
{
  g_autoptr (HcTallier) tallier = hc_tallier_new (demo->cache, demo->book);
  g_autoptr (HcYear) one = hc_year_work_out (tallier, with, question->from, question->weeks,
                                             HC_YEAR_EVERY_DAY);
  g_autoptr (HcYear) other = hc_year_work_out (tallier, without, question->from,
                                               question->weeks, HC_YEAR_EVERY_DAY);
  HcShortfall shortfall;

  return !hc_shortfall_find_in_year (one, other, &shortfall);
}

static void
the_largest_hatch_is_carried_and_one_egg_more_is_not (Demo *demo, gconstpointer data)
{
  HcYearQuestion question = ask (HC_ASK_HATCH);
  HcYearAnswer found;
  const char *pen = demo_some_pen ();
  g_autoptr (HcPlan) most = NULL;
  g_autoptr (HcPlan) more = NULL;

  question.kind = hc_book_get_kind (demo->book, demo_some_kind ());
  question.pen = pen;
  g_assert_true (answer (demo, &question, demo->plan, &found));
  if (!found.limited)
    return;
  most = demo_with_clutch (demo->plan, question.kind->id, pen, (int) found.number, DEMO_FROM);
  more = demo_with_clutch (demo->plan, question.kind->id, pen, (int) found.number + 1, DEMO_FROM);
  g_assert_true (is_carried (demo, &question, most, demo->plan));
  g_assert_false (is_carried (demo, &question, more, demo->plan));
}

/* A heavy hatch for the table that has to go some time. */
static HcPlan *
with_harvest (Demo *demo, int eggs, const char *pen, guint32 on)
{
  HcClutchValues values;
  g_autoptr (HcClutch) clutch = NULL;
  g_autoptr (GError) error = NULL;
  HcPlan *plan;

  hc_clutch_values_init (&values);
  values.kind = (char *) "meat_slow";
  values.pen = (char *) pen;
  values.eggs = eggs;
  values.set_on = DEMO_FROM;
  values.harvest_on = on;
  clutch = hc_clutch_new ("table", &values);
  plan = hc_plan_put_clutch (demo->plan, clutch, &error);
  g_assert_no_error (error);
  return plan;
}

static void
birds_may_stay_until_that_day_and_not_one_longer (Demo *demo, gconstpointer data)
{
  HcYearQuestion question = ask (HC_ASK_GONE);
  int eggs = g_test_rand_int_range (1, 30);
  const char *pen = demo_some_pen ();
  g_autoptr (HcPlan) plan = with_harvest (demo, eggs, pen, 0);
  g_autoptr (HcPlan) in_time = NULL;
  g_autoptr (HcPlan) late = NULL;
  HcYearAnswer found;

  if (!answer (demo, &question, plan, &found) || !found.limited)
    return;
  /* On the day they hatch no harvest can be planned. */
  if (found.day <= DEMO_FROM + 21)
    return;
  in_time = with_harvest (demo, eggs, pen, found.day);
  late = with_harvest (demo, eggs, pen, found.day + 1);
  g_assert_true (is_carried (demo, &question, in_time, demo->plan));
  g_assert_false (is_carried (demo, &question, late, demo->plan));
}

static gboolean
winters (Demo *demo, const HcYearAnswer *found, gint64 hens)
{
  for (guint32 day = found->day; day < found->until; day += 9)
    {
      g_autoptr (HcFlock) flock = hc_flock_on (demo->plan, demo->book, day);
      g_autoptr (HcFlock) with = hc_flock_with_hens (flock, found->kind, hens, "hens");
      g_autoptr (HcFlock) without = hc_flock_with_hens (flock, found->kind, 0, "hens");
      HcShortfall shortfall;

      if (hc_shortfall_find (demo->tallier, with, without, day, &shortfall))
        return FALSE;
    }
  return TRUE;
}

static void
so_many_hens_winter_and_one_more_does_not (Demo *demo, gconstpointer data)
{
  HcYearQuestion question = ask (HC_ASK_WINTER);
  HcYearAnswer found;

  question.weeks = 52;
  question.kind = hc_book_get_kind (demo->book, data);
  question.pen = "hens";
  g_assert_true (answer (demo, &question, demo->plan, &found));
  g_assert_true (found.limited);
  g_assert_cmpuint (found.until, >, found.day);
  g_assert_true (winters (demo, &found, found.number));
  g_assert_false (winters (demo, &found, found.number + 1));
}

static gint64
cold_chicks (Demo *demo, HcPlan *plan, guint32 day)
{
  g_autoptr (HcFlock) flock = hc_flock_on (plan, demo->book, day);
  g_autoptr (HcCheck) check
      = hc_check_plan (demo->cache, plan, demo->book, HC_CONDITION_NIGHT, flock);

  return hc_check_applies (check, HC_NEED_WARMTH)
             ? hc_check_get_birds (check, HC_NEED_WARMTH)
                   - hc_check_get_served (check, HC_NEED_WARMTH, HC_LEVEL_TIGHT)
             : 0;
}

static void
chicks_are_cold_from_that_day_on_and_not_before (Demo *demo, gconstpointer data)
{
  HcYearQuestion question = ask (HC_ASK_WARMTH);
  g_autoptr (HcPlan) plan
      = demo_with_clutch (demo->plan, "medium_layer", demo_some_pen (),
                          g_test_rand_int_range (1, 300), DEMO_FROM + 10);
  HcYearAnswer found;

  g_assert_true (answer (demo, &question, plan, &found));
  for (guint32 day = DEMO_FROM; day < (found.limited ? found.day : DEMO_FROM + 7 * question.weeks);
       day++)
    g_assert_cmpint (cold_chicks (demo, plan, day), ==, 0);
  if (!found.limited)
    return;
  g_assert_cmpint (found.number, >=, 1);
  g_assert_cmpint (cold_chicks (demo, plan, found.day), >, 0);
  g_assert_cmpint (cold_chicks (demo, plan, found.until - 1), >, 0);
  g_assert_cmpint (found.birds, >=, cold_chicks (demo, plan, found.day));
}

static void
so_many_eggs_are_enough_and_one_fewer_is_not (Demo *demo, gconstpointer data)
{
  HcYearQuestion question = ask (HC_ASK_EGGS);
  HcYearAnswer found;

  question.kind = hc_book_get_kind (demo->book, demo_some_kind ());
  question.wanted = (guint) g_test_rand_int_range (1, 20);
  question.who = (HcClutchWho) g_test_rand_int_range (0, 3);
  g_assert_true (answer (demo, &question, demo->plan, &found));
  g_assert_cmpint (found.number, >=, question.wanted);
  g_assert_cmpfloat (found.chance, >=, 0.9);
  g_assert_cmpfloat (found.chance_before, <, 0.9);
}

/* A question that lacks something says what. */
static void
what_is_missing_is_said (Demo *demo, gconstpointer data)
{
  static const HcAsk asks[] = { HC_ASK_HATCH, HC_ASK_EGGS };
  HcYearAnswer found;

  for (guint i = 0; i < G_N_ELEMENTS (asks); i++)
    {
      HcYearQuestion question = ask (asks[i]);

      g_assert_false (answer (demo, &question, demo->plan, &found));
    }
}

/* Equinox to equinox; the length of the longest day at 54° from an almanac
 * (17 h 4 min in June, 7 h 30 min in December), from memory. */
static void
days_are_as_long_as_in_the_almanac (Demo *demo, gconstpointer data)
{
  guint32 june = DEMO_FROM + 112, december = DEMO_FROM + 295, september = DEMO_FROM + 206;

  g_assert_cmpfloat_with_epsilon (hc_daylight_hours (54, june), 17.1, 0.15);
  g_assert_cmpfloat_with_epsilon (hc_daylight_hours (54, december), 7.45, 0.15);
  g_assert_cmpfloat_with_epsilon (hc_daylight_hours (0, june), 12.1, 0.05);
  g_assert_cmpfloat_with_epsilon (hc_daylight_hours (90, june), 24, 1e-6);
  g_assert_cmpfloat_with_epsilon (hc_daylight_hours (54, september), 12.1, 0.2);
  g_assert_true (hc_daylight_is_dark_half (54, december));
  g_assert_false (hc_daylight_is_dark_half (-54, december));
}

static void
add (const char *name, const char *data, void (*test) (Demo *, gconstpointer))
{
  g_autofree char *path = g_strconcat ("/season/questions/", name, NULL);

  g_test_add (path, Demo, data, demo_set_up, test, demo_tear_down);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  add ("hatch", NULL, the_largest_hatch_is_carried_and_one_egg_more_is_not);
  add ("gone", NULL, birds_may_stay_until_that_day_and_not_one_longer);
  add ("winter/bantam", "bantam", so_many_hens_winter_and_one_more_does_not);
  add ("winter/heavy", "heavy_breed", so_many_hens_winter_and_one_more_does_not);
  add ("warmth", NULL, chicks_are_cold_from_that_day_on_and_not_before);
  add ("eggs", NULL, so_many_eggs_are_enough_and_one_fewer_is_not);
  add ("missing", NULL, what_is_missing_is_said);
  add ("daylight", NULL, days_are_as_long_as_in_the_almanac);
  return g_test_run ();
}
