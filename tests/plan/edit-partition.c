/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Pens parted by a partition and joined again: floor, openings and things stay. */
#include "config.h"

#include "plan/edit-partition.h"

#include "base/ring.h"
#include "plan/edit-fitting.h"
#include "plan/edit-pen.h"
#include "plan/soundness.h"
#include "plan/wall-places.h"

#include "../sample/two-pens.h"

#include <math.h>

static HcLayout *
layout_of (HcPlan *plan)
{
  return hc_plan_get_layout (plan);
}

static double
floor_of (HcPlan *plan, const char *pen)
{
  HcPen *found = hc_layout_get_pen (layout_of (plan), pen);
  g_autoptr (GArray) ring = hc_layout_get_pen_corners (layout_of (plan), found);

  return fabs (hc_ring_area_mm2 ((const HcPoint *) ring->data, ring->len));
}

static HcPlan *
split (HcPlan *plan, const char *pen, HcPoint one, HcPoint other, char **ids, GError **error)
{
  HcWallValues partition;

  hc_wall_values_init (&partition);
  partition.kind = HC_WALL_MESH;
  partition.thickness_mm = 40;
  return hc_plan_split_pen (plan, pen, one, other, &partition, NULL, (const char *const *) ids,
                            error);
}

/* From any place on the upper wall to any on the lower, the door and the pop
 * hole of which stay where they are. */
static void
test_halves_make_the_whole_and_joining_undoes_it (void)
{
  g_autoptr (HcPlan) plan = two_pens_new ();

  for (guint i = 0; i < 200; i++)
    {
      g_auto (GStrv) ids = hc_pen_ids_new ();
      g_autoptr (GError) error = NULL;
      HcPoint one = hc_point (g_test_rand_double_range (50, 2950), 0);
      HcPoint other = hc_point (g_test_rand_double_range (50, 2950), 2000);
      g_autoptr (HcPlan) parted = split (plan, "left", one, other, ids, &error);
      g_autoptr (HcPlan) again = NULL;

      if (parted == NULL)
        {
          assert_refused (parted, &error);
          continue;
        }
      assert_sound (parted);
      g_assert_cmpfloat_with_epsilon (floor_of (parted, "left") + floor_of (parted, ids[0]),
                                      floor_of (plan, "left"), 10);
      g_assert_nonnull (fitting_in (parted, "feeder"));
      again = hc_plan_join_pens (parted, "left", ids[0], &error);
      g_assert_no_error (error);
      assert_sound (again);
      g_assert_cmpfloat_with_epsilon (floor_of (again, "left"), floor_of (plan, "left"), 0.001);
      g_assert_cmpuint (hc_layout_get (layout_of (again))->walls->len, ==, 7);
      g_assert_cmpuint (hc_layout_get (layout_of (again))->corners->len, ==, 6);
      g_assert_cmpstr (home_of_fitting (again, "feeder"), ==, "left");
    }
}

static void
test_openings_and_things_keep_their_place (void)
{
  g_autoptr (HcPlan) plan = two_pens_new ();
  g_auto (GStrv) ids = hc_pen_ids_new ();
  g_autoptr (GError) error = NULL;
  HcPoint door = place_of (plan, "door");
  HcPoint hole = place_of (plan, "hole");
  g_autoptr (HcPlan) parted
      = split (plan, "left", hc_point (1950, 30), hc_point (1950, 1990), ids, &error);

  g_assert_no_error (error);
  g_assert_true (hc_point_equal (place_of (parted, "door"), door));
  g_assert_true (hc_point_equal (place_of (parted, "hole"), hole));
  g_assert_cmpstr (home_of_fitting (parted, "feeder"), ==, "left");
  g_assert_cmpfloat (fitting_in (parted, "feeder")->x_mm, ==, 1000);
}

/* The smaller part is the new pen, and takes what stands in it. */
static void
test_the_larger_part_stays_the_pen (void)
{
  g_autoptr (HcPlan) plan = two_pens_new ();
  g_auto (GStrv) ids = hc_pen_ids_new ();
  g_autoptr (HcPlan) parted
      = split (plan, "right", hc_point (4600, 0), hc_point (4600, 2000), ids, NULL);
  g_autoptr (HcPlan) joined = NULL;

  g_assert_cmpfloat_with_epsilon (floor_of (parted, "right"), 1600 * 2000, 0.001);
  g_assert_cmpstr (home_of_fitting (parted, "drinker"), ==, ids[0]);
  joined = hc_plan_join_pens (parted, ids[0], "right", NULL);
  g_assert_cmpstr (home_of_fitting (joined, "drinker"), ==, ids[0]);
  g_assert_null (hc_layout_get_pen (layout_of (joined), "right"));
}

