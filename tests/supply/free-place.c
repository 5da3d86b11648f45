/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Room for one thing more. */
#include "config.h"

#include "sample.h"

#include "base/shape-relate.h"
#include "supply/free-place.h"
#include "supply/stand.h"

static HcFitting *
make_bin (HcPoint at)
{
  HcFittingValues values;

  hc_fitting_values_init (&values);
  values.kind = HC_FITTING_STORE_BIN;
  values.x_mm = at.x_mm;
  values.y_mm = at.y_mm;
  values.width_mm = 500;
  values.depth_mm = 400;
  return hc_fitting_new ("bin", &values);
}

static HcPoint
find_place (const Sample *sample, HcPoint near)
{
  const HcRoof roof = { 0 };
  g_autoptr (HcLayout) layout = sample_make_layout (sample);
  g_autoptr (HcRoom) room = hc_room_new (layout, hc_layout_get_pen (layout, "p"), &roof);
  g_autoptr (HcFitting) bin = make_bin (hc_point (0, 0));

  return hc_room_find_free_place (room, bin, near);
}

static void
test_where_nothing_stands_it_stays (void)
{
  Sample sample;
  HcPoint found;

  sample_init (&sample, 3000, 3000);
  found = find_place (&sample, hc_point (1500, 1500));
  g_assert_cmpfloat (found.x_mm, ==, 1500);
  g_assert_cmpfloat (found.y_mm, ==, 1500);
  sample_clear (&sample);
}

static void
test_it_goes_beside_what_stands_there (void)
{
  Sample sample;
  HcPoint near = { 1500, 1500 };
  HcPoint found;
  g_autoptr (HcShape) bin = NULL;
  g_autoptr (HcShape) trough = hc_shape_new_rectangle (near, 1000, 300, 0);
  g_autoptr (HcShape) floor = hc_shape_new_rectangle (near, 3000, 3000, 0);

  sample_init (&sample, 3000, 3000);
  sample_add (&sample, HC_FITTING_FEEDER, 1500, 1500, 1000, 300);
  found = find_place (&sample, near);
  bin = hc_shape_new_rectangle (found, 500, 400, 0);
  g_assert_false (hc_shape_intersects (bin, trough));
  g_assert_true (hc_shape_contains (floor, bin));
  g_assert_cmpfloat (hc_point_distance (near, found), <, 600);
  sample_clear (&sample);
}

static void
test_a_full_room_takes_it_all_the_same (void)
{
  Sample sample;
  HcPoint found;

  sample_init (&sample, 3000, 3000);
  sample_add (&sample, HC_FITTING_PLATFORM, 1500, 1500, 2900, 2900);
  found = find_place (&sample, hc_point (1500, 1500));
  g_assert_cmpfloat (found.x_mm, ==, 1500);
  g_assert_cmpfloat (found.y_mm, ==, 1500);
  sample_clear (&sample);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/supply/free-place/where-nothing-stands-it-stays",
                   test_where_nothing_stands_it_stays);
  g_test_add_func ("/supply/free-place/it-goes-beside-what-stands-there",
                   test_it_goes_beside_what_stands_there);
  g_test_add_func ("/supply/free-place/a-full-room-takes-it-all-the-same",
                   test_a_full_room_takes_it_all_the_same);
  return g_test_run ();
}
