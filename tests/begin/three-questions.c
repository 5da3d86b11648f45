/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A plan from three answers works: whenever its birds fit by floor, nothing
 * they need is too little. */
#include "config.h"

#include "base/error.h"
#include "begin/three-questions.h"
#include "files/read.h"
#include "files/write.h"
#include "needs/check.h"
#include "plan/soundness.h"

static HcBook *book;

static HcPlan *
plan_for_flock (double width_mm, double length_mm, const HcWantedBirds *birds, guint n_birds,
                gboolean go_out)
{
  HcAnswers answers = { width_mm, length_mm, birds, n_birds, -10, go_out, HC_UNITS_METRIC };
  g_autoptr (GError) error = NULL;
  HcPlan *plan = hc_plan_from_answers (book, &answers, "answers", &error);

  g_assert_no_error (error);
  return plan;
}

static HcPlan *
plan_for (double width_mm, double length_mm, const char *breed, int count, gboolean go_out)
{
  HcWantedBirds birds = { breed, count };

  return plan_for_flock (width_mm, length_mm, &birds, 1, go_out);
}

static gboolean
floor_is_enough (HcCheck *check)
{
  return !hc_check_applies (check, HC_NEED_FLOOR)
         || hc_check_get_need_level (check, HC_NEED_FLOOR) > HC_LEVEL_SHORT;
}

static void
assert_nothing_short (HcPlan *plan, HcCondition condition)
{
  g_autoptr (HcCheckCache) cache = hc_check_cache_new ();
  g_autoptr (HcFlock) flock = hc_flock_on (plan, book, hc_plan_get_day (plan));
  g_autoptr (HcCheck) check = hc_check_plan (cache, plan, book, condition, flock);

  if (!floor_is_enough (check))
    return;
  for (int need = 0; need < HC_N_NEEDS; need++)
    if (hc_check_applies (check, (HcNeedId) need)
        && hc_check_get_need_level (check, (HcNeedId) need) == HC_LEVEL_SHORT)
      g_test_message ("%s in condition %d", hc_need_get ((HcNeedId) need)->word, condition);
  for (int need = 0; need < HC_N_NEEDS; need++)
    if (hc_check_applies (check, (HcNeedId) need))
      g_assert_cmpint (hc_check_get_need_level (check, (HcNeedId) need), >, HC_LEVEL_SHORT);
}

static void
assert_works (HcPlan *plan)
{
  for (int condition = 0; condition <= HC_CONDITION_SHUT_IN; condition++)
    assert_nothing_short (plan, (HcCondition) condition);
}

static void
a_house_whose_birds_fit_works (void)
{
  static const char *const breeds[]
      = { "rhode-island-red", "leghorn", "orpington", "pekin-bantam", "broiler-cross-fast",
          "pekin-duck" };
  static const double sides_m[][2]
      = { { 1.8, 2.4 }, { 2.4, 3.6 }, { 2, 5 }, { 4, 4 }, { 3.6, 7.2 } };

  for (guint size = 0; size < G_N_ELEMENTS (sides_m); size++)
    for (guint breed = 0; breed < G_N_ELEMENTS (breeds); breed++)
      {
        int count = (int) (sides_m[size][0] * sides_m[size][1] * 2);
        g_autoptr (HcPlan) plan = plan_for (sides_m[size][0] * 1000, sides_m[size][1] * 1000,
                                            breeds[breed], count, TRUE);

        g_test_message ("%s: %d in %g by %g m", breeds[breed], count, sides_m[size][0],
                        sides_m[size][1]);
        assert_works (plan);
      }
}

static void
a_small_house_works (void)
{
  static const char *const breeds[]
      = { "rhode-island-red", "leghorn", "orpington", "pekin-bantam", "broiler-cross-fast",
          "pekin-duck" };

  for (guint breed = 0; breed < G_N_ELEMENTS (breeds); breed++)
    for (int count = 2; count <= 6; count += 2)
      for (int go_out = 0; go_out <= 1; go_out++)
        {
          g_autoptr (HcPlan) plan = plan_for (1500, 2000, breeds[breed], count, go_out);

          g_test_message ("%d %s, going out: %d", count, breeds[breed], go_out);
          assert_works (plan);
        }
}

/* Feed and water hang on the walls, below the nest boxes where need be. */
static void
a_small_ark_with_a_run_works (void)
{
  static const char *const breeds[] = { "rhode-island-red", "leghorn", "pekin-bantam" };
  static const double sides_mm[][2] = { { 1000, 1200 },
                                        { 1200, 1200 },
                                        { 1000, 2000 },
                                        { 1200, 1800 },
                                        { 4 * HC_MM_PER_FOOT, 4 * HC_MM_PER_FOOT } };

  for (guint size = 0; size < G_N_ELEMENTS (sides_mm); size++)
    for (guint breed = 0; breed < G_N_ELEMENTS (breeds); breed++)
      for (int count = 2; count <= 4; count++)
        {
          g_autoptr (HcPlan) plan
              = plan_for (sides_mm[size][0], sides_mm[size][1], breeds[breed], count, TRUE);

          g_test_message ("%d %s in %g by %g mm", count, breeds[breed], sides_mm[size][0],
                          sides_mm[size][1]);
          assert_works (plan);
        }
}

