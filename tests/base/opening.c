/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The floor that counts: wide enough for a bird, and not a crumb is lost. */
#include "config.h"

#include "base/shape-ops.h"
#include "base/shape-relate.h"
#include "base/whole.h"

static HcShape *
box (double x_mm,
     double y_mm,
     double width_mm,
     double depth_mm)
{
  return hc_shape_new_box ((HcBox){ x_mm, y_mm, width_mm, depth_mm });
}

static void
forty_square_metres_hold_360_hens_at_nine (void)
{
  for (guint turn_deg = 0; turn_deg < 90; turn_deg += 7)
    {
      g_autoptr (HcShape) room
          = hc_shape_new_rectangle (hc_point (1234.5, 678.9), 8000, 5000, turn_deg);
      g_autoptr (HcShape) floor = hc_shape_opening (room, 300);
      double m2 = hc_shape_get_area_mm2 (floor) / 1e6;

      if (turn_deg == 0)
        g_assert_cmpfloat (m2, ==, 40);
      g_assert_cmpint (hc_whole_fit (m2 * 9, 1), ==, 360);
    }
}

/* A room of 2 m by 2 m with a slot beside a box as long as the room. */
static double
area_beside_box_mm2 (double slot_mm)
{
  g_autoptr (HcShape) room = box (0, 0, 2000, 2000);
  HcShape *fitting = box (0, 0, 2000 - slot_mm, 2000);
  g_autoptr (HcShape) floor = hc_shape_free_floor (room, &fitting, 1, 300);

  hc_shape_unref (fitting);
  return hc_shape_get_area_mm2 (floor);
}

static void
a_slot_as_wide_as_the_bird_counts_whole (void)
{
  g_assert_cmpfloat (area_beside_box_mm2 (300), ==, 300 * 2000);
  g_assert_cmpfloat (area_beside_box_mm2 (298), ==, 0);
}

static void
a_narrow_neck_is_left_out (void)
{
  const HcPoint corners[] = { { 0, 0 },      { 2000, 0 },   { 2000, 900 },  { 3000, 900 },
                              { 3000, 0 },   { 5000, 0 },   { 5000, 2000 }, { 3000, 2000 },
                              { 3000, 1100 }, { 2000, 1100 }, { 2000, 2000 }, { 0, 2000 } };
  g_autoptr (HcShape) dumbbell = hc_shape_new_polygon (corners, G_N_ELEMENTS (corners));
  g_autoptr (HcShape) floor = hc_shape_opening (dumbbell, 300);

  g_assert_cmpuint (hc_shape_get_n_parts (floor), ==, 2);
  g_assert_cmpfloat (hc_shape_get_area_mm2 (floor), ==, 8e6);
}

static void
a_cut_off_corner_is_not_won_back (void)
{
  const HcPoint corners[] = { { 100, 0 },     { 2000, 0 }, { 2000, 2000 },
                              { 0, 2000 }, { 0, 100 } };
  g_autoptr (HcShape) room = hc_shape_new_polygon (corners, G_N_ELEMENTS (corners));
  g_autoptr (HcShape) floor = hc_shape_opening (room, 600);

  g_assert_cmpfloat_with_epsilon (hc_shape_get_area_mm2 (floor), 4e6 - 5000, 1);
}

static void
a_post_in_the_corner_is_not_covered (void)
{
  g_autoptr (HcShape) room = box (0, 0, 2000, 2000);
  HcShape *post = hc_shape_new_rectangle (hc_point (30, 30), 20, 20, 45);
  g_autoptr (HcShape) floor = hc_shape_free_floor (room, &post, 1, 300);

  g_assert_cmpfloat (hc_shape_get_overlap_mm2 (floor, post), <, 0.1);
  hc_shape_unref (post);
}

static void
nothing_is_opened_when_all_widths_count (void)
{
  g_autoptr (HcShape) room = box (0, 0, 2000, 10);
  g_autoptr (HcShape) floor = hc_shape_opening (room, 0);
  g_autoptr (HcShape) nothing = hc_shape_new_empty ();
  g_autoptr (HcShape) still_nothing = hc_shape_opening (nothing, 300);

  g_assert_true (hc_shape_equal (floor, room));
  g_assert_true (hc_shape_is_empty (still_nothing));
}

static HcShape *
random_box (double turn_deg)
{
  HcPoint centre = { g_test_rand_double_range (0, 6000), g_test_rand_double_range (0, 4000) };

  return hc_shape_new_rectangle (centre, g_test_rand_double_range (100, 1500),
                                 g_test_rand_double_range (100, 600), turn_deg);
}

static HcShape *
random_fitting (void)
{
  HcPoint centre = { g_test_rand_double_range (0, 6000), g_test_rand_double_range (0, 4000) };

  if (g_test_rand_bit ())
    return hc_shape_new_circle (centre, g_test_rand_double_range (100, 500));
  return random_box (g_test_rand_double_range (0, 360));
}

