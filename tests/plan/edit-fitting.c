/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Fittings move between pens, keep what is not changed, and refuse nonsense. */
#include "config.h"

#include "plan/edit-fitting.h"

#include "../sample/two-pens.h"

#include <math.h>

static const char *const feeder[] = { "feeder", NULL };

static void
test_added_where_it_stands (void)
{
  g_autoptr (HcPlan) plan = two_pens_new ();
  static const struct
  {
    const char *id, *pen;
    double x_mm, y_mm;
  } rows[] = {
    { "one", "left", 500, 500 },
    { "two", "right", 4000, 500 },
    { "three", "", 500, 5000 },
  };

  for (guint i = 0; i < G_N_ELEMENTS (rows); i++)
    {
      g_autoptr (HcFitting) fitting = sample_fitting (rows[i].id, rows[i].x_mm, rows[i].y_mm);
      g_autoptr (HcPlan) after = hc_plan_add_fitting (plan, fitting, NULL);

      g_assert_cmpstr (home_of_fitting (after, rows[i].id), ==, rows[i].pen);
    }
}

static void
test_id_is_never_used_twice (void)
{
  g_autoptr (HcPlan) plan = two_pens_new ();
  static const char *const taken[] = { "feeder", "post", "left", "m", "k3", "door", "hens" };

  for (guint i = 0; i < G_N_ELEMENTS (taken); i++)
    {
      g_autoptr (HcFitting) fitting = sample_fitting (taken[i], 500, 500);
      g_autoptr (GError) error = NULL;

      assert_refused (hc_plan_add_fitting (plan, fitting, &error), &error);
    }
}

static void
test_moves_into_the_next_pen (void)
{
  g_autoptr (HcPlan) plan = two_pens_new ();
  g_autoptr (HcPlan) within = hc_plan_move_fittings (plan, feeder, hc_point (500, 0), NULL);
  g_autoptr (HcPlan) across = hc_plan_move_fittings (plan, feeder, hc_point (3000, 0), NULL);
  g_autoptr (HcPlan) outside = hc_plan_move_fittings (plan, feeder, hc_point (0, 3000), NULL);

  g_assert_cmpstr (home_of_fitting (within, "feeder"), ==, "left");
  g_assert_cmpstr (home_of_fitting (across, "feeder"), ==, "right");
  g_assert_cmpstr (home_of_fitting (outside, "feeder"), ==, "");
  g_assert_cmpfloat (fitting_in (across, "feeder")->x_mm, ==, 4000);
}

static void
test_shares_what_it_does_not_change (void)
{
  g_autoptr (HcPlan) plan = two_pens_new ();
  g_autoptr (HcPlan) after = hc_plan_move_fittings (plan, feeder, hc_point (10, 0), NULL);
  const HcLayoutValues *one = hc_layout_get (hc_plan_get_layout (plan));
  const HcLayoutValues *other = hc_layout_get (hc_plan_get_layout (after));

  g_assert_true (one->walls == other->walls);
  g_assert_true (one->pens->pdata[1] == other->pens->pdata[1]);
  g_assert_true (one->pens->pdata[0] != other->pens->pdata[0]);
  g_assert_cmpfloat (fitting_in (plan, "feeder")->x_mm, ==, 1000);
}

static void
test_no_change_is_the_same_plan (void)
{
  g_autoptr (HcPlan) plan = two_pens_new ();
  const HcFittingValues *values = fitting_in (plan, "feeder");
  g_autoptr (HcPlan) moved = hc_plan_move_fittings (plan, feeder, hc_point (0, 0), NULL);
  g_autoptr (HcPlan) turned = hc_plan_turn_fittings (plan, feeder, 360, NULL);
  g_autoptr (HcPlan) set = hc_plan_set_fitting (plan, "feeder", values, NULL);
  g_autoptr (HcPlan) named = hc_plan_rename_fitting (plan, "feeder", "", NULL);

  g_assert_true (moved == plan);
  g_assert_true (turned == plan);
  g_assert_true (set == plan);
  g_assert_true (named == plan);
}

static void
test_one_turns_about_its_middle_many_about_theirs (void)
{
  static const char *const both[] = { "feeder", "drinker", NULL };
  g_autoptr (HcPlan) plan = two_pens_new ();
  g_autoptr (HcPlan) one = hc_plan_turn_fittings (plan, feeder, -90, NULL);
  g_autoptr (HcPlan) two = hc_plan_turn_fittings (plan, both, 90, NULL);

  g_assert_cmpfloat (fitting_in (one, "feeder")->x_mm, ==, 1000);
  g_assert_cmpfloat (fitting_in (one, "feeder")->turn_deg, ==, 270);
  g_assert_cmpfloat (fitting_in (two, "feeder")->x_mm, ==, 3000);
  g_assert_cmpfloat (fitting_in (two, "feeder")->y_mm, ==, -1000);
  g_assert_cmpfloat (fitting_in (two, "drinker")->y_mm, ==, 3000);
}

