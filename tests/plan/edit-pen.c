/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Pens share walls with their neighbours and leave nothing behind. */
#include "config.h"

#include "plan/edit-pen.h"
#include "plan/soundness.h"

#include "../sample/two-pens.h"

static const HcLayoutValues *
layout_of (HcPlan *plan)
{
  return hc_layout_get (hc_plan_get_layout (plan));
}

static HcPlan *
draw (HcPlan *plan, HcPenKind kind, double x1, double y1, double x2, double y2, GError **error)
{
  g_auto (GStrv) ids = hc_pen_ids_new ();

  return hc_plan_add_pen (plan, kind, hc_point (x1, y1), hc_point (x2, y2),
                          (const char *const *) ids, error);
}

static HcPen *
newest (HcPlan *plan)
{
  HcParts *pens = layout_of (plan)->pens;

  return pens->pdata[pens->len - 1];
}

static void
test_alone (void)
{
  g_autoptr (HcPlan) plan = two_pens_new ();
  g_autoptr (HcPlan) after = draw (plan, HC_PEN_INDOOR, 0, 5000, 2000, 8000, NULL);

  assert_sound (after);
  g_assert_cmpuint (layout_of (after)->walls->len, ==, 7 + 4);
  g_assert_cmpuint (layout_of (after)->corners->len, ==, 6 + 4);
  g_assert_cmpstr (hc_pen_get (newest (after))->name, ==, "Pen 3");
}

/* The row says how many walls and corners are new. */
static void
test_shares_walls (void)
{
  static const struct
  {
    const char *what;
    double x1, y1, x2, y2;
    guint walls, corners;
  } rows[] = {
    { "a whole wall", 0, 2000, 3000, 4000, 3, 2 },
    { "both walls", 0, 2000, 6000, 4000, 3, 2 },
    { "part of a wall", 1000, 2000, 2000, 4000, 3 + 2, 4 },
    { "parts of both", 1000, 4000, 4000, 2000, 3 + 2, 4 },
    { "an outer face", 0, 2100, 3000, 4000, 3, 2 },
    { "outer faces at the corners", -100, 2100, 6100, 4000, 3, 2 },
    { "a wall and beyond", 5000, 2000, 8000, 4000, 4 + 1, 4 },
  };
  g_autoptr (HcPlan) plan = two_pens_new ();

  for (guint i = 0; i < G_N_ELEMENTS (rows); i++)
    {
      g_autoptr (GError) error = NULL;
      g_autoptr (HcPlan) after
          = draw (plan, HC_PEN_RUN, rows[i].x1, rows[i].y1, rows[i].x2, rows[i].y2, &error);

      g_test_message ("%s", rows[i].what);
      g_assert_no_error (error);
      assert_sound (after);
      g_assert_cmpuint (layout_of (after)->walls->len, ==, 7 + rows[i].walls);
      g_assert_cmpuint (layout_of (after)->corners->len, ==, 6 + rows[i].corners);
    }
}

static void
test_openings_follow_their_half (void)
{
  g_autoptr (HcPlan) plan = two_pens_new ();
  g_autoptr (HcPlan) after = draw (plan, HC_PEN_RUN, 0, 2000, 1500, 4000, NULL);
  HcPen *run = newest (after);
  const HcOpeningValues *hole = opening_in (after, "hole");

  g_assert_false (g_strv_contains ((const char *const *) hc_pen_get (run)->walls, hole->wall));
  g_assert_cmpfloat (hole->along_mm, ==, 700);
}

static void
test_overlap_is_refused (void)
{
  static const double rows[][4] = {
    { 1000, 500, 2000, 4000 }, { 500, 500, 1500, 1500 }, { -1000, -1000, 7000, 3000 },
    { 0, 5000, 50, 6000 },
  };
  g_autoptr (HcPlan) plan = two_pens_new ();

  for (guint i = 0; i < G_N_ELEMENTS (rows); i++)
    {
      g_autoptr (GError) error = NULL;

      assert_refused (draw (plan, HC_PEN_INDOOR, rows[i][0], rows[i][1], rows[i][2], rows[i][3],
                            &error),
                      &error);
    }
}

static void
test_loose_things_are_inside_then (void)
{
  g_autoptr (HcPlan) plan = two_pens_new ();
  g_autoptr (HcPlan) after = draw (plan, HC_PEN_RUN, 8000, 8000, 10000, 10000, NULL);

  g_assert_cmpstr (home_of_fitting (after, "post"), ==, hc_pen_get_id (newest (after)));
}