#define N_FITTINGS 12

static void
the_floor_lies_in_the_room_and_beside_the_fittings (void)
{
  for (guint round = 0; round < 300; round++)
    {
      g_autoptr (HcShape) room = box (0, 0, 6000, 4000);
      g_autoptr (HcShape) all = NULL;
      g_autoptr (HcShape) floor = NULL;
      HcShape *fittings[N_FITTINGS];

      for (guint i = 0; i < N_FITTINGS; i++)
        fittings[i] = random_fitting ();
      all = hc_shape_union (fittings, N_FITTINGS);
      floor = hc_shape_free_floor (room, fittings, N_FITTINGS, 300);
      g_assert_true (hc_shape_is_empty (floor) || hc_shape_contains (room, floor));
      g_assert_cmpfloat (hc_shape_get_overlap_mm2 (floor, all), <, 60);
      for (guint i = 0; i < N_FITTINGS; i++)
        hc_shape_unref (fittings[i]);
    }
}

static void
wider_birds_and_more_boxes_leave_no_more_floor (void)
{
  for (guint round = 0; round < 20; round++)
    {
      g_autoptr (HcShape) room = box (0, 0, 6000, 4000);
      HcShape *boxes[N_FITTINGS];

      for (guint i = 0; i < N_FITTINGS; i++)
        boxes[i] = random_box (90 * g_test_rand_int_range (0, 4));
      for (double width_mm = 0; width_mm < 1000; width_mm += 100)
        for (guint n = 0; n < N_FITTINGS; n++)
          {
            g_autoptr (HcShape) floor = hc_shape_free_floor (room, boxes, n, width_mm);
            g_autoptr (HcShape) more = hc_shape_free_floor (room, boxes, n + 1, width_mm);
            g_autoptr (HcShape) wider = hc_shape_free_floor (room, boxes, n, width_mm + 100);
            double floor_mm2 = hc_shape_get_area_mm2 (floor);

            g_assert_cmpfloat (hc_shape_get_area_mm2 (more), <=, floor_mm2 + 1);
            g_assert_cmpfloat (hc_shape_get_area_mm2 (wider), <=, floor_mm2 + 1);
          }
      for (guint i = 0; i < N_FITTINGS; i++)
        hc_shape_unref (boxes[i]);
    }
}

/* A thing that stands free goes round the geometry engine, which says the same. */
static void
free_standing_things_leave_the_same_floor (void)
{
  for (guint round = 0; round < 300; round++)
    {
      double width_mm = 100 * g_test_rand_int_range (0, 7);
      g_autoptr (HcShape) room = hc_shape_new_rectangle (
          hc_point (3000, 2000), 12000, 10000, g_test_rand_double_range (0, 90));
      HcShape *fitting = random_fitting ();
      g_autoptr (HcShape) bare = hc_shape_difference (room, fitting);
      g_autoptr (HcShape) opened = hc_shape_opening (bare, width_mm);
      g_autoptr (HcShape) floor = hc_shape_free_floor (room, &fitting, 1, width_mm);

      g_assert_cmpfloat_with_epsilon (hc_shape_get_area_mm2 (floor),
                                      hc_shape_get_area_mm2 (opened), 1);
      g_assert_true (hc_shape_contains (opened, floor));
      hc_shape_unref (fitting);
    }
}

static void
long_wedges_are_left_out (void)
{
  const HcPoint corners[] = { { 0, 0 }, { 4000, 0 }, { 4000, 400 } };
  g_autoptr (HcShape) wedge = hc_shape_new_polygon (corners, 3);
  g_autoptr (HcShape) floor = hc_shape_opening (wedge, 300);

  g_assert_cmpfloat (hc_shape_get_bounds (floor).x_mm, >, 2500);
  g_assert_cmpfloat (hc_shape_get_area_mm2 (floor), >, 0);
}

int
main (int argc,
      char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/opening/360-hens", forty_square_metres_hold_360_hens_at_nine);
  g_test_add_func ("/opening/slot", a_slot_as_wide_as_the_bird_counts_whole);
  g_test_add_func ("/opening/neck", a_narrow_neck_is_left_out);
  g_test_add_func ("/opening/cut-off-corner", a_cut_off_corner_is_not_won_back);
  g_test_add_func ("/opening/post", a_post_in_the_corner_is_not_covered);
  g_test_add_func ("/opening/all-widths", nothing_is_opened_when_all_widths_count);
  g_test_add_func ("/opening/beside-fittings", the_floor_lies_in_the_room_and_beside_the_fittings);
  g_test_add_func ("/opening/monotone", wider_birds_and_more_boxes_leave_no_more_floor);
  g_test_add_func ("/opening/free-standing", free_standing_things_leave_the_same_floor);
  g_test_add_func ("/opening/wedge", long_wedges_are_left_out);
  return g_test_run ();
}
