/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Corners and walls move, neighbours and openings follow. */
#include "config.h"

#include "plan/edit-corner.h"
#include "plan/edit-wall.h"
#include "plan/soundness.h"
#include "plan/wall-places.h"

#include "../sample/two-pens.h"

static const HcLayoutValues *
layout_of (HcPlan *plan)
{
  return hc_layout_get (hc_plan_get_layout (plan));
}

static const HcCornerValues *
corner_in (HcPlan *plan, const char *id)
{
  return hc_corner_get (hc_layout_get_corner (hc_plan_get_layout (plan), id));
}

static void
test_all_in_line_moves (void)
{
  g_autoptr (HcPlan) plan = two_pens_new ();
  g_autoptr (HcPlan) after = hc_plan_move_wall (plan, "a", -500, NULL);

  assert_sound (after);
  g_assert_cmpfloat (corner_in (after, "k1")->y_mm, ==, -500);
  g_assert_cmpfloat (corner_in (after, "k2")->y_mm, ==, -500);
  g_assert_cmpfloat (corner_in (after, "k5")->y_mm, ==, -500);
  g_assert_cmpfloat (opening_in (after, "door")->along_mm, ==, 1500);
}

static void
test_neighbours_keep_their_openings_in_place (void)
{
  g_autoptr (HcPlan) plan = two_pens_new ();
  HcPoint door = place_of (plan, "door");
  HcPoint hole = place_of (plan, "hole");
  g_autoptr (HcPlan) after = hc_plan_move_wall (plan, "d", 600, NULL);

  assert_sound (after);
  g_assert_cmpfloat (corner_in (after, "k1")->x_mm, ==, 600);
  g_assert_true (hc_point_equal (place_of (after, "door"), door));
  g_assert_true (hc_point_equal (place_of (after, "hole"), hole));
}

static void
test_fittings_change_pens_with_the_wall (void)
{
  g_autoptr (HcPlan) plan = two_pens_new ();
  g_autoptr (HcPlan) after = hc_plan_move_wall (plan, "m", 2300, NULL);

  g_assert_cmpfloat (corner_in (after, "k3")->x_mm, ==, 5300);
  g_assert_cmpstr (home_of_fitting (plan, "drinker"), ==, "right");
  g_assert_cmpstr (home_of_fitting (after, "drinker"), ==, "left");
}

static void
test_too_far_is_refused (void)
{
  static const double rows[] = { 2000, 2500, 1e9 };
  g_autoptr (HcPlan) plan = two_pens_new ();

  for (guint i = 0; i < G_N_ELEMENTS (rows); i++)
    {
      g_autoptr (GError) error = NULL;

      assert_refused (hc_plan_move_wall (plan, "a", rows[i], &error), &error);
    }
}

static void
test_there_and_back_is_as_before (void)
{
  static const char *const walls[] = { "a", "m", "c", "d", "e", "f", "g" };

  for (guint i = 0; i < 100; i++)
    {
      g_autoptr (HcPlan) plan = two_pens_new ();
      double by_mm = g_test_rand_int_range (-400, 400);
      const char *wall = walls[i % G_N_ELEMENTS (walls)];
      g_autoptr (HcPlan) there = hc_plan_move_wall (plan, wall, by_mm, NULL);
      g_autoptr (HcPlan) back = hc_plan_move_wall (there, wall, -by_mm, NULL);

      assert_sound (there);
      g_assert_true (hc_plan_equal (plan, back));
    }
}

static void
test_length_is_that_inside_the_pen (void)
{
  g_autoptr (HcPlan) plan = two_pens_new ();
  g_autoptr (HcPlan) after = hc_plan_set_wall_length (plan, "a", "left", 3500, NULL);
  g_autoptr (HcPlan) same = hc_plan_set_wall_length (plan, "a", "left", 2950, NULL);
  g_autoptr (GError) error = NULL;

  assert_sound (after);
  g_assert_cmpfloat (corner_in (after, "k2")->x_mm, ==, 3550);
  g_assert_cmpfloat (corner_in (after, "k3")->x_mm, ==, 3550);
  g_assert_cmpfloat (corner_in (after, "k5")->x_mm, ==, 6000);
  g_assert_cmpfloat (hc_layout_get_inside_length (hc_plan_get_layout (after), "a", "left"), ==,
                     3500);
  g_assert_true (same == plan);
  assert_refused (hc_plan_set_wall_length (plan, "a", "left", 0, &error), &error);
}

static void
test_inserted_corner_breaks_no_opening (void)
{
  static const double rows[] = { 1500, 1150, 1850, 100, 2900 };
  g_autoptr (HcPlan) plan = two_pens_new ();

  for (guint i = 0; i < G_N_ELEMENTS (rows); i++)
    {
      g_autoptr (HcPlan) after = hc_plan_insert_corner (plan, "a", rows[i], "new", "half", NULL);

      assert_sound (after);
      g_assert_cmpfloat (opening_in (after, "door")->width_mm, ==, 800);
      g_assert_cmpuint (layout_of (after)->walls->len, ==, 8);
    }
}

