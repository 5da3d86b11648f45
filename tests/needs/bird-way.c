/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Birds walk round what stands in their way. Lengths are worked out by hand. */
#include "config.h"

#include "supply/bird-way.h"

#include "house.h"

#include <math.h>

#define WIDE_MM 300
#define HALF_MM (WIDE_MM / 2)
#define HEAD_MM 400

typedef struct
{
  House house;
  HcHouse *built;
  GPtrArray *rooms;
  HcBirdWay *way;
} Walk;

/* A feeder of 200 mm by 200 mm in the middle of the far end. */
static void
start (Walk *walk)
{
  house_init (&walk->house);
  house_add_pen (&walk->house, "p", HC_PEN_INDOOR, 4000, 3000);
  house_add (&walk->house, "p", HC_FITTING_FEEDER, 3500, 1500, 200, 200);
}

static HcFittingValues *
add_bin (Walk *walk, double x_mm, double y_mm, double width_mm, double depth_mm)
{
  return house_add (&walk->house, "p", HC_FITTING_STORE_BIN, x_mm, y_mm, width_mm, depth_mm);
}

static void
build (Walk *walk)
{
  const HcWalker bird = { .width_mm = WIDE_MM, .headroom_mm = HEAD_MM };
  g_autoptr (HcPlan) plan = house_make_plan (&walk->house);

  walk->built = hc_house_new (hc_plan_get_layout (plan), NULL);
  walk->rooms = g_ptr_array_new ();
  for (guint i = 0; i < hc_house_get_n_rooms (walk->built); i++)
    g_ptr_array_add (walk->rooms, hc_house_get_room (walk->built, i));
  walk->way = hc_bird_way_new ((HcRoom *const *) walk->rooms->pdata, walk->rooms->len, &bird,
                               HC_FITTING_FEEDER);
}

static double
measure (Walk *walk, guint room, double x_mm, double y_mm)
{
  double distance_mm = -1;

  g_assert_nonnull (hc_bird_way_find (walk->way, room, hc_point (x_mm, y_mm), &distance_mm));
  return distance_mm;
}

static void
finish (Walk *walk)
{
  hc_bird_way_free (walk->way);
  g_ptr_array_unref (walk->rooms);
  hc_house_unref (walk->built);
  house_clear (&walk->house);
}

static double
length_of (const HcPoint *points, guint n_points)
{
  double sum = 0;

  for (guint i = 1; i < n_points; i++)
    sum += hc_point_distance (points[i - 1], points[i]);
  return sum;
}

static void
test_an_open_floor_is_crossed_straight (void)
{
  Walk walk;

  start (&walk);
  build (&walk);
  g_assert_cmpfloat_with_epsilon (measure (&walk, 0, 500, 1500), 2900, 1);
  finish (&walk);
}

/* The bin is 200 mm by 2000 mm, 400 mm from one wall and 600 mm from the other. */
static void
test_the_shorter_way_round_is_taken (void)
{
  const HcPoint round[] = { { 500, 1500 }, { 1900 - HALF_MM, 2400 + HALF_MM },
                            { 2100 + HALF_MM, 2400 + HALF_MM }, { 3400, 1600 } };
  Walk walk;

  start (&walk);
  add_bin (&walk, 2000, 1400, 200, 2000);
  build (&walk);
  g_assert_cmpfloat_with_epsilon (measure (&walk, 0, 500, 1500),
                                  length_of (round, G_N_ELEMENTS (round)), 5);
  finish (&walk);
}

/* The nearer gap is 250 mm. */
static void
test_a_bird_does_not_squeeze_through (void)
{
  const HcPoint round[] = { { 500, 2500 }, { 1900 - HALF_MM, 750 - HALF_MM },
                            { 2100 + HALF_MM, 750 - HALF_MM }, { 3400, 1400 } };
  Walk walk;

  start (&walk);
  add_bin (&walk, 2000, 1750, 200, 2000);
  build (&walk);
  g_assert_cmpfloat_with_epsilon (measure (&walk, 0, 500, 2500),
                                  length_of (round, G_N_ELEMENTS (round)), 5);
  finish (&walk);
}

static void
test_what_is_overhead_is_not_in_the_way (void)
{
  Walk walk;

  start (&walk);
  add_bin (&walk, 2000, 1500, 200, 2000)->base_mm = HEAD_MM;
  build (&walk);
  g_assert_cmpfloat_with_epsilon (measure (&walk, 0, 500, 1500), 2900, 1);
  finish (&walk);
}

