/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Walls, neighbours, middles and corners catch what is dragged near them. */
#include "config.h"

#include "plan/edit-fitting.h"
#include "plan/snap.h"

#include "../sample/two-pens.h"

static const char *const feeder[] = { "feeder", NULL };

/* The feeder is 600 × 200 mm about (1000, 1000) in a pen whose faces are at
 * x = 0 and 2950, y = 0 and 2000. */
static void
test_walls_catch (void)
{
  static const struct
  {
    double x, y, snapped_x, snapped_y;
    guint n_caught;
  } rows[] = {
    { -690, 300, -700, 300, 1 },   { 1640, 300, 1650, 300, 1 }, { 300, -890, 300, -900, 1 },
    { -690, 905, -700, 900, 2 },   { -650, 300, -650, 300, 0 }, { -720, 300, -700, 300, 1 },
  };
  g_autoptr (HcPlan) plan = two_pens_new ();

  for (guint i = 0; i < G_N_ELEMENTS (rows); i++)
    {
      HcSnap snap = hc_snap_fittings (plan, feeder, hc_point (rows[i].x, rows[i].y), 30);

      g_assert_cmpfloat (snap.by.x_mm, ==, rows[i].snapped_x);
      g_assert_cmpfloat (snap.by.y_mm, ==, rows[i].snapped_y);
      g_assert_cmpuint (snap.n_caught, ==, rows[i].n_caught);
    }
}

static void
test_the_middle_of_the_pen_catches (void)
{
  g_autoptr (HcPlan) plan = two_pens_new ();
  HcSnap snap = hc_snap_fittings (plan, feeder, hc_point (480, 300), 20);

  g_assert_cmpfloat (snap.by.x_mm, ==, 475);
  g_assert_cmpint (snap.caught[0].kind, ==, HC_SNAP_MIDDLE);
}

static void
test_neighbours_catch (void)
{
  g_autoptr (HcPlan) plan = two_pens_new ();
  g_autoptr (HcFitting) other = sample_fitting ("other", 2000, 1500);
  g_autoptr (HcPlan) with = hc_plan_add_fitting (plan, other, NULL);
  HcSnap beside = hc_snap_fittings (with, feeder, hc_point (390, 320), 20);
  HcSnap in_line = hc_snap_fittings (with, feeder, hc_point (100, 495), 20);

  g_assert_cmpfloat (beside.by.x_mm, ==, 400);
  g_assert_cmpint (beside.caught[0].kind, ==, HC_SNAP_EDGE);
  g_assert_cmpfloat (in_line.by.y_mm, ==, 500);
}

static void
test_nothing_catches_without_reach (void)
{
  g_autoptr (HcPlan) plan = two_pens_new ();
  HcSnap snap = hc_snap_fittings (plan, feeder, hc_point (-699, 0), 0);
  HcPoint at = hc_snap_point (plan, hc_point (1, 1), 0);

  g_assert_cmpuint (snap.n_caught, ==, 0);
  g_assert_cmpfloat (snap.by.x_mm, ==, -699);
  g_assert_cmpfloat (at.x_mm, ==, 1);
}

static void
test_corners_come_in_line (void)
{
  g_autoptr (HcPlan) plan = two_pens_new ();
  HcSnap snap = hc_snap_corner (plan, "k1", hc_point (-500, 15), 20);
  HcSnap own = hc_snap_corner (plan, "k5", hc_point (5000, 500), 20);

  g_assert_cmpfloat (snap.by.x_mm, ==, 0);
  g_assert_cmpfloat (snap.by.y_mm, ==, -15);
  g_assert_cmpint (snap.caught[0].kind, ==, HC_SNAP_CORNER);
  g_assert_cmpuint (own.n_caught, ==, 0);
}

static void
test_points_go_to_corners_walls_and_lines (void)
{
  static const struct
  {
    double x, y, snapped_x, snapped_y;
  } rows[] = {
    { 10, -10, 0, 0 }, { 1000, 15, 1000, 0 }, { 3015, 2900, 3000, 2900 }, { 1000, 700, 1000, 700 },
  };
  g_autoptr (HcPlan) plan = two_pens_new ();

  for (guint i = 0; i < G_N_ELEMENTS (rows); i++)
    {
      HcPoint at = hc_snap_point (plan, hc_point (rows[i].x, rows[i].y), 20);

      g_assert_cmpfloat (at.x_mm, ==, rows[i].snapped_x);
      g_assert_cmpfloat (at.y_mm, ==, rows[i].snapped_y);
    }
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/snap/walls", test_walls_catch);
  g_test_add_func ("/snap/middle-of-the-pen", test_the_middle_of_the_pen_catches);
  g_test_add_func ("/snap/neighbours", test_neighbours_catch);
  g_test_add_func ("/snap/without-reach", test_nothing_catches_without_reach);
  g_test_add_func ("/snap/corners", test_corners_come_in_line);
  g_test_add_func ("/snap/points", test_points_go_to_corners_walls_and_lines);
  return g_test_run ();
}
