/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Shapes keep their promises: rounded, turned one way, safe to share. */
#include "config.h"

#include "base/shape.h"
#include "base/shape-ops.h"

#include <math.h>

static void
a_polygon_is_the_same_either_way_round (void)
{
  const HcPoint one_way[] = { { 0, 0 }, { 4000, 0 }, { 4000, 3000 } };
  const HcPoint other_way[] = { { 4000, 3000 }, { 4000, 0 }, { 0, 0 } };
  g_autoptr (HcShape) one = hc_shape_new_polygon (one_way, 3);
  g_autoptr (HcShape) other = hc_shape_new_polygon (other_way, 3);

  g_assert_true (hc_shape_equal (one, other));
  g_assert_cmpfloat (hc_shape_get_area_mm2 (other), ==, 6e6);
  g_assert_cmpfloat (hc_shape_get_perimeter_mm (other), ==, 12000);
}

static void
repeated_corners_are_left_out (void)
{
  const HcPoint corners[] = { { 0, 0 }, { 10, 0 }, { 10, 0.0002 }, { 10, 10 }, { 0, 10 }, { 0, 0 } };
  g_autoptr (HcShape) shape = hc_shape_new_polygon (corners, G_N_ELEMENTS (corners));
  guint n_points = 0;

  g_assert_nonnull (hc_shape_get_ring (shape, 0, 0, &n_points));
  g_assert_cmpuint (n_points, ==, 4);
}

static void
what_bounds_nothing_is_empty (void)
{
  const HcPoint line[] = { { 0, 0 }, { 10, 0 }, { 20, 0 } };
  const HcPoint odd[] = { { NAN, 0 }, { INFINITY, NAN }, { 0, 0 } };
  g_autoptr (HcShape) nothing = hc_shape_new_empty ();
  g_autoptr (HcShape) flat = hc_shape_new_polygon (line, 3);
  g_autoptr (HcShape) strange = hc_shape_new_polygon (odd, 3);
  g_autoptr (HcShape) thin = hc_shape_new_rectangle (hc_point (0, 0), 100, 0, 0);
  g_autoptr (HcShape) dot = hc_shape_new_circle (hc_point (0, 0), NAN);

  g_assert_true (hc_shape_is_empty (nothing));
  g_assert_true (hc_shape_is_empty (flat));
  g_assert_true (hc_shape_is_empty (strange));
  g_assert_true (hc_shape_is_empty (thin));
  g_assert_true (hc_shape_is_empty (dot));
  g_assert_true (hc_box_is_empty (hc_shape_get_bounds (nothing)));
  g_assert_cmpfloat (hc_shape_get_area_mm2 (nothing), ==, 0);
}

static void
a_circle_has_the_area_of_a_circle (void)
{
  g_autoptr (HcShape) feeder = hc_shape_new_circle (hc_point (500, 500), 350);

  g_assert_cmpfloat_with_epsilon (hc_shape_get_area_mm2 (feeder), G_PI * 175 * 175, 0.5);
  g_assert_cmpfloat_with_epsilon (hc_shape_get_perimeter_mm (feeder), G_PI * 350, 2);
}

static void
quarter_turns_are_exact (void)
{
  g_autoptr (HcShape) across = hc_shape_new_rectangle (hc_point (1000, 500), 800, 300, 90);
  HcBox bounds = hc_shape_get_bounds (across);

  g_assert_cmpfloat (bounds.x_mm, ==, 850);
  g_assert_cmpfloat (bounds.y_mm, ==, 100);
  g_assert_cmpfloat (bounds.width_mm, ==, 300);
  g_assert_cmpfloat (bounds.depth_mm, ==, 800);
}

static void
turning_keeps_area_and_holes (void)
{
  HcShape *whole = hc_shape_new_rectangle (hc_point (0, 0), 4000, 3000, 0);
  g_autoptr (HcShape) post = hc_shape_new_rectangle (hc_point (300, 0), 100, 100, 0);
  g_autoptr (HcShape) holed = hc_shape_difference (whole, post);
  g_autoptr (HcShape) turned = hc_shape_turn_and_move (holed, 33, hc_point (100, -700));

  g_assert_cmpuint (hc_shape_get_n_rings (turned, 0), ==, 2);
  g_assert_cmpfloat_with_epsilon (hc_shape_get_area_mm2 (turned), 11.99e6, 20);
  hc_shape_unref (whole);
}

static void
shapes_far_away_keep_their_area (void)
{
  g_autoptr (HcShape) far = hc_shape_new_rectangle (hc_point (9e8, -9e8), 123.456, 78.9, 0);

  g_assert_cmpfloat_with_epsilon (hc_shape_get_area_mm2 (far), 123.456 * 78.9, 0.1);
}

static void
parts_and_holes_can_be_walked (void)
{
  g_autoptr (HcShape) room = hc_shape_new_box ((HcBox){ 0, 0, 4000, 3000 });
  g_autoptr (HcShape) hole = hc_shape_new_box ((HcBox){ 500, 500, 200, 200 });
  g_autoptr (HcShape) wall = hc_shape_new_box ((HcBox){ 2000, -10, 100, 4000 });
  HcShape *off[] = { hole, wall };
  g_autoptr (HcShape) taken = hc_shape_union (off, 2);
  g_autoptr (HcShape) left = hc_shape_difference (room, taken);
  guint n_holes = 0;

  g_assert_cmpuint (hc_shape_get_n_parts (left), ==, 2);
  for (guint part = 0; part < 2; part++)
    n_holes += hc_shape_get_n_rings (left, part) - 1;
  g_assert_cmpuint (n_holes, ==, 1);
  g_assert_cmpfloat (hc_shape_get_area_mm2 (left), ==, 4000 * 3000 - 200 * 200 - 100 * 3000);
}

static gpointer
share_for_a_while (gpointer data)
{
  HcShape *shared = data;

  for (guint i = 0; i < 20000; i++)
    {
      HcShape *mine = hc_shape_ref (shared);
      hc_shape_unref (mine);
    }
  return NULL;
}

static void
threads_may_share_a_shape (void)
{
  g_autoptr (HcShape) shape = hc_shape_new_box ((HcBox){ 0, 0, 10, 10 });
  GThread *threads[4];

  for (guint i = 0; i < G_N_ELEMENTS (threads); i++)
    threads[i] = g_thread_new ("share", share_for_a_while, shape);
  for (guint i = 0; i < G_N_ELEMENTS (threads); i++)
    g_thread_join (threads[i]);
  g_assert_cmpfloat (hc_shape_get_area_mm2 (shape), ==, 100);
}

int
main (int argc,
      char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/shape/either-way-round", a_polygon_is_the_same_either_way_round);
  g_test_add_func ("/shape/repeated-corners", repeated_corners_are_left_out);
  g_test_add_func ("/shape/empty", what_bounds_nothing_is_empty);
  g_test_add_func ("/shape/circle", a_circle_has_the_area_of_a_circle);
  g_test_add_func ("/shape/quarter-turns", quarter_turns_are_exact);
  g_test_add_func ("/shape/turn", turning_keeps_area_and_holes);
  g_test_add_func ("/shape/far-away", shapes_far_away_keep_their_area);
  g_test_add_func ("/shape/rings", parts_and_holes_can_be_walked);
  g_test_add_func ("/shape/threads", threads_may_share_a_shape);
  return g_test_run ();
}
