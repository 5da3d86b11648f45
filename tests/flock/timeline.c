/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Where everyone is on a day, after moves, losses and harvests. */
#include "config.h"

#include "flock/flock.h"
#include "flock/timeline.h"
#include "../sample/season-sample.h"

static gint64
birds_in (const SeasonSample *sample, guint32 day, const char *pen)
{
  g_autoptr (HcFlock) flock = season_sample_flock (sample, day);
  const char *pens[] = { pen, NULL };
  g_autoptr (HcFlock) inside = hc_flock_in_pens (flock, pens);

  return hc_flock_get_total (inside);
}

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

static void
birds_are_where_they_moved (SeasonSample *sample, gconstpointer data)
{
  season_sample_add_batch (sample, "b", "medium_layer", 10, 4, SAMPLE_DAY);
  season_sample_add_move (sample, "b", SAMPLE_DAY + 42, "two", 0, 0);
  season_sample_add_move (sample, "b", SAMPLE_DAY + 84, "one", 3, 0);
  g_assert_cmpint (birds_in (sample, SAMPLE_DAY - 1, "one"), ==, 0);
  g_assert_cmpint (birds_in (sample, SAMPLE_DAY, "one"), ==, 14);
  g_assert_cmpint (birds_in (sample, SAMPLE_DAY + 41, "one"), ==, 14);
  g_assert_cmpint (birds_in (sample, SAMPLE_DAY + 42, "two"), ==, 14);
  g_assert_cmpint (birds_in (sample, SAMPLE_DAY + 84, "one"), ==, 3);
  g_assert_cmpint (birds_in (sample, SAMPLE_DAY + 84, "two"), ==, 11);
}

static void
losses_are_gone_from_the_day_on (SeasonSample *sample, gconstpointer data)
{
  season_sample_add_batch (sample, "b", "medium_layer", 10, 4, SAMPLE_DAY);
  season_sample_add_leaving (sample, "b", SAMPLE_DAY + 5, HC_LEAVING_PREDATOR, 2, 0);
  season_sample_add_leaving (sample, "b", SAMPLE_DAY + 100, HC_LEAVING_HARVESTED, 0, 4);
  g_assert_cmpint (birds_in (sample, SAMPLE_DAY + 4, "one"), ==, 14);
  g_assert_cmpint (birds_in (sample, SAMPLE_DAY + 5, "one"), ==, 12);
  g_assert_cmpint (birds_in (sample, SAMPLE_DAY + 99, "one"), ==, 12);
  g_assert_cmpint (birds_in (sample, SAMPLE_DAY + 100, "one"), ==, 8);
}

/* Whatever happens, birds that are there and birds that left come to those
 * there were. */
static void
nobody_is_lost_on_paper (SeasonSample *sample, gconstpointer data)
{
  g_autoptr (HcTimeline) timeline = NULL;
  int gone = 0;

  season_sample_add_batch (sample, "b", "duck", 40, 30, SAMPLE_DAY);
  for (guint i = 0; i < 12; i++)
    {
      guint32 day = SAMPLE_DAY + (guint32) g_test_rand_int_range (1, 300);

      season_sample_add_move (sample, "b", day, i % 2 ? "two" : "one",
                              g_test_rand_int_range (0, 9), g_test_rand_int_range (0, 9));
      season_sample_add_leaving (sample, "b", day + 1, HC_LEAVING_SOLD, 1, 2);
    }
  timeline = season_sample_timeline (sample);
  for (guint i = 0; i < timeline->departures->len; i++)
    gone += g_array_index (timeline->departures, HcDeparture, i).count;
  g_assert_cmpint (gone, ==, 36);
  g_assert_cmpint (birds_in (sample, SAMPLE_DAY + 400, "one")
                       + birds_in (sample, SAMPLE_DAY + 400, "two"), ==, 70 - gone);
}

static void
bought_birds_are_there_from_the_day_they_came (SeasonSample *sample, gconstpointer data)
{
  season_sample_add_batch (sample, "b", "medium_layer", 6, 0, SAMPLE_DAY);
  season_sample_set_came (sample, "b", SAMPLE_DAY + 112);
  g_assert_cmpint (birds_in (sample, SAMPLE_DAY + 111, "one"), ==, 0);
  g_assert_cmpint (birds_in (sample, SAMPLE_DAY + 112, "one"), ==, 6);
}