static void
test_locked_stays (void)
{
  g_autoptr (HcPlan) plan = two_pens_new ();
  HcFittingValues values = *fitting_in (plan, "feeder");
  g_autoptr (HcPlan) locked = NULL;
  g_autoptr (GError) error = NULL;

  values.locked = TRUE;
  locked = hc_plan_set_fitting (plan, "feeder", &values, NULL);
  assert_refused (hc_plan_move_fittings (locked, feeder, hc_point (10, 0), &error), &error);
}

static void
test_bought_keeps_its_size (void)
{
  g_autoptr (HcPlan) plan = two_pens_new ();
  HcFittingValues values = *fitting_in (plan, "feeder");
  g_autoptr (HcPlan) bought = NULL;
  g_autoptr (HcPlan) longer = hc_plan_resize_fitting (plan, "feeder", 900, 200, NULL);
  g_autoptr (GError) error = NULL;

  values.device = (char *) "some-feeder";
  bought = hc_plan_set_fitting (plan, "feeder", &values, NULL);
  assert_refused (hc_plan_resize_fitting (bought, "feeder", 900, 200, &error), &error);
  g_assert_cmpfloat (fitting_in (longer, "feeder")->width_mm, ==, 900);
}

static void
test_nonsense_is_refused (void)
{
  static const double bad[] = { 0, -5, 1e9, NAN, INFINITY };
  g_autoptr (HcPlan) plan = two_pens_new ();

  for (guint i = 0; i < G_N_ELEMENTS (bad); i++)
    {
      g_autoptr (GError) error = NULL;

      assert_refused (hc_plan_resize_fitting (plan, "feeder", bad[i], 200, &error), &error);
    }
}

static void
test_what_is_gone_is_said (void)
{
  static const char *const gone[] = { "nothing", NULL };
  g_autoptr (HcPlan) plan = two_pens_new ();
  g_autoptr (GError) one = NULL;
  g_autoptr (GError) other = NULL;

  assert_refused (hc_plan_move_fittings (plan, gone, hc_point (1, 1), &one), &one);
  assert_refused (hc_plan_remove_fittings (plan, gone, &other), &other);
}

static void
test_copies_stand_beside (void)
{
  static const char *const ids[] = { "feeder", "post", NULL };
  static const char *const new_ids[] = { "feeder-2", "post-2", NULL };
  g_autoptr (HcPlan) plan = two_pens_new ();
  g_autoptr (HcPlan) after
      = hc_plan_duplicate_fittings (plan, ids, new_ids, hc_point (3000, 100), NULL);

  g_assert_cmpstr (home_of_fitting (after, "feeder"), ==, "left");
  g_assert_cmpstr (home_of_fitting (after, "feeder-2"), ==, "right");
  g_assert_cmpfloat (fitting_in (after, "feeder-2")->y_mm, ==, 1100);
  g_assert_cmpfloat (fitting_in (after, "post-2")->x_mm, ==, 12000);
}

static void
test_added_and_removed_is_as_before (void)
{
  static const char *const one[] = { "new", NULL };

  for (guint i = 0; i < 200; i++)
    {
      g_autoptr (HcPlan) plan = two_pens_new ();
      g_autoptr (HcFitting) fitting
          = sample_fitting ("new", g_test_rand_double_range (-1000, 7000),
                            g_test_rand_double_range (-1000, 3000));
      g_autoptr (HcPlan) with = hc_plan_add_fitting (plan, fitting, NULL);
      g_autoptr (HcPlan) without = hc_plan_remove_fittings (with, one, NULL);

      g_assert_false (hc_plan_equal (plan, with));
      g_assert_true (hc_plan_equal (plan, without));
    }
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/edit-fitting/added-where-it-stands", test_added_where_it_stands);
  g_test_add_func ("/edit-fitting/id-is-never-used-twice", test_id_is_never_used_twice);
  g_test_add_func ("/edit-fitting/moves-into-the-next-pen", test_moves_into_the_next_pen);
  g_test_add_func ("/edit-fitting/shares-what-it-does-not-change",
                   test_shares_what_it_does_not_change);
  g_test_add_func ("/edit-fitting/no-change-is-the-same-plan", test_no_change_is_the_same_plan);
  g_test_add_func ("/edit-fitting/turns-about-the-middle",
                   test_one_turns_about_its_middle_many_about_theirs);
  g_test_add_func ("/edit-fitting/locked-stays", test_locked_stays);
  g_test_add_func ("/edit-fitting/bought-keeps-its-size", test_bought_keeps_its_size);
  g_test_add_func ("/edit-fitting/nonsense-is-refused", test_nonsense_is_refused);
  g_test_add_func ("/edit-fitting/what-is-gone-is-said", test_what_is_gone_is_said);
  g_test_add_func ("/edit-fitting/copies-stand-beside", test_copies_stand_beside);
  g_test_add_func ("/edit-fitting/added-and-removed-is-as-before",
                   test_added_and_removed_is_as_before);
  return g_test_run ();
}
