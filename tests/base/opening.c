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

#define ROOM_WIDTH_MM 6000
#define ROOM_DEPTH_MM 4000

/* A room crammed with round and skew things that lie on each other and in walls. */
typedef struct
{
  HcShape *room;
  HcShape *fittings[N_FITTINGS];
} Crammed;

static void
crammed_init (Crammed *crammed)
{
  crammed->room = box (0, 0, ROOM_WIDTH_MM, ROOM_DEPTH_MM);
  for (guint i = 0; i < N_FITTINGS; i++)
    crammed->fittings[i] = random_fitting ();
}

static void
crammed_clear (Crammed *crammed)
{
  hc_shape_unref (crammed->room);
  for (guint i = 0; i < N_FITTINGS; i++)
    hc_shape_unref (crammed->fittings[i]);
}

static HcShape *
crammed_floor (const Crammed *crammed,
               double width_mm)
{
  return hc_shape_free_floor (crammed->room, crammed->fittings, N_FITTINGS, width_mm);
}

static void
the_floor_lies_in_the_room_and_beside_the_fittings (void)
{
  for (guint round = 0; round < 300; round++)
    {
      Crammed crammed;
      g_autoptr (HcShape) all = NULL;
      g_autoptr (HcShape) floor = NULL;

      crammed_init (&crammed);
      all = hc_shape_union (crammed.fittings, N_FITTINGS);
      floor = crammed_floor (&crammed, g_test_rand_double_range (0, 700));
      g_assert_true (hc_shape_is_empty (floor) || hc_shape_contains (crammed.room, floor));
      g_assert_cmpfloat (hc_shape_get_overlap_mm2 (floor, all), <, 60);
      crammed_clear (&crammed);
    }
}

/* How a plan is laid on the sheet. */
typedef struct
{
  double turn_deg;
  HcPoint move;
  gboolean is_mirrored;
} Lie;

static HcShape *
lay (HcShape *shape,
     Lie lie)
{
  guint n;
  const HcPoint *ring = hc_shape_get_ring (shape, 0, 0, &n);
  g_autofree HcPoint *corners = g_new (HcPoint, n);
  g_autoptr (HcShape) laid = NULL;

  for (guint i = 0; i < n; i++)
    corners[i] = hc_point (lie.is_mirrored ? -ring[i].x_mm : ring[i].x_mm, ring[i].y_mm);
  laid = hc_shape_new_polygon (corners, n);
  return hc_shape_turn_and_move (laid, lie.turn_deg, lie.move);
}

static void
crammed_lay (Crammed *laid,
             const Crammed *crammed,
             Lie lie)
{
  laid->room = lay (crammed->room, lie);
  for (guint i = 0; i < N_FITTINGS; i++)
    laid->fittings[i] = lay (crammed->fittings[i], lie);
}

/* Corners are rounded to 0.001 mm, so a bird this much wider or narrower may find
 * a gap open or shut that the bird itself does not. */
#define ROUNDED_WIDTH_MM 0.005

/* A millionth of the room, and as much for what the rounded width changes. */
#define ROUNDED_FLOOR_MM2 (2e-6 * ROOM_WIDTH_MM * ROOM_DEPTH_MM)

/* Where many things meet at odd angles, rounding may decide which edge comes
 * first: 3 to 5 of 10,000 such rooms, by 0.034 m² at most. */
#define MOST_OTHERWISE 3
#define MOST_OTHERWISE_MM2 5e4

static double
difference_mm2 (const Crammed *one,
                const Crammed *other,
                double width_mm)
{
  g_autoptr (HcShape) floor = crammed_floor (one, width_mm);
  g_autoptr (HcShape) for_narrower = crammed_floor (other, width_mm - ROUNDED_WIDTH_MM);
  g_autoptr (HcShape) for_wider = crammed_floor (other, width_mm + ROUNDED_WIDTH_MM);
  double area_mm2 = hc_shape_get_area_mm2 (floor);

  return MAX (area_mm2 - hc_shape_get_area_mm2 (for_narrower),
              hc_shape_get_area_mm2 (for_wider) - area_mm2);
}

static void
turned_mirrored_and_moved_rooms_have_the_same_floor (void)
{
  guint n_otherwise = 0;

  for (guint round = 0; round < 300; round++)
    {
      Lie lie = { g_test_rand_double_range (0, 360),
                  { g_test_rand_double_range (-1e5, 1e5), g_test_rand_double_range (-1e5, 1e5) },
                  g_test_rand_bit () };
      Crammed crammed, laid;
      double off_mm2;

      crammed_init (&crammed);
      crammed_lay (&laid, &crammed, lie);
      off_mm2 = difference_mm2 (&crammed, &laid, g_test_rand_double_range (100, 700));
      g_assert_cmpfloat (off_mm2, <, MOST_OTHERWISE_MM2);
      n_otherwise += off_mm2 > ROUNDED_FLOOR_MM2;
      crammed_clear (&crammed);
      crammed_clear (&laid);
    }
  g_assert_cmpuint (n_otherwise, <=, MOST_OTHERWISE);
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

static HcShape *
random_oddity (void)
{
  double x_mm = 100 * g_test_rand_int_range (-10, 30), y_mm = 100 * g_test_rand_int_range (-10, 30);

  switch (g_test_rand_int_range (0, 6))
    {
    case 0: /* a sliver */
      return hc_shape_new_rectangle (hc_point (x_mm, y_mm), 3000, 0.002,
                                     g_test_rand_double_range (0, 180));
    case 1: /* nothing */
      return box (x_mm, y_mm, 0, 0);
    case 2: /* out of the house */
      return box (x_mm + 10000, y_mm, 500, 500);
    case 3: /* larger than the room */
      return box (x_mm - 200, -500, 400, 4000);
    case 4: /* a crumb */
      return box (x_mm, y_mm, 0.001, 0.001);
    default: /* touches others and walls */
      return box (x_mm, y_mm, 100 * g_test_rand_int_range (1, 9), 300);
    }
}

static void
odd_rooms_have_a_sound_floor (void)
{
  for (guint round = 0; round < 500; round++)
    {
      g_autoptr (HcShape) room = box (0, 0, 2000, g_test_rand_bit () ? 2000 : 0.001);
      HcShape *oddities[N_FITTINGS];

      for (guint i = 0; i < N_FITTINGS; i++)
        oddities[i] = random_oddity ();
      for (double width_mm = 0; width_mm < 1000; width_mm += 300)
        {
          g_autoptr (HcShape) floor
              = hc_shape_free_floor (room, oddities, N_FITTINGS, width_mm);
          double area_mm2 = hc_shape_get_area_mm2 (floor);

          g_assert_cmpfloat (area_mm2, >=, 0);
          g_assert_cmpfloat (area_mm2, <=, hc_shape_get_area_mm2 (room));
        }
      for (guint i = 0; i < N_FITTINGS; i++)
        hc_shape_unref (oddities[i]);
    }
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
  g_test_add_func ("/opening/laid-otherwise", turned_mirrored_and_moved_rooms_have_the_same_floor);
  g_test_add_func ("/opening/odd-rooms", odd_rooms_have_a_sound_floor);
  g_test_add_func ("/opening/monotone", wider_birds_and_more_boxes_leave_no_more_floor);
  g_test_add_func ("/opening/free-standing", free_standing_things_leave_the_same_floor);
  g_test_add_func ("/opening/wedge", long_wedges_are_left_out);
  return g_test_run ();
}
