/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Heights, areas and volumes under roofs worked by hand, and one roof over
 * pens side by side. */
#include "config.h"

#include "plan/roof.h"

#include "../sample/two-pens.h"

#include "plan/edit-pen.h"

#define TOUCH 1e-6

/* 4 m across, from 2 m at the eaves to 3.5 m: a slope of 3 in 4 on both sides
 * of a middle ridge, so that 2 m of plan are 2.5 m of roof. */
static const HcRoof gable = { 2000, 3500, { 0, 1 }, 0, 2000, 4000 };
static const HcRoof lean_to = { 2000, 3500, { 0, 1 }, 0, 2000, 2000 };
static const HcRoof level = { 2000, 2000, { 0, 0 }, 0, 0, 0 };

static const HcPoint hall[] = { { 0, 0 }, { 6000, 0 }, { 6000, 4000 }, { 0, 4000 } };
static const HcPoint shed[] = { { 0, 0 }, { 6000, 0 }, { 6000, 2000 }, { 0, 2000 } };

static void
test_heights (void)
{
  static const struct
  {
    const HcRoof *roof;
    double y_mm, height_mm;
  } rows[] = {
    { &gable, 0, 2000 },   { &gable, 1000, 2750 },   { &gable, 2000, 3500 },
    { &gable, 3000, 2750 }, { &gable, 4000, 2000 },  { &gable, -50, 2000 },
    { &lean_to, 0, 2000 }, { &lean_to, 1000, 2750 }, { &lean_to, 2000, 3500 },
    { &level, 700, 2000 },
  };

  for (guint i = 0; i < G_N_ELEMENTS (rows); i++)
    g_assert_cmpfloat_with_epsilon (
        hc_roof_get_height_mm (rows[i].roof, hc_point (1234, rows[i].y_mm)), rows[i].height_mm,
        TOUCH);
}

static void
test_bands (void)
{
  double from_mm, to_mm;

  g_assert_true (hc_roof_find_band (&gable, 2750, &from_mm, &to_mm));
  g_assert_cmpfloat_with_epsilon (from_mm, 1000, TOUCH);
  g_assert_cmpfloat_with_epsilon (to_mm, 3000, TOUCH);
  g_assert_true (hc_roof_find_band (&lean_to, 1500, &from_mm, &to_mm));
  g_assert_cmpfloat_with_epsilon (from_mm, 0, TOUCH);
  g_assert_cmpfloat_with_epsilon (to_mm, 2000, TOUCH);
  g_assert_false (hc_roof_find_band (&gable, 3501, &from_mm, &to_mm));
}

static void
test_areas_and_volumes (void)
{
  g_assert_cmpfloat_with_epsilon (hc_roof_get_area_mm2 (&gable, hall, 4), 6000 * 5000, TOUCH);
  g_assert_cmpfloat_with_epsilon (hc_roof_get_area_mm2 (&lean_to, shed, 4), 6000 * 2500, TOUCH);
  g_assert_cmpfloat_with_epsilon (hc_roof_get_area_mm2 (&level, shed, 4), 6000 * 2000, TOUCH);
  g_assert_cmpfloat_with_epsilon (hc_roof_get_volume_mm3 (&gable, hall, 4),
                                  6000.0 * 4000 * 2750, 1);
  g_assert_cmpfloat_with_epsilon (hc_roof_get_volume_mm3 (&lean_to, shed, 4),
                                  6000.0 * 2000 * 2750, 1);
  g_assert_cmpfloat_with_epsilon (hc_roof_get_wall_area_mm2 (&gable, hall[0], hall[1]),
                                  6000 * 2000, TOUCH);
  g_assert_cmpfloat_with_epsilon (hc_roof_get_wall_area_mm2 (&gable, hall[1], hall[2]),
                                  4000 * 2000 + 4000 * 1500 / 2, TOUCH);
  g_assert_cmpfloat_with_epsilon (hc_roof_get_wall_area_mm2 (&lean_to, shed[1], shed[2]),
                                  2000 * 2750, TOUCH);
  g_assert_cmpfloat_with_epsilon (hc_roof_get_highest_mm (&gable, hall[1], hall[2]), 3500, TOUCH);
}