/* Chickens hatch in 21 days: common practice, no source. */
static void
eggs_give_the_chicks_the_house_must_carry (SeasonSample *sample, gconstpointer data)
{
  g_autoptr (HcTimeline) timeline = NULL;
  const HcSetting *setting;

  season_sample_add_clutch (sample, "e", "medium_layer", SAMPLE_DAY, 24);
  timeline = season_sample_timeline (sample);
  setting = &g_array_index (timeline->settings, HcSetting, 0);
  g_assert_cmpuint (setting->hatch_on, ==, SAMPLE_DAY + 21);
  g_assert_cmpuint (setting->low, <, setting->middle);
  g_assert_cmpuint (setting->middle, <, setting->high);
  g_assert_cmpint (birds_in (sample, SAMPLE_DAY + 20, "one"), ==, 0);
  g_assert_cmpint (birds_in (sample, SAMPLE_DAY + 21, "one"), ==, setting->high);
}

static void
what_hatched_counts_and_not_what_was_expected (SeasonSample *sample, gconstpointer data)
{
  season_sample_add_clutch (sample, "e", "medium_layer", SAMPLE_DAY, 24);
  season_sample_add_result (sample, "e", SAMPLE_DAY + 22, HC_RESULT_HATCHED, 7);
  g_assert_cmpint (birds_in (sample, SAMPLE_DAY + 21, "one"), ==, 0);
  g_assert_cmpint (birds_in (sample, SAMPLE_DAY + 22, "one"), ==, 7);
}

static void
a_group_entered_takes_the_place_of_what_was_expected (SeasonSample *sample, gconstpointer data)
{
  season_sample_add_clutch (sample, "e", "medium_layer", SAMPLE_DAY, 24);
  season_sample_add_batch (sample, "b", "medium_layer", 5, 3, SAMPLE_DAY + 21);
  season_sample_set_clutch (sample, "b", "e");
  g_assert_cmpint (birds_in (sample, SAMPLE_DAY + 30, "one"), ==, 8);
}

static void
eggs_are_set_until_enough_birds_are_to_be_expected (SeasonSample *sample, gconstpointer data)
{
  g_autoptr (HcTimeline) timeline = NULL;
  const HcSetting *last;
  double middles = 0;

  season_sample_add_clutch (sample, "e", "meat_fast", SAMPLE_DAY, 20);
  season_sample_repeat (sample, "e", 3, 50, 60);
  timeline = season_sample_timeline (sample);
  last = &g_array_index (timeline->settings, HcSetting, timeline->settings->len - 1);
  for (guint i = 0; i < timeline->settings->len; i++)
    middles += g_array_index (timeline->settings, HcSetting, i).middle;
  g_assert_cmpuint (last->set_on, ==, SAMPLE_DAY + 21 * (timeline->settings->len - 1));
  g_assert_cmpfloat (middles, >=, 55);
  g_assert_cmpfloat (middles - last->middle, <, 65);
  g_assert_cmpuint (timeline->settings->len, <, 10);
}

static void
steps_move_and_harvest_chicks_at_their_age (SeasonSample *sample, gconstpointer data)
{
  gint64 all;

  season_sample_add_clutch (sample, "e", "medium_layer", SAMPLE_DAY, 24);
  season_sample_add_step (sample, "e", 6, HC_STEP_MOVE, HC_STEP_ALL, "two");
  season_sample_add_step (sample, "e", 16, HC_STEP_HARVEST, HC_STEP_MALES, NULL);
  all = birds_in (sample, SAMPLE_DAY + 21, "one");
  g_assert_cmpint (birds_in (sample, SAMPLE_DAY + 21 + 42, "two"), ==, all);
  g_assert_cmpint (birds_in (sample, SAMPLE_DAY + 21 + 112, "two"), ==, all - all / 2);
}

#define ADD(path, test) g_test_add (path, SeasonSample, NULL, set_up, test, tear_down)

int
main (int argc, char *argv[])
{
  g_test_init (&argc, &argv, NULL);
  ADD ("/timeline/moves", birds_are_where_they_moved);
  ADD ("/timeline/losses", losses_are_gone_from_the_day_on);
  ADD ("/timeline/nobody-lost", nobody_is_lost_on_paper);
  ADD ("/timeline/came", bought_birds_are_there_from_the_day_they_came);
  ADD ("/timeline/eggs", eggs_give_the_chicks_the_house_must_carry);
  ADD ("/timeline/hatched", what_hatched_counts_and_not_what_was_expected);
  ADD ("/timeline/entered", a_group_entered_takes_the_place_of_what_was_expected);
  ADD ("/timeline/until-enough", eggs_are_set_until_enough_birds_are_to_be_expected);
  ADD ("/timeline/steps", steps_move_and_harvest_chicks_at_their_age);
  return g_test_run ();
}
