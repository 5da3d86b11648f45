/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Shapes from a tape: trilateration worked by hand, random shapes measured back,
 * and a misread measure found. */
#include "config.h"

#include "survey/survey.h"

#include "base/error.h"
#include "plan/edit-pen.h"

#include "../sample/two-pens.h"

#include <math.h>
#include <string.h>

static const HcPoint square[] = { { 0, 0 }, { 4000, 0 }, { 4000, 3000 }, { 0, 3000 } };

static HcSurvey *
solve (const HcPoint *sketch, guint n_corners, const HcTapeMeasure *measures, guint n_measures,
       GError **error)
{
  return hc_survey_solve (sketch, n_corners, measures, n_measures, HC_UNITS_METRIC, error);
}

/* By hand: A (0, 0), B (4000, 0). C is 3000 from B and 5000 from A: x = (5000² −
 * 3000² + 4000²) / 8000 = 4000, y = 3000. D is 2500 from A and 3600 from C: on
 * the line AC at (5000² + 2500² − 3600²) / 10000 = 1829 from A, and
 * √(2500² − 1829²) = 1704.31 square to it, on the side away from B. */
static void
test_by_hand (void)
{
  static const HcTapeMeasure tape[] = {
    { 0, 1, 4000 }, { 1, 2, 3000 }, { 2, 3, 3600 }, { 3, 0, 2500 }, { 0, 2, 5000 },
  };
  double along = (5000.0 * 5000 + 2500.0 * 2500 - 3600.0 * 3600) / 10000;
  double aside = sqrt (2500.0 * 2500 - along * along);
  g_autoptr (GError) error = NULL;
  g_autoptr (HcSurvey) survey = solve (square, 4, tape, G_N_ELEMENTS (tape), &error);

  g_test_summary ("Trilateration worked by hand, with the triangle of 3, 4 and 5");
  g_assert_no_error (error);
  g_assert_cmpuint (survey->spare, ==, 0);
  g_assert_cmpfloat_with_epsilon (survey->corners[2].x_mm, 4000, 0.002);
  g_assert_cmpfloat_with_epsilon (survey->corners[2].y_mm, 3000, 0.002);
  g_assert_cmpfloat_with_epsilon (survey->corners[3].x_mm, along * 0.8 - aside * 0.6, 0.002);
  g_assert_cmpfloat_with_epsilon (survey->corners[3].y_mm, along * 0.6 + aside * 0.8, 0.002);
}

/* Corners at random distances round a middle, so that walls never cross. */
static void
random_shape (HcPoint *corners, guint n_corners)
{
  for (guint i = 0; i < n_corners; i++)
    corners[i] = hc_point_turn (hc_point (g_test_rand_double_range (2500, 5000), 0),
                                360.0 * (i + g_test_rand_double_range (-0.2, 0.2)) / n_corners);
}

/* All walls, and all diagonals from the first two corners and one over. */
static guint
measure_all (const HcPoint *corners, guint n_corners, double noise_mm, HcTapeMeasure *tape)
{
  guint n = 0;

  for (guint from = 0; from < n_corners; from++)
    for (guint to = from + 1; to < n_corners; to++)
      tape[n++] = (HcTapeMeasure){ from, to,
                                   hc_point_distance (corners[from], corners[to])
                                       + g_test_rand_double_range (-noise_mm, noise_mm) };
  return n;
}

static void
roughen (const HcPoint *corners, guint n_corners, HcPoint *sketch)
{
  for (guint i = 0; i < n_corners; i++)
    sketch[i] = hc_point_add (corners[i], hc_point (g_test_rand_double_range (-400, 400),
                                                    g_test_rand_double_range (-400, 400)));
}

static void
assert_same_distances (const HcSurvey *survey, const HcPoint *corners, double within_mm)
{
  for (guint i = 0; i < survey->n_corners; i++)
    for (guint j = i + 1; j < survey->n_corners; j++)
      g_assert_cmpfloat_with_epsilon (
          hc_point_distance (survey->corners[i], survey->corners[j]),
          hc_point_distance (corners[i], corners[j]), within_mm);
}