static void
test_removed_run_is_as_before (void)
{
  static const double rows[][4] = {
    { 0, 2000, 3000, 4000 }, { 1000, 2000, 2000, 4000 }, { 1000, 2000, 4000, 4000 },
    { 0, 5000, 2000, 7000 },
  };
  g_autoptr (HcPlan) plan = two_pens_new ();

  for (guint i = 0; i < G_N_ELEMENTS (rows); i++)
    {
      g_autoptr (HcPlan) with
          = draw (plan, HC_PEN_RUN, rows[i][0], rows[i][1], rows[i][2], rows[i][3], NULL);
      g_autoptr (HcPlan) without
          = hc_plan_remove_pen (with, hc_pen_get_id (newest (with)), NULL);

      g_assert_true (hc_plan_equal (plan, without));
    }
}

static void
test_removed_pen_leaves_shared_wall (void)
{
  g_autoptr (HcPlan) plan = two_pens_new ();
  g_autoptr (HcPlan) loose = hc_plan_remove_pen (plan, "left", NULL);
  g_autoptr (HcPlan) bare = hc_plan_remove_pen_and_fittings (plan, "left", NULL);

  assert_sound (loose);
  g_assert_cmpuint (layout_of (loose)->walls->len, ==, 4);
  g_assert_cmpuint (layout_of (loose)->corners->len, ==, 4);
  g_assert_cmpuint (layout_of (loose)->openings->len, ==, 0);
  g_assert_cmpstr (home_of_fitting (loose, "feeder"), ==, "");
  g_assert_null (hc_layout_get_fitting (hc_plan_get_layout (bare), "feeder", NULL));
  g_assert_cmpstr (hc_batch_get (hc_plan_get (bare)->batches->pdata[0])->pen, ==, NULL);
}

static void
test_values_change_but_not_the_ring (void)
{
  g_autoptr (HcPlan) plan = two_pens_new ();
  HcPenValues values = *hc_pen_get (hc_layout_get_pen (hc_plan_get_layout (plan), "left"));
  g_autoptr (HcPlan) same = hc_plan_set_pen (plan, "left", &values, NULL);
  g_autoptr (HcPlan) after = NULL;
  g_autoptr (GError) error = NULL;
  const HcPenValues *set;

  values.name = (char *) "Hens";
  values.walls = NULL;
  values.fittings = NULL;
  after = hc_plan_set_pen (plan, "left", &values, NULL);
  set = hc_pen_get (hc_layout_get_pen (hc_plan_get_layout (after), "left"));
  g_assert_true (same == plan);
  g_assert_cmpstr (set->name, ==, "Hens");
  g_assert_cmpuint (g_strv_length (set->walls), ==, 4);
  g_assert_cmpuint (set->fittings->len, ==, 1);
  values.height_mm = 5;
  assert_refused (hc_plan_set_pen (plan, "left", &values, &error), &error);
}

static void
test_any_pen_drawn_is_sound_or_refused (void)
{
  guint drawn = 0;

  for (guint i = 0; i < 300; i++)
    {
      g_autoptr (HcPlan) plan = two_pens_new ();
      g_autoptr (GError) error = NULL;
      double x = 100 * g_test_rand_int_range (-20, 70);
      double y = 100 * g_test_rand_int_range (-20, 40);
      g_autoptr (HcPlan) after
          = draw (plan, i % 2, x, y, x + 100 * g_test_rand_int_range (1, 40),
                  y + 100 * g_test_rand_int_range (1, 40), &error);

      if (after == NULL)
        {
          assert_refused (after, &error);
          continue;
        }
      drawn++;
      assert_sound (after);
    }
  g_assert_cmpuint (drawn, >, 30);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/edit-pen/alone", test_alone);
  g_test_add_func ("/edit-pen/shares-walls", test_shares_walls);
  g_test_add_func ("/edit-pen/openings-follow-their-half", test_openings_follow_their_half);
  g_test_add_func ("/edit-pen/overlap-is-refused", test_overlap_is_refused);
  g_test_add_func ("/edit-pen/loose-things-are-inside", test_loose_things_are_inside_then);
  g_test_add_func ("/edit-pen/removed-run-is-as-before", test_removed_run_is_as_before);
  g_test_add_func ("/edit-pen/removed-leaves-shared-wall", test_removed_pen_leaves_shared_wall);
  g_test_add_func ("/edit-pen/values", test_values_change_but_not_the_ring);
  g_test_add_func ("/edit-pen/any-pen-drawn", test_any_pen_drawn_is_sound_or_refused);
  return g_test_run ();
}