static void
test_inserted_and_merged_is_as_before (void)
{
  for (guint i = 0; i < 100; i++)
    {
      g_autoptr (HcPlan) plan = two_pens_new ();
      static const char *const walls[] = { "m", "d", "e", "f", "g" };
      double along_mm = g_test_rand_double_range (10, 1990);
      g_autoptr (HcPlan) with
          = hc_plan_insert_corner (plan, walls[i % 5], along_mm, "new", "half", NULL);
      g_autoptr (HcPlan) merged = hc_plan_merge_plain_corners (with);
      g_autoptr (HcPlan) removed = hc_plan_remove_corner (with, "new", NULL);

      assert_sound (with);
      g_assert_true (hc_plan_equal (plan, merged));
      g_assert_true (hc_plan_equal (plan, removed));
    }
}

static void
test_a_pulled_corner_makes_an_l (void)
{
  g_autoptr (HcPlan) plan = two_pens_new ();
  g_autoptr (HcPlan) one = hc_plan_insert_corner (plan, "f", 1000, "k7", "f2", NULL);
  g_autoptr (HcPlan) two = hc_plan_move_corner (one, "k6", hc_point (4500, 2000), NULL);
  g_autoptr (HcPlan) three = hc_plan_move_corner (two, "k7", hc_point (4500, 1000), NULL);

  assert_sound (two);
  assert_sound (three);
}

static void
test_crossing_is_refused (void)
{
  g_autoptr (HcPlan) plan = two_pens_new ();
  g_autoptr (GError) error = NULL;

  assert_refused (hc_plan_move_corner (plan, "k1", hc_point (4000, 3000), &error), &error);
}

static void
test_junctions_stay (void)
{
  g_autoptr (HcPlan) plan = two_pens_new ();
  g_autoptr (GError) error = NULL;

  assert_refused (hc_plan_remove_corner (plan, "k2", &error), &error);
}

static void
test_thickness_changes_but_not_the_ends (void)
{
  g_autoptr (HcPlan) plan = two_pens_new ();
  HcWallValues values = *hc_wall_get (hc_layout_get_wall (hc_plan_get_layout (plan), "a"));
  g_autoptr (HcPlan) after = NULL;

  values.thickness_mm = 500;
  values.from = values.to = NULL;
  after = hc_plan_set_wall (plan, "a", &values, NULL);
  assert_sound (after);
  g_assert_cmpfloat (
      hc_wall_get (hc_layout_get_wall (hc_plan_get_layout (after), "a"))->thickness_mm, ==, 500);
}

static void
test_any_corner_moved_is_sound_or_refused (void)
{
  static const char *const corners[] = { "k1", "k2", "k3", "k4", "k5", "k6" };
  g_autoptr (HcPlan) plan = two_pens_new ();
  guint moved = 0;

  for (guint i = 0; i < 400; i++)
    {
      g_autoptr (GError) error = NULL;
      const char *corner = corners[g_test_rand_int_range (0, 6)];
      const HcCornerValues *at = corner_in (plan, corner);
      HcPlan *after = hc_plan_move_corner (
          plan, corner,
          hc_point (at->x_mm + g_test_rand_double_range (-900, 900),
                    at->y_mm + g_test_rand_double_range (-900, 900)),
          &error);

      if (after == NULL)
        {
          assert_refused (after, &error);
          continue;
        }
      moved++;
      assert_sound (after);
      hc_plan_unref (plan);
      plan = after;
    }
  g_assert_cmpuint (moved, >, 20);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/edit-wall/all-in-line-moves", test_all_in_line_moves);
  g_test_add_func ("/edit-wall/openings-in-place", test_neighbours_keep_their_openings_in_place);
  g_test_add_func ("/edit-wall/fittings-change-pens", test_fittings_change_pens_with_the_wall);
  g_test_add_func ("/edit-wall/too-far-is-refused", test_too_far_is_refused);
  g_test_add_func ("/edit-wall/there-and-back", test_there_and_back_is_as_before);
  g_test_add_func ("/edit-wall/length-inside-the-pen", test_length_is_that_inside_the_pen);
  g_test_add_func ("/edit-wall/thickness", test_thickness_changes_but_not_the_ends);
  g_test_add_func ("/edit-corner/breaks-no-opening", test_inserted_corner_breaks_no_opening);
  g_test_add_func ("/edit-corner/inserted-and-merged", test_inserted_and_merged_is_as_before);
  g_test_add_func ("/edit-corner/makes-an-l", test_a_pulled_corner_makes_an_l);
  g_test_add_func ("/edit-corner/crossing-is-refused", test_crossing_is_refused);
  g_test_add_func ("/edit-corner/junctions-stay", test_junctions_stay);
  g_test_add_func ("/edit-corner/any-corner-moved", test_any_corner_moved_is_sound_or_refused);
  return g_test_run ();
}