static void
a_mixed_flock_works (void)
{
  static const HcWantedBirds flocks[][3] = {
    { { "rhode-island-red", 4 }, { "pekin-bantam", 4 }, { "leghorn", 4 } },
    { { "leghorn", 4 }, { "orpington", 3 }, { "pekin-duck", 3 } },
    { { "rhode-island-red", 3 }, { "orpington", 3 }, { "broiler-cross-fast", 4 } },
  };
  static const double sides_m[][2] = { { 2.4, 3.6 }, { 2, 5 }, { 4, 4 }, { 12, 8 } };

  for (guint size = 0; size < G_N_ELEMENTS (sides_m); size++)
    for (guint flock = 0; flock < G_N_ELEMENTS (flocks); flock++)
      for (int go_out = 0; go_out <= 1; go_out++)
        {
          g_autoptr (HcPlan) plan
              = plan_for_flock (sides_m[size][0] * 1000, sides_m[size][1] * 1000, flocks[flock],
                                G_N_ELEMENTS (flocks[flock]), go_out);

          g_test_message ("flock %u in %g by %g m, going out: %d", flock, sides_m[size][0],
                          sides_m[size][1], go_out);
          assert_works (plan);
        }
}

static void
every_plan_is_sound_and_comes_back_from_its_file (void)
{
  for (guint i = 0; i < 20; i++)
    {
      g_autoptr (HcPlan) plan = plan_for (
          g_test_rand_double_range (1000, 9000), g_test_rand_double_range (1000, 9000),
          "rhode-island-red", g_test_rand_int_range (1, 60), g_test_rand_bit ());
      g_autoptr (GError) error = NULL;
      g_autofree char *text = NULL;
      g_autoptr (HcPlanFile) file = NULL;
      gsize length;

      g_assert_true (hc_plan_is_sound (plan, &error));
      text = hc_plan_write (plan, &length, &error);
      g_assert_no_error (error);
      file = hc_plan_file_read (text, length, &error);
      g_assert_no_error (error);
      g_assert_true (hc_plan_equal (file->plan, plan));
    }
}

static void
birds_that_stay_in_get_no_run (void)
{
  g_autoptr (HcPlan) plan = plan_for (3000, 3000, "rhode-island-red", 8, FALSE);

  g_assert_cmpuint (hc_layout_get (hc_plan_get_layout (plan))->pens->len, ==, 1);
}

static void
what_cannot_be_is_said (void)
{
  const HcWantedBirds none = { "rhode-island-red", 0 };
  const HcWantedBirds unknown = { "dragon", 5 };
  const HcWantedBirds hens = { "rhode-island-red", 5 };
  const struct
  {
    double width_mm;
    HcWantedBirds birds;
  } faults[] = { { 3000, none }, { 3000, unknown }, { 10, hens }, { 1e9, hens }, { -5, hens } };

  for (guint i = 0; i < G_N_ELEMENTS (faults); i++)
    {
      HcAnswers answers = { faults[i].width_mm, 3000, &faults[i].birds, 1, -10, TRUE,
                            HC_UNITS_METRIC };
      g_autoptr (GError) error = NULL;
      g_autoptr (HcPlan) plan = hc_plan_from_answers (book, &answers, "x", &error);

      g_assert_null (plan);
      g_assert_error (error, HC_ERROR, HC_ERROR_TYPED);
    }
}

int
main (int argc, char *argv[])
{
  int result;

  g_test_init (&argc, &argv, NULL);
  book = hc_book_load_default (NULL);
  g_test_add_func ("/begin/three-questions/works", a_house_whose_birds_fit_works);
  g_test_add_func ("/begin/three-questions/small", a_small_house_works);
  g_test_add_func ("/begin/three-questions/ark", a_small_ark_with_a_run_works);
  g_test_add_func ("/begin/three-questions/mixed", a_mixed_flock_works);
  g_test_add_func ("/begin/three-questions/sound",
                   every_plan_is_sound_and_comes_back_from_its_file);
  g_test_add_func ("/begin/three-questions/no-run", birds_that_stay_in_get_no_run);
  g_test_add_func ("/begin/three-questions/faults", what_cannot_be_is_said);
  result = g_test_run ();
  hc_book_unref (book);
  return result;
}
