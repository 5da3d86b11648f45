/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Lengths beside walls keep off each other. */
#include "config.h"

#include "drawing/dimension.h"

#include "drawing/text.h"

#include "drawing-test.h"
#include "files/store.h"
#include "plan/edit-opening.h"

#define REACH_MM 4000
#define SCALE 0.1

/* The corner cut out is 60 cm by 60 cm, its walls 6 cm thick. The line of the
 * lying one runs 18 units, here 180 mm, below its outer face and is crossed by
 * that of the standing one. */
#define LINE_Y_MM (1400 + 60 + 180)
#define CROSSED_AT_X_MM (2400 + 60 + 180)
#define MIDDLE_X_MM 2700

static HcPlan *
load_notch (void)
{
  g_autoptr (GError) error = NULL;
  g_autoptr (GFile) file = g_file_new_for_path (
      g_test_get_filename (G_TEST_DIST, "data", "notch.hencote", NULL));
  g_autoptr (HcPlanFile) read = hc_plan_store_load (file, NULL, &error);

  g_assert_no_error (error);
  return hc_plan_ref (read->plan);
}

static guint
ink_at (cairo_surface_t *paper, int x_mm, int y_mm)
{
  int stride = cairo_image_surface_get_stride (paper);

  cairo_surface_flush (paper);
  return cairo_image_surface_get_data (paper)[(y_mm + REACH_MM) * stride + x_mm + REACH_MM];
}

static void
test_words_keep_off_a_crossing_line (void)
{
  g_autoptr (HcPlan) plan = load_notch ();
  HcInk ink;
  cairo_surface_t *paper = test_paper_new (REACH_MM, SCALE, &ink);
  HcTextBox words = hc_text_measure (&ink, HC_HAND_SMALL, "60 cm", 0);
  int half_mm = (int) (words.width / SCALE / 2), below_mm = (int) (words.height / SCALE / 2);
  int crossing_mm = MIDDLE_X_MM - CROSSED_AT_X_MM;

  g_assert_cmpint (half_mm, >, crossing_mm);
  hc_draw_dimensions (&ink, hc_plan_get_layout (plan), HC_UNITS_METRIC);
  g_assert_cmpuint (ink_at (paper, CROSSED_AT_X_MM + crossing_mm / 2, LINE_Y_MM + below_mm), ==, 0);
  g_assert_cmpuint (ink_at (paper, MIDDLE_X_MM + half_mm, LINE_Y_MM + below_mm), >, 0);
  test_paper_free (paper, &ink);
}

/* A door as wide as three times what the line keeps off the wall at this scale. */
static void
test_line_keeps_off_a_swinging_door (void)
{
  const HcOpeningValues door = { .kind = HC_OPENING_KEEPER_DOOR, .wall = "w4",
                                 .along_mm = 1600, .width_mm = 600, .height_mm = 1800,
                                 .swing = HC_SWING_OUT };
  g_autoptr (HcPlan) plan = load_notch ();
  g_autoptr (HcOpening) opening = hc_opening_new ("door", &door);
  g_autoptr (HcPlan) with_door = hc_plan_add_opening (plan, opening, NULL);
  HcInk ink;
  cairo_surface_t *paper = test_paper_new (REACH_MM, SCALE, &ink);
  int near_mm = 2000 + 60 + 180, far_mm = 2000 + 60 + 600 + 60, x_mm = 500;

  hc_draw_dimensions (&ink, hc_plan_get_layout (plan), HC_UNITS_METRIC);
  g_assert_cmpuint (ink_at (paper, x_mm, near_mm), >, 0);
  test_paper_free (paper, &ink);
  paper = test_paper_new (REACH_MM, SCALE, &ink);
  hc_draw_dimensions (&ink, hc_plan_get_layout (with_door), HC_UNITS_METRIC);
  g_assert_cmpuint (ink_at (paper, x_mm, near_mm), ==, 0);
  g_assert_cmpuint (ink_at (paper, x_mm, far_mm), >, 0);
  test_paper_free (paper, &ink);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/dimension/crossing-line", test_words_keep_off_a_crossing_line);
  g_test_add_func ("/dimension/swinging-door", test_line_keeps_off_a_swinging_door);
  return g_test_run ();
}
