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
      HcSnap snap = hc_snap_fittings (plan, feeder, hc_point (rows[i].x, rows[i].y), 30, NULL);

      g_assert_cmpfloat (snap.by.x_mm, ==, rows[i].snapped_x);
      g_assert_cmpfloat (snap.by.y_mm, ==, rows[i].snapped_y);
      g_assert_cmpuint (snap.n_caught, ==, rows[i].n_caught);
    }
}

static void
test_the_middle_of_the_pen_catches (void)
{
  g_autoptr (HcPlan) plan = two_pens_new ();
  HcSnap snap = hc_snap_fittings (plan, feeder, hc_point (480, 300), 20, NULL);

  g_assert_cmpfloat (snap.by.x_mm, ==, 475);
  g_assert_cmpint (snap.caught[0].kind, ==, HC_SNAP_MIDDLE);
}

static void
test_neighbours_catch (void)
{
  g_autoptr (HcPlan) plan = two_pens_new ();
  g_autoptr (HcFitting) other = sample_fitting ("other", 2000, 1500);
  g_autoptr (HcPlan) with = hc_plan_add_fitting (plan, other, NULL);
  HcSnap beside = hc_snap_fittings (with, feeder, hc_point (390, 320), 20, NULL);
  HcSnap in_line = hc_snap_fittings (with, feeder, hc_point (100, 495), 20, NULL);

  g_assert_cmpfloat (beside.by.x_mm, ==, 400);
  g_assert_cmpint (beside.caught[0].kind, ==, HC_SNAP_EDGE);
  g_assert_cmpfloat (in_line.by.y_mm, ==, 500);
}

static void
test_nothing_catches_without_reach (void)
{
  g_autoptr (HcPlan) plan = two_pens_new ();
  HcSnap snap = hc_snap_fittings (plan, feeder, hc_point (-699, 0), 0, NULL);
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

/* Beside two more that are 200 mm apart, at y = 1500: 1150 and 1950 mm between. */
static void
test_even_gaps_catch (void)
{
  g_autoptr (HcPlan) plan = two_pens_new ();
  g_autoptr (HcFitting) one = sample_fitting ("one", 350, 1500);
  g_autoptr (HcFitting) two = sample_fitting ("two", 1150, 1500);
  g_autoptr (HcPlan) with_one = hc_plan_add_fitting (plan, one, NULL);
  g_autoptr (HcPlan) with = hc_plan_add_fitting (with_one, two, NULL);
  HcSnap snap = hc_snap_fittings (with, feeder, hc_point (945, 530), 20, NULL);

  g_assert_cmpfloat (snap.by.x_mm, ==, 950);
  g_assert_cmpint (snap.caught[snap.n_caught - 1].kind, ==, HC_SNAP_SPACING);
}

static HcPlan *
with_roost (HcPlan *plan, const char *id, double y_mm, int bars)
{
  HcFittingValues values;
  g_autoptr (HcFitting) roost = NULL;

  hc_fitting_values_init (&values);
  values.kind = HC_FITTING_ROOST;
  values.x_mm = 1475;
  values.y_mm = y_mm;
  values.width_mm = 1500;
  values.depth_mm = 300 * bars;
  values.bars = bars;
  roost = hc_fitting_new (id, &values);
  return hc_plan_add_fitting (plan, roost, NULL);
}

/* A bar alone lies in the middle of its 300 mm, so its axis 350 mm from the wall
 * means its middle at 350; with two bars the outer axes are 150 mm inside. */
static void
test_the_rules_catch (void)
{
  static const HcSnapRules rules = { 350, 380, 1000 };
  g_autoptr (HcPlan) plan = two_pens_new ();
  g_autoptr (HcPlan) bare = hc_plan_remove_fittings (plan, feeder, NULL);
  g_autoptr (HcPlan) one = with_roost (bare, "back", 800, 2);
  g_autoptr (HcPlan) both = with_roost (one, "front", 1600, 1);
  const char *const back[] = { "back", NULL };
  const char *const front[] = { "front", NULL };
  HcSnap wall = hc_snap_fittings (both, back, hc_point (7, -310), 20, &rules);
  HcSnap bar = hc_snap_fittings (both, front, hc_point (7, -260), 20, &rules);

  g_assert_cmpint (wall.caught[0].kind, ==, HC_SNAP_BAR_TO_WALL);
  g_assert_cmpfloat (800 + wall.by.y_mm, ==, 350 + 150);
  g_assert_cmpint (bar.caught[0].kind, ==, HC_SNAP_BAR_TO_BAR);
  g_assert_cmpfloat (1600 + bar.by.y_mm, ==, 800 + 150 + 380);
}

static void
test_feed_is_caught_away_from_water (void)
{
  static const HcSnapRules rules = { 0, 0, 1000 };
  g_autoptr (HcPlan) plan = two_pens_new ();
  HcFittingValues values = *fitting_in (plan, "drinker");
  g_autoptr (HcFitting) drinker = NULL;
  g_autoptr (HcPlan) with = NULL;
  HcSnap snap;

  values.kind = HC_FITTING_DRINKER;
  values.x_mm = 500;
  values.y_mm = 500;
  drinker = hc_fitting_new ("near", &values);
  with = hc_plan_add_fitting (plan, drinker, NULL);
  snap = hc_snap_fittings (with, feeder, hc_point (1090, -430), 20, &rules);
  g_assert_cmpfloat (1000 + snap.by.x_mm, ==, 500 + 300 + 1000 + 300);
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
  g_test_add_func ("/snap/even-gaps", test_even_gaps_catch);
  g_test_add_func ("/snap/rules", test_the_rules_catch);
  g_test_add_func ("/snap/feed-and-water", test_feed_is_caught_away_from_water);
  return g_test_run ();
}