/* Through the middle of a pop hole at the far end of the wall between. */
static void
test_the_next_room_is_got_to_by_its_opening (void)
{
  const HcPoint by_hole[] = { { 6000, 2500 }, { 4000 + HALF_MM, 500 }, { 4000 - HALF_MM, 500 },
                              { 3600, 1400 } };
  Walk walk;

  start (&walk);
  house_add_pen (&walk.house, "q", HC_PEN_INDOOR, 3000, 3000);
  house_add_opening (&walk.house, HC_OPENING_POP_HOLE, "p-e", 500, 300, 400);
  build (&walk);
  g_assert_cmpfloat_with_epsilon (measure (&walk, 1, 6000, 2500),
                                  length_of (by_hole, G_N_ELEMENTS (by_hole)), 150);
  finish (&walk);
}

static void
test_what_cannot_be_got_to_is_measured_straight (void)
{
  Walk walk;

  start (&walk);
  add_bin (&walk, 2000, 1500, 200, 3000);
  build (&walk);
  g_assert_cmpfloat_with_epsilon (measure (&walk, 0, 500, 1500), 2900, 1);
  finish (&walk);
}

static void
test_no_way_is_shorter_than_straight (void)
{
  for (guint trial = 0; trial < 50; trial++)
    {
      HcPoint from = hc_point (g_test_rand_double_range (200, 3800),
                               g_test_rand_double_range (200, 2800));
      double straight_mm = -1;
      Walk walk;

      start (&walk);
      for (guint i = 0; i < 6; i++)
        add_bin (&walk, g_test_rand_double_range (300, 3700),
                 g_test_rand_double_range (300, 2700), g_test_rand_double_range (50, 1200),
                 g_test_rand_double_range (50, 1200))
            ->turn_deg = g_test_rand_double_range (0, 360);
      build (&walk);
      hc_bird_way_find_straight (walk.way, from, &straight_mm);
      g_assert_cmpfloat (measure (&walk, 0, from.x_mm, from.y_mm), >=, straight_mm - 1e-6);
      finish (&walk);
    }
}

/* The farthest corner is within 3 m as the crow flies, but not on foot. */
static void
test_a_long_way_round_is_told (void)
{
  for (int blocked = 0; blocked <= 1; blocked++)
    {
      House house;
      g_autoptr (HcCheck) check = NULL;

      house_init (&house);
      house_add_pen (&house, "p", HC_PEN_INDOOR, 3000, 2500);
      house_add (&house, "p", HC_FITTING_FEEDER, 2500, 1250, 200, 200);
      house_add (&house, "p", HC_FITTING_DRINKER, 500, 1250, 200, 200);
      if (blocked)
        house_add (&house, "p", HC_FITTING_STORE_BIN, 1500, 1000, 200, 2000);
      house_add_birds (&house, "medium_layer", "p", 4, 0, -1);
      check = house_check (&house, HC_CONDITION_DAY);
      g_assert_cmpint (house_find (check, "clearance.far-from-water") != NULL, ==, blocked);
      house_clear (&house);
    }
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/bird-way/an-open-floor-is-crossed-straight",
                   test_an_open_floor_is_crossed_straight);
  g_test_add_func ("/bird-way/the-shorter-way-round-is-taken",
                   test_the_shorter_way_round_is_taken);
  g_test_add_func ("/bird-way/a-bird-does-not-squeeze-through",
                   test_a_bird_does_not_squeeze_through);
  g_test_add_func ("/bird-way/what-is-overhead-is-not-in-the-way",
                   test_what_is_overhead_is_not_in_the_way);
  g_test_add_func ("/bird-way/the-next-room-is-got-to-by-its-opening",
                   test_the_next_room_is_got_to_by_its_opening);
  g_test_add_func ("/bird-way/what-cannot-be-got-to-is-measured-straight",
                   test_what_cannot_be_got_to_is_measured_straight);
  g_test_add_func ("/bird-way/no-way-is-shorter-than-straight",
                   test_no_way_is_shorter_than_straight);
  g_test_add_func ("/bird-way/a-long-way-round-is-told", test_a_long_way_round_is_told);
  return g_test_run ();
}
