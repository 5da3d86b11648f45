/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Walls stand outside their line, meet in their corners and leave openings. */
#include "config.h"

#include "drawing/opening-drawing.h"
#include "drawing/poche.h"
#include "drawing/wall-drawing.h"
#include "drawing/wall-outline.h"

#include "byre.h"
#include "drawing-test.h"

#define REACH_MM 5000

static HcWallFaces
faces_of (const HcPlan *plan, const char *wall)
{
  HcLayout *layout = hc_plan_get_layout (plan);
  HcWallFaces faces;

  g_assert_true (hc_wall_faces (layout, hc_layout_get_wall (layout, wall), &faces));
  return faces;
}

static void
test_outer_walls_stand_outside_their_line (void)
{
  g_autoptr (HcPlan) plan = test_byre_load ();
  HcWallFaces faces = faces_of (plan, "w1");

  g_assert_cmpfloat (faces.inner_mm, ==, 0);
  g_assert_cmpfloat (faces.outer_mm, ==, 450);
  g_assert_cmpfloat (faces.inward.y_mm, ==, 1);
}

static void
test_partitions_are_centred (void)
{
  g_autoptr (HcPlan) plan = test_byre_load ();
  HcWallFaces faces = faces_of (plan, "p1");

  g_assert_null (faces.owner);
  g_assert_cmpfloat (faces.inner_mm, ==, 25);
  g_assert_cmpfloat (faces.outer_mm, ==, 25);
}

static void
test_the_wall_a_run_leans_on_is_the_houses (void)
{
  g_autoptr (HcPlan) plan = test_byre_load ();
  HcWallFaces faces = faces_of (plan, "w2");

  g_assert_cmpstr (hc_pen_get_id (faces.owner), ==, "hens");
  g_assert_cmpfloat (faces.inward.x_mm, ==, -1);
}

static void
test_outer_faces_meet_in_a_mitre (void)
{
  g_autoptr (HcPlan) plan = test_byre_load ();
  HcLayout *layout = hc_plan_get_layout (plan);
  HcPoint top[4], left[4];

  g_assert_true (hc_wall_outline (layout, hc_layout_get_wall (layout, "w1"), top));
  g_assert_true (hc_wall_outline (layout, hc_layout_get_wall (layout, "w7"), left));
  g_assert_true (hc_point_equal (hc_point_rounded (top[3]), hc_point (-450, -450)));
  g_assert_true (hc_point_equal (hc_point_rounded (left[2]), hc_point (-450, -450)));
}

static gboolean
is_inked (cairo_surface_t *paper, double x, double y)
{
  const guchar *pixels = cairo_image_surface_get_data (paper);
  int stride = cairo_image_surface_get_stride (paper);

  return pixels[((int) y + REACH_MM) * stride + (int) x + REACH_MM] > 128;
}

static void
test_openings_are_left_open (void)
{
  g_autoptr (HcPlan) plan = test_byre_load ();
  HcInk ink;
  cairo_surface_t *paper = test_paper_new (REACH_MM, 0.2, &ink);

  hc_draw_walls (&ink, hc_plan_get_layout (plan));
  cairo_surface_flush (paper);
  g_assert_true (is_inked (paper, 300, -200));
  g_assert_false (is_inked (paper, 900, -200));
  g_assert_true (is_inked (paper, 4400, 600));
  g_assert_false (is_inked (paper, 4400, 1500));
  g_assert_false (is_inked (paper, 2000, 1000));
  test_paper_free (paper, &ink);
}

static void
test_a_door_swings_to_the_inside (void)
{
  g_autoptr (HcPlan) plan = test_byre_load ();
  HcLayout *layout = hc_plan_get_layout (plan);
  HcOpening *door = hc_layout_get_opening (layout, "door");
  HcInk ink;
  cairo_surface_t *paper = test_paper_new (REACH_MM, 0.2, &ink);
  double thickness, x = 0, y = 100;
  TestExtents extents;

  g_assert_true (hc_opening_drawing_place (&ink, layout, door, &thickness));
  cairo_user_to_device (ink.cr, &x, &y);
  g_assert_cmpfloat (thickness, ==, 450);
  g_assert_cmpfloat_with_epsilon (x, 900, 1e-6);
  g_assert_cmpfloat_with_epsilon (y, -225 + 100, 1e-6);

  hc_draw_opening (&ink, hc_opening_get (door), thickness);
  extents = test_paper_get_extents (paper);
  g_assert_cmpfloat_with_epsilon (extents.bottom, 850, 12);
  g_assert_cmpfloat (extents.top, >=, -460);
  test_paper_free (paper, &ink);
}

static void
test_every_kind_of_opening_is_drawn (void)
{
  for (int kind = 0; kind < HC_N_OPENING_KINDS; kind++)
    {
      HcInk ink;
      cairo_surface_t *paper = test_paper_new (1500, 0.2, &ink);
      HcOpeningValues values;
      TestExtents extents;

      hc_opening_values_init (&values);
      values.kind = kind;
      values.width_mm = 600;
      hc_draw_opening (&ink, &values, 100);
      extents = test_paper_get_extents (paper);
      g_assert_cmpfloat (extents.right - extents.left, >=, 595);
      test_paper_free (paper, &ink);
    }
}

/* A fence from south to north, with its run to the west and to the east. */
static void
test_frames_are_mirrored_by_the_side_inwards (void)
{
  for (int inward = -1; inward <= 1; inward += 2)
    {
      HcWallFaces faces = { .from = { 0, 1000 }, .to = { 0, 0 }, .inward = { inward, 0 } };
      cairo_matrix_t frame;

      hc_wall_faces_get_frame (&faces, &frame);
      g_assert_cmpint (hc_wall_faces_mirror (&faces), ==, inward < 0);
      g_assert_cmpint (frame.xx * frame.yy - frame.xy * frame.yx < 0, ==, inward < 0);
    }
}

static void
test_unknown_constructions_look_like_wood (void)
{
  g_assert_cmpint (hc_poche_for_construction ("stone_wall"), ==, HC_POCHE_STONE);
  g_assert_cmpint (hc_poche_for_construction ("bottle_wall"), ==, HC_POCHE_WOOD);
  g_assert_cmpint (hc_poche_for_construction (NULL), ==, HC_POCHE_WOOD);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/walls/outside-their-line", test_outer_walls_stand_outside_their_line);
  g_test_add_func ("/walls/partitions", test_partitions_are_centred);
  g_test_add_func ("/walls/of-the-house", test_the_wall_a_run_leans_on_is_the_houses);
  g_test_add_func ("/walls/mitre", test_outer_faces_meet_in_a_mitre);
  g_test_add_func ("/walls/openings", test_openings_are_left_open);
  g_test_add_func ("/walls/door-swings-inside", test_a_door_swings_to_the_inside);
  g_test_add_func ("/walls/mirrored-frames", test_frames_are_mirrored_by_the_side_inwards);
  g_test_add_func ("/walls/every-opening", test_every_kind_of_opening_is_drawn);
  g_test_add_func ("/walls/poche", test_unknown_constructions_look_like_wood);
  return g_test_run ();
}