/* Cut by any line, the parts of a floor have the roof and the room of the whole. */
static void
test_parts_make_the_whole (void)
{
  for (guint i = 0; i < 500; i++)
    {
      double cut_mm = g_test_rand_double_range (1, 5999);
      double skew_mm = g_test_rand_double_range (1, 5999);
      HcPoint one[] = { hall[0], { cut_mm, 0 }, { skew_mm, 4000 }, hall[3] };
      HcPoint other[] = { { cut_mm, 0 }, hall[1], hall[2], { skew_mm, 4000 } };
      HcRoof roof = gable;

      roof.ridge_at_mm = g_test_rand_double_range (1, 3999);
      g_assert_cmpfloat_with_epsilon (hc_roof_get_area_mm2 (&roof, one, 4)
                                          + hc_roof_get_area_mm2 (&roof, other, 4),
                                      hc_roof_get_area_mm2 (&roof, hall, 4), 0.01);
      g_assert_cmpfloat_with_epsilon (hc_roof_get_volume_mm3 (&roof, one, 4)
                                          + hc_roof_get_volume_mm3 (&roof, other, 4),
                                      hc_roof_get_volume_mm3 (&roof, hall, 4), 1);
    }
}

static HcPlan *
roofed (HcPlan *plan, const char *id, double eaves_mm, double ridge_mm, double turn_deg)
{
  HcPenValues pen = *hc_pen_get (hc_layout_get_pen (hc_plan_get_layout (plan), id));
  g_autoptr (GError) error = NULL;
  HcPlan *after;

  pen.height_mm = eaves_mm;
  pen.ridge_mm = ridge_mm;
  pen.roof_turn_deg = turn_deg;
  after = hc_plan_set_pen (plan, id, &pen, &error);
  g_assert_no_error (error);
  return after;
}

/* The pens are 2950 mm wide inside, with 100 mm of wall between. */
static void
test_pens_that_say_the_same_share_a_roof (void)
{
  g_autoptr (HcPlan) plan = two_pens_new ();
  g_autoptr (HcPlan) one = roofed (plan, "left", 2000, 3000, 0);
  g_autoptr (HcPlan) both = roofed (one, "right", 2000, 3000, 0);
  HcRoof alone = hc_layout_get_roof (hc_plan_get_layout (one), "left");
  HcRoof left = hc_layout_get_roof (hc_plan_get_layout (both), "left");
  HcRoof right = hc_layout_get_roof (hc_plan_get_layout (both), "right");

  g_assert_cmpfloat_with_epsilon (alone.to_mm, 2950, TOUCH);
  g_assert_cmpfloat_with_epsilon (hc_roof_get_height_mm (&alone, hc_point (1475, 0)), 3000, TOUCH);
  g_assert_true (hc_roof_equal (&left, &right));
  g_assert_cmpfloat_with_epsilon (left.to_mm, 6000, TOUCH);
  g_assert_cmpfloat_with_epsilon (hc_roof_get_height_mm (&left, hc_point (3000, 0)), 3000, TOUCH);
}

static void
test_a_ridge_below_the_eaves_is_refused (void)
{
  g_autoptr (HcPlan) plan = two_pens_new ();
  HcPenValues pen = *hc_pen_get (hc_layout_get_pen (hc_plan_get_layout (plan), "left"));
  g_autoptr (GError) error = NULL;

  pen.height_mm = 2200;
  pen.ridge_mm = 2100;
  assert_refused (hc_plan_set_pen (plan, "left", &pen, &error), &error);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/roof/heights", test_heights);
  g_test_add_func ("/roof/bands", test_bands);
  g_test_add_func ("/roof/areas-and-volumes", test_areas_and_volumes);
  g_test_add_func ("/roof/parts-make-the-whole", test_parts_make_the_whole);
  g_test_add_func ("/roof/shared", test_pens_that_say_the_same_share_a_roof);
  g_test_add_func ("/roof/below-the-eaves", test_a_ridge_below_the_eaves_is_refused);
  return g_test_run ();
}
