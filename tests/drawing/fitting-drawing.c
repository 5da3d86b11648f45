/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Every fitting has a symbol, and it stays within its footprint. */
#include "config.h"

#include "drawing/fitting-drawing.h"

#include "drawing-test.h"

/* Pixels are whole millimetres. */
#define ROUNDED_MM 1.0
#define REACH_MM 700

static const HcFittingForm forms_of_any_kind[]
    = { HC_FORM_LONG, HC_FORM_ROUND, HC_FORM_NIPPLES, HC_FORM_CUPS,
        HC_FORM_GROUP, HC_FORM_GRID, HC_FORM_RUNGS };

static HcFittingValues
fitting_of (HcFittingKind kind, HcFittingForm form, double width_mm, double depth_mm)
{
  HcFittingValues values;

  hc_fitting_values_init (&values);
  values.kind = kind;
  values.form = form;
  values.width_mm = width_mm;
  values.depth_mm = depth_mm;
  values.base_mm = 450;
  values.bars = 3;
  values.columns = 3;
  values.rows = 2;
  values.places = 5;
  values.lined = TRUE;
  values.heated = TRUE;
  return values;
}

static TestExtents
draw (const HcFittingValues *values, double scale)
{
  HcInk ink;
  cairo_surface_t *paper = test_paper_new (REACH_MM, scale, &ink);
  TestExtents extents;

  hc_draw_fitting (&ink, values);
  extents = test_paper_get_extents (paper);
  test_paper_free (paper, &ink);
  return extents;
}

static void
assert_within (const TestExtents *extents, double width_mm, double depth_mm)
{
  g_assert_false (test_extents_are_empty (extents));
  g_assert_cmpfloat (extents->left, >=, -width_mm / 2 - ROUNDED_MM);
  g_assert_cmpfloat (extents->right, <=, width_mm / 2 + ROUNDED_MM);
  g_assert_cmpfloat (extents->top, >=, -depth_mm / 2 - ROUNDED_MM);
  g_assert_cmpfloat (extents->bottom, <=, depth_mm / 2 + ROUNDED_MM);
}

static void
test_every_kind_stays_within (gconstpointer data)
{
  static const double sizes[][2] = { { 1200, 600 }, { 300, 900 }, { 60, 40 }, { 1300, 90 } };
  static const double scales[] = { 0.5, 0.14, 0.028 };
  HcFittingKind kind = (HcFittingKind) GPOINTER_TO_INT (data);

  for (guint form = 0; form < G_N_ELEMENTS (forms_of_any_kind); form++)
    for (guint size = 0; size < G_N_ELEMENTS (sizes); size++)
      for (guint scale = 0; scale < G_N_ELEMENTS (scales); scale++)
        {
          HcFittingValues values = fitting_of (kind, forms_of_any_kind[form], sizes[size][0],
                                               sizes[size][1]);
          TestExtents extents = draw (&values, scales[scale]);

          g_test_message ("form %u, size %u, scale %u", form, size, scale);
          assert_within (&extents, values.width_mm, values.depth_mm);
        }
}

static void
test_fills_its_footprint (void)
{
  HcFittingValues values = fitting_of (HC_FITTING_PLATFORM, HC_FORM_LONG, 900, 600);
  TestExtents extents = draw (&values, 0.3);

  g_assert_cmpfloat_with_epsilon (extents.right - extents.left, 900, 2);
  g_assert_cmpfloat_with_epsilon (extents.bottom - extents.top, 600, 2);
}

static void
test_draws_nothing_without_a_size (void)
{
  HcFittingValues values = fitting_of (HC_FITTING_FEEDER, HC_FORM_LONG, 0, 100);
  TestExtents extents = draw (&values, 0.3);

  g_assert_true (test_extents_are_empty (&extents));
}

static void
test_lamp_reaches_round_itself (void)
{
  HcFittingValues values = fitting_of (HC_FITTING_HEAT_LAMP, HC_FORM_ROUND, 250, 250);
  HcInk ink;
  cairo_surface_t *paper = test_paper_new (REACH_MM, 0.2, &ink);
  TestExtents extents;

  hc_draw_fitting_surroundings (&ink, &values);
  extents = test_paper_get_extents (paper);
  g_assert_cmpfloat (extents.right, >, 450);
  test_paper_free (paper, &ink);
}

static void
test_mark_stands_at_the_back_right_corner (void)
{
  HcFittingValues values = fitting_of (HC_FITTING_FEEDER, HC_FORM_LONG, 800, 200);
  HcInk ink;
  cairo_surface_t *paper = test_paper_new (REACH_MM, 0.2, &ink);
  TestExtents extents;

  hc_draw_fitting_mark (&ink, &values, HC_LEVEL_SHORT);
  extents = test_paper_get_extents (paper);
  g_assert_cmpfloat_with_epsilon ((extents.left + extents.right) / 2, 400, 2);
  g_assert_cmpfloat_with_epsilon ((extents.top + extents.bottom) / 2, -100, 2);
  test_paper_free (paper, &ink);
}

static void
test_place_moves_and_turns (void)
{
  HcFittingValues values = fitting_of (HC_FITTING_FEEDER, HC_FORM_LONG, 800, 200);
  HcInk ink;
  cairo_surface_t *paper = test_paper_new (REACH_MM, 0.2, &ink);
  double x = 100, y = 0;

  values.x_mm = 1000;
  values.y_mm = 2000;
  values.turn_deg = 90;
  hc_fitting_drawing_place (&ink, &values);
  cairo_user_to_device (ink.cr, &x, &y);
  g_assert_cmpfloat_with_epsilon (x, 1000, 1e-6);
  g_assert_cmpfloat_with_epsilon (y, 2100, 1e-6);
  test_paper_free (paper, &ink);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  for (int kind = 0; kind < HC_N_FITTING_KINDS; kind++)
    {
      g_autofree char *path = g_strconcat (
          "/fitting-drawing/stays-within/",
          hc_fitting_kind_get_word ((HcFittingKind) kind), NULL);

      g_test_add_data_func (path, GINT_TO_POINTER (kind), test_every_kind_stays_within);
    }
  g_test_add_func ("/fitting-drawing/fills-its-footprint", test_fills_its_footprint);
  g_test_add_func ("/fitting-drawing/nothing-without-a-size",
                   test_draws_nothing_without_a_size);
  g_test_add_func ("/fitting-drawing/lamp-reaches-round-itself",
                   test_lamp_reaches_round_itself);
  g_test_add_func ("/fitting-drawing/mark-at-the-corner",
                   test_mark_stands_at_the_back_right_corner);
  g_test_add_func ("/fitting-drawing/place", test_place_moves_and_turns);
  return g_test_run ();
}