static void
test_random_shapes (void)
{
  HcTapeMeasure tape[64];

  for (guint i = 0; i < 200; i++)
    {
      guint n_corners = g_test_rand_int_range (4, 9);
      double noise_mm = i % 2 == 0 ? 0 : 5;
      HcPoint corners[8], sketch[8];
      g_autoptr (GError) error = NULL;
      g_autoptr (HcSurvey) survey = NULL;
      guint n;

      random_shape (corners, n_corners);
      roughen (corners, n_corners, sketch);
      n = measure_all (corners, n_corners, noise_mm, tape);
      survey = solve (sketch, n_corners, tape, n, &error);
      g_assert_no_error (error);
      g_assert_cmpint (survey->doubtful, ==, -1);
      assert_same_distances (survey, corners, noise_mm == 0 ? 0.01 : 4 * noise_mm);
      for (guint k = 0; k < n; k++)
        g_assert_cmpfloat (fabs (survey->misfit_mm[k]), <=, noise_mm * 4 + 0.01);
    }
}

/* 12 cm among measures good to 3 mm. Where a corner hangs by little, two measures
 * may explain it as well; then neither is named. */
static void
test_one_misread_measure_is_named (void)
{
  HcTapeMeasure tape[64];
  guint n_named = 0;

  for (guint i = 0; i < 100; i++)
    {
      guint n_corners = g_test_rand_int_range (5, 8);
      HcPoint corners[8], sketch[8];
      g_autoptr (GError) error = NULL;
      g_autoptr (HcSurvey) survey = NULL;
      guint n, misread;

      random_shape (corners, n_corners);
      roughen (corners, n_corners, sketch);
      n = measure_all (corners, n_corners, 3, tape);
      misread = g_test_rand_int_range (0, n);
      tape[misread].length_mm += 120;
      survey = solve (sketch, n_corners, tape, n, &error);
      g_assert_no_error (error);
      if (survey->doubtful < 0)
        continue;
      n_named++;
      g_assert_cmpint (survey->doubtful, ==, misread);
      g_assert_cmpfloat_with_epsilon (survey->doubtful_by_mm, 120, 60);
    }
  g_assert_cmpuint (n_named, >=, 75);
}

static void
test_what_fits_no_shape_is_refused (void)
{
  static const HcTapeMeasure too_long[] = {
    { 0, 1, 4000 }, { 1, 2, 3000 }, { 2, 3, 4000 }, { 3, 0, 3000 }, { 0, 2, 9000 },
  };
  static const HcTapeMeasure no_shape[] = {
    { 0, 1, 4000 }, { 1, 2, 3000 }, { 2, 3, 4000 },
    { 3, 0, 3000 }, { 0, 2, 5000 }, { 1, 3, 2000 },
  };
  g_autoptr (GError) error = NULL;

  g_assert_null (solve (square, 4, too_long, G_N_ELEMENTS (too_long), &error));
  g_assert_error (error, HC_ERROR, HC_ERROR_EDIT);
  g_assert_nonnull (strstr (error->message, "A"));
  g_assert_nonnull (strstr (error->message, "C"));
  g_clear_error (&error);
  g_assert_null (solve (square, 4, no_shape, G_N_ELEMENTS (no_shape), &error));
  g_assert_error (error, HC_ERROR, HC_ERROR_EDIT);
}

