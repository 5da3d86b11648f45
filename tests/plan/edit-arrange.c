/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Several things in line, evenly spread, mirrored, locked, repeated. */
#include "config.h"

#include "plan/edit-arrange.h"

#include "plan/edit-fitting.h"
#include "plan/edit-pen.h"

#include "../sample/two-pens.h"

static const char *const three[] = { "feeder", "second", "third", NULL };

/* Three of 600 × 200 mm in the left pen; "third" is turned a quarter. */
static HcPlan *
plan_with_three (void)
{
  g_autoptr (HcPlan) plan = two_pens_new ();
  g_autoptr (HcFitting) b = sample_fitting ("second", 1300, 1400);
  g_autoptr (HcFitting) c = sample_fitting ("third", 2500, 600);
  g_autoptr (HcPlan) with_b = hc_plan_add_fitting (plan, b, NULL);
  g_autoptr (HcPlan) with_c = hc_plan_add_fitting (with_b, c, NULL);

  return hc_plan_turn_fittings (with_c, (const char *const[]){ "third", NULL }, 90, NULL);
}

static void
test_in_line (void)
{
  static const struct
  {
    HcAlign align;
    double b_x, b_y, c_x, c_y;
  } rows[] = {
    { HC_ALIGN_LEFT, 1000, 1400, 800, 600 },
    { HC_ALIGN_RIGHT, 2300, 1400, 2500, 600 },
    { HC_ALIGN_TOP, 1300, 400, 2500, 600 },
    { HC_ALIGN_BOTTOM, 1300, 1400, 2500, 1200 },
    { HC_ALIGN_MIDDLE_UPRIGHT, 1650, 1400, 1650, 600 },
    { HC_ALIGN_MIDDLE_LEVEL, 1300, 900, 2500, 900 },
  };
  g_autoptr (HcPlan) plan = plan_with_three ();

  for (guint i = 0; i < G_N_ELEMENTS (rows); i++)
    {
      g_autoptr (HcPlan) after = hc_plan_align_fittings (plan, three, rows[i].align, NULL);
      g_autoptr (HcPlan) again = hc_plan_align_fittings (after, three, rows[i].align, NULL);

      g_assert_cmpfloat_with_epsilon (fitting_in (after, "second")->x_mm, rows[i].b_x, 0.002);
      g_assert_cmpfloat_with_epsilon (fitting_in (after, "second")->y_mm, rows[i].b_y, 0.002);
      g_assert_cmpfloat_with_epsilon (fitting_in (after, "third")->x_mm, rows[i].c_x, 0.002);
      g_assert_cmpfloat_with_epsilon (fitting_in (after, "third")->y_mm, rows[i].c_y, 0.002);
      g_assert_true (again == after);
    }
}

/* Edges at 700 and 2600; things of 600, 600 and 200 leave two gaps of 250. */
static void
test_spread_evenly (void)
{
  g_autoptr (HcPlan) plan = plan_with_three ();
  g_autoptr (HcPlan) after = hc_plan_spread_fittings (plan, three, HC_WAY_ACROSS, NULL);
  g_autoptr (GError) error = NULL;

  g_assert_cmpfloat_with_epsilon (fitting_in (after, "feeder")->x_mm, 1000, 0.002);
  g_assert_cmpfloat_with_epsilon (fitting_in (after, "second")->x_mm, 1850, 0.002);
  g_assert_cmpfloat_with_epsilon (fitting_in (after, "third")->x_mm, 2500, 0.002);
  g_assert_cmpfloat (fitting_in (after, "second")->y_mm, ==, 1400);
  assert_refused (hc_plan_spread_fittings (plan, (const char *const[]){ "second", "third", NULL },
                                           HC_WAY_DOWN, &error),
                  &error);
}

static void
test_mirrored_twice_is_as_before (void)
{
  g_autoptr (HcPlan) plan = plan_with_three ();

  for (HcPageWay way = HC_WAY_ACROSS; way <= HC_WAY_DOWN; way++)
    {
      g_autoptr (HcPlan) once = hc_plan_mirror_fittings (plan, three, way, NULL);
      g_autoptr (HcPlan) twice = hc_plan_mirror_fittings (once, three, way, NULL);

      g_assert_cmpfloat_with_epsilon (fitting_in (once, "third")->turn_deg,
                                      way == HC_WAY_ACROSS ? 270 : 90, 0.002);
      for (guint i = 0; three[i] != NULL; i++)
        {
          g_assert_cmpfloat_with_epsilon (fitting_in (twice, three[i])->x_mm,
                                          fitting_in (plan, three[i])->x_mm, 0.01);
          g_assert_cmpfloat_with_epsilon (fitting_in (twice, three[i])->y_mm,
                                          fitting_in (plan, three[i])->y_mm, 0.01);
        }
    }
}

static void
test_what_is_locked_stays (void)
{
  g_autoptr (HcPlan) plan = plan_with_three ();
  const char *const one[] = { "second", NULL };
  g_autoptr (HcPlan) locked = hc_plan_lock_fittings (plan, one, TRUE, NULL);
  g_autoptr (HcPlan) unlocked = hc_plan_lock_fittings (locked, one, FALSE, NULL);
  g_autoptr (HcPlan) moved = NULL;
  g_autoptr (GError) error = NULL;

  assert_refused (hc_plan_align_fittings (locked, three, HC_ALIGN_LEFT, &error), &error);
  g_clear_error (&error);
  assert_refused (hc_plan_mirror_fittings (locked, three, HC_WAY_DOWN, &error), &error);
  moved = hc_plan_align_fittings (unlocked, three, HC_ALIGN_LEFT, NULL);
  g_assert_nonnull (moved);
}

/* From x = 1000 along wall a, towards its end at 3000: room for two at 900 mm. */
static void
test_repeated_along_a_wall (void)
{
  g_autoptr (HcPlan) plan = two_pens_new ();
  const char *const ids[] = { "n1", "n2", "n3", NULL };
  g_autoptr (HcPlan) after = hc_plan_repeat_along_wall (plan, "feeder", "a", 2, 900, ids, NULL);
  g_autoptr (GError) error = NULL;

  g_assert_cmpfloat_with_epsilon (fitting_in (after, "n1")->x_mm, 1900, 0.002);
  g_assert_cmpfloat_with_epsilon (fitting_in (after, "n2")->x_mm, 2800, 0.002);
  g_assert_cmpfloat (fitting_in (after, "n2")->y_mm, ==, 1000);
  g_assert_cmpstr (home_of_fitting (after, "n2"), ==, "left");
  assert_refused (hc_plan_repeat_along_wall (plan, "feeder", "a", 3, 900, ids, &error), &error);
  g_assert_nonnull (strstr (error->message, "2"));
  g_clear_error (&error);
  assert_refused (hc_plan_repeat_along_wall (plan, "feeder", "a", 1, 0, ids, &error), &error);
  g_clear_error (&error);
  assert_refused (hc_plan_repeat_along_wall (plan, "feeder", "gone", 1, 300, ids, &error), &error);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/edit-arrange/in-line", test_in_line);
  g_test_add_func ("/edit-arrange/spread", test_spread_evenly);
  g_test_add_func ("/edit-arrange/mirrored", test_mirrored_twice_is_as_before);
  g_test_add_func ("/edit-arrange/locked", test_what_is_locked_stays);
  g_test_add_func ("/edit-arrange/repeated", test_repeated_along_a_wall);
  return g_test_run ();
}