static void
test_a_door_in_the_partition (void)
{
  g_autoptr (HcPlan) plan = two_pens_new ();
  g_auto (GStrv) ids = hc_pen_ids_new ();
  g_autoptr (GError) error = NULL;
  HcWallValues partition;
  HcOpeningValues door;
  g_autoptr (HcPlan) parted = NULL;
  const HcOpeningValues *there;

  hc_wall_values_init (&partition);
  hc_opening_values_init (&door);
  door.kind = HC_OPENING_KEEPER_DOOR;
  door.width_mm = 800;
  door.height_mm = 1900;
  door.along_mm = 1000;
  parted = hc_plan_split_pen (plan, "right", hc_point (4600, 0), hc_point (4600, 2000),
                              &partition, &door, (const char *const *) ids, &error);
  g_assert_no_error (error);
  there = hc_opening_get (hc_layout_get (layout_of (parted))->openings->pdata[2]);
  g_assert_cmpfloat_with_epsilon (there->along_mm, 1000, 0.001);
  g_assert_cmpfloat (there->width_mm, ==, 800);
  g_clear_pointer (&parted, hc_plan_unref);
  door.width_mm = 2500;
  parted = hc_plan_split_pen (plan, "right", hc_point (4600, 0), hc_point (4600, 2000),
                              &partition, &door, (const char *const *) ids, &error);
  assert_refused (g_steal_pointer (&parted), &error);
}

static void
test_joining_takes_birds_along (void)
{
  g_autoptr (HcPlan) plan = two_pens_new ();
  g_autoptr (HcPlan) joined = hc_plan_join_pens (plan, "right", "left", NULL);

  g_assert_cmpstr (hc_batch_get (hc_plan_get (joined)->batches->pdata[0])->pen, ==, "right");
  g_assert_cmpfloat_with_epsilon (floor_of (joined, "right"), 6000 * 2000, 0.001);
  g_assert_cmpstr (home_of_fitting (joined, "feeder"), ==, "right");
  assert_sound (joined);
}

/* A T: a bar of 6 × 2 m and a stem of 2 × 3 m below its middle. */
static void
test_a_t_shape_is_parted_at_its_stem (void)
{
  static const HcPoint tee[] = { { 0, 0 },       { 6000, 0 },    { 6000, 2000 }, { 4000, 2000 },
                                 { 4000, 5000 }, { 2000, 5000 }, { 2000, 2000 }, { 0, 2000 } };
  g_autoptr (HcPlan) empty = hc_plan_new_empty ("plan", "T");
  g_auto (GStrv) ids = hc_pen_ids_new ();
  g_auto (GStrv) more = hc_pen_ids_new ();
  g_autoptr (GError) error = NULL;
  HcPenValues pen;
  HcWallValues walls;
  g_autoptr (HcPlan) drawn = NULL;
  g_autoptr (HcPlan) parted = NULL;

  hc_pen_values_init (&pen);
  hc_wall_values_init (&walls);
  pen.name = (char *) "T";
  drawn = hc_plan_add_pen_outline (empty, &pen, &walls, tee, G_N_ELEMENTS (tee),
                                   (const char *const *) ids, &error);
  g_assert_no_error (error);
  parted = split (drawn, ids[0], tee[6], tee[3], more, &error);
  g_assert_no_error (error);
  g_assert_cmpfloat_with_epsilon (floor_of (parted, ids[0]), 6000 * 2000, 0.001);
  g_assert_cmpfloat_with_epsilon (floor_of (parted, more[0]), 2000 * 3000, 0.001);
  assert_refused (split (drawn, ids[0], tee[2], tee[4], more, &error), &error);
}

static void
test_what_cannot_be_is_refused (void)
{
  g_autoptr (HcPlan) plan = two_pens_new ();
  g_auto (GStrv) ids = hc_pen_ids_new ();
  g_autoptr (GError) error = NULL;

  assert_refused (split (plan, "gone", hc_point (0, 0), hc_point (1, 1), ids, &error), &error);
  g_clear_error (&error);
  assert_refused (split (plan, "left", hc_point (500, 0), hc_point (1500, 0), ids, &error), &error);
  g_clear_error (&error);
  assert_refused (split (plan, "left", hc_point (500, 0), hc_point (500, 0), ids, &error), &error);
  g_clear_error (&error);
  assert_refused (hc_plan_join_pens (plan, "left", "left", &error), &error);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/edit-partition/whole", test_halves_make_the_whole_and_joining_undoes_it);
  g_test_add_func ("/edit-partition/places", test_openings_and_things_keep_their_place);
  g_test_add_func ("/edit-partition/larger", test_the_larger_part_stays_the_pen);
  g_test_add_func ("/edit-partition/door", test_a_door_in_the_partition);
  g_test_add_func ("/edit-partition/birds", test_joining_takes_birds_along);
  g_test_add_func ("/edit-partition/tee", test_a_t_shape_is_parted_at_its_stem);
  g_test_add_func ("/edit-partition/refused", test_what_cannot_be_is_refused);
  return g_test_run ();
}