/* Walls alone leave a quadrangle loose; so does the same diagonal twice. */
static void
test_too_little_is_refused (void)
{
  static const HcTapeMeasure walls[] = {
    { 0, 1, 4000 }, { 1, 2, 3000 }, { 2, 3, 4000 }, { 3, 0, 3000 }, { 0, 1, 4001 },
  };
  static const HcTapeMeasure nothing[] = {
    { 0, 1, NAN }, { 1, 2, 3000 }, { 2, 3, 4000 }, { 3, 0, 3000 }, { 0, 2, 5000 },
  };
  g_autoptr (GError) error = NULL;

  g_assert_null (solve (square, 4, walls, 4, &error));
  g_assert_error (error, HC_ERROR, HC_ERROR_EDIT);
  g_clear_error (&error);
  g_assert_null (solve (square, 4, walls, 5, &error));
  g_assert_error (error, HC_ERROR, HC_ERROR_EDIT);
  g_clear_error (&error);
  g_assert_null (solve (square, 4, nothing, 5, &error));
  g_assert_error (error, HC_ERROR, HC_ERROR_EDIT);
}

static void
test_a_survey_becomes_a_pen (void)
{
  static const HcTapeMeasure tape[] = {
    { 0, 1, 4000 }, { 1, 2, 3000 }, { 2, 3, 3600 }, { 3, 0, 2500 }, { 0, 2, 5000 },
  };
  g_autoptr (HcPlan) empty = hc_plan_new_empty ("plan", "Survey");
  g_auto (GStrv) ids = hc_pen_ids_new ();
  g_autoptr (GError) error = NULL;
  g_autoptr (HcSurvey) survey = solve (square, 4, tape, G_N_ELEMENTS (tape), &error);
  HcPenValues pen;
  HcWallValues walls;
  g_autoptr (HcPlan) plan = NULL;
  g_autoptr (GArray) ring = NULL;

  hc_pen_values_init (&pen);
  hc_wall_values_init (&walls);
  plan = hc_survey_add_pen (survey, empty, &pen, &walls, (const char *const *) ids, &error);
  g_assert_no_error (error);
  ring = hc_layout_get_pen_corners (hc_plan_get_layout (plan),
                                    hc_layout_get_pen (hc_plan_get_layout (plan), ids[0]));
  for (guint i = 0; i < 4; i++)
    g_assert_true (hc_point_equal (g_array_index (ring, HcPoint, i), survey->corners[i]));
}

/* The left pen turns out to be out of square; the right one follows. */
static void
test_a_pen_takes_the_shape_measured (void)
{
  static const HcPoint sketch[] = { { 0, 0 }, { 3000, 0 }, { 3000, 2000 }, { 0, 2000 } };
  static const HcTapeMeasure tape[] = {
    { 0, 1, 3000 }, { 1, 2, 2000 }, { 2, 3, 3050 }, { 3, 0, 2040 }, { 0, 2, 3606 },
  };
  g_autoptr (HcPlan) plan = two_pens_new ();
  g_autoptr (GError) error = NULL;
  g_autoptr (HcSurvey) survey = solve (sketch, 4, tape, G_N_ELEMENTS (tape), &error);
  g_autoptr (HcPlan) after = hc_survey_reshape_pen (survey, plan, "left", &error);
  const HcCornerValues *corner;

  g_assert_no_error (error);
  corner = hc_corner_get (hc_layout_get_corner (hc_plan_get_layout (after), "k4"));
  g_assert_cmpfloat (corner->x_mm, ==, survey->corners[3].x_mm);
  g_assert_cmpfloat (corner->y_mm, ==, survey->corners[3].y_mm);
  g_assert_cmpstr (home_of_fitting (after, "feeder"), ==, "left");
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/survey/by-hand", test_by_hand);
  g_test_add_func ("/survey/random-shapes", test_random_shapes);
  g_test_add_func ("/survey/misread", test_one_misread_measure_is_named);
  g_test_add_func ("/survey/no-shape", test_what_fits_no_shape_is_refused);
  g_test_add_func ("/survey/too-little", test_too_little_is_refused);
  g_test_add_func ("/survey/becomes-a-pen", test_a_survey_becomes_a_pen);
  g_test_add_func ("/survey/reshapes-a-pen", test_a_pen_takes_the_shape_measured);
  return g_test_run ();
}
