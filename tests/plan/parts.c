/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Parts of a plan are values: equal by what they hold, shared, never changed. */
#include "config.h"

#include "plan/plan.h"

static HcFitting *
trough (double x_mm)
{
  HcFittingValues values;

  hc_fitting_values_init (&values);
  values.kind = HC_FITTING_FEEDER;
  values.x_mm = x_mm;
  values.width_mm = 1000;
  values.depth_mm = 150;
  return hc_fitting_new ("f1", &values);
}

static void
a_missing_member_means_the_normal_one (void)
{
  g_autoptr (HcWall) wall = hc_wall_new ("w1", NULL);

  g_assert_cmpfloat (hc_wall_get (wall)->thickness_mm, ==, 100);
  g_assert_cmpint (hc_wall_get (wall)->kind, ==, HC_WALL_SOLID);
}

static void
lengths_are_kept_to_a_thousandth (void)
{
  g_autoptr (HcFitting) one = trough (100.00049);
  g_autoptr (HcFitting) other = trough (100.0);

  g_assert_cmpfloat (hc_fitting_get (one)->x_mm, ==, 100.0);
  g_assert_true (hc_fitting_equal (one, other));
}

static void
the_same_values_give_the_same_part (void)
{
  g_autoptr (HcFitting) fitting = trough (100);
  HcFittingValues values = *hc_fitting_get (fitting);
  g_autoptr (HcFitting) same = hc_fitting_with (fitting, &values);
  g_autoptr (HcFitting) moved = NULL;

  g_assert_true (same == fitting);
  values.x_mm = 200;
  moved = hc_fitting_with (fitting, &values);
  g_assert_true (moved != fitting);
  g_assert_cmpfloat (hc_fitting_get (fitting)->x_mm, ==, 100);
  g_assert_cmpstr (hc_fitting_get_id (moved), ==, "f1");
}

static void
text_is_copied (void)
{
  char name[] = "long trough";
  g_autoptr (HcFitting) plain = trough (100);
  HcFittingValues values = *hc_fitting_get (plain);
  g_autoptr (HcFitting) named = NULL;

  values.name = name;
  named = hc_fitting_with (plain, &values);
  name[0] = 'w';
  g_assert_cmpstr (hc_fitting_get (named)->name, ==, "long trough");
}

static void
lists_share_what_they_do_not_change (void)
{
  g_autoptr (HcFitting) first = trough (100);
  g_autoptr (HcFitting) moved = trough (300);
  g_autoptr (HcFitting) other = hc_part_with_id (first, "f2");
  g_autoptr (HcParts) none = hc_parts_new ();
  g_autoptr (HcParts) one = hc_parts_with (none, first);
  g_autoptr (HcParts) two = hc_parts_with (one, other);
  g_autoptr (HcParts) changed = hc_parts_with (two, moved);
  g_autoptr (HcParts) less = hc_parts_without (changed, "f1");
  g_autoptr (HcParts) same = hc_parts_without (less, "f1");

  g_assert_cmpuint (none->len, ==, 0);
  g_assert_cmpuint (two->len, ==, 2);
  g_assert_true (changed->pdata[0] == moved);
  g_assert_true (changed->pdata[1] == other);
  g_assert_true (hc_parts_find (two, "f1") == first);
  g_assert_cmpuint (less->len, ==, 1);
  g_assert_true (same == less);
}

static void
parts_are_equal_by_what_they_hold (void)
{
  g_autoptr (HcPlan) one = hc_plan_new_empty ("u1", "Byre");
  g_autoptr (HcPlan) other = hc_plan_new_empty ("u1", "Byre");
  g_autoptr (HcPlan) named = hc_plan_new_empty ("u1", "Barn");

  g_assert_true (hc_plan_equal (one, other));
  g_assert_false (hc_plan_equal (one, named));
}

int
main (int argc, char *argv[])
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/plan/parts/missing-is-normal", a_missing_member_means_the_normal_one);
  g_test_add_func ("/plan/parts/thousandths", lengths_are_kept_to_a_thousandth);
  g_test_add_func ("/plan/parts/same-values-same-part", the_same_values_give_the_same_part);
  g_test_add_func ("/plan/parts/text-is-copied", text_is_copied);
  g_test_add_func ("/plan/parts/lists-share", lists_share_what_they_do_not_change);
  g_test_add_func ("/plan/parts/equal", parts_are_equal_by_what_they_hold);
  return g_test_run ();
}
