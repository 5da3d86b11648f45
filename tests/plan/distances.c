/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Distances from a fitting to the walls and fittings around it. */
#include "config.h"

#include "plan/distances.h"

static HcFitting *
fitting (const char *id, double x_mm, double y_mm, double turn_deg)
{
  HcFittingValues values;

  hc_fitting_values_init (&values);
  values.kind = HC_FITTING_STORE_BIN;
  values.x_mm = x_mm;
  values.y_mm = y_mm;
  values.turn_deg = turn_deg;
  values.width_mm = 400;
  values.depth_mm = 200;
  return hc_fitting_new (id, &values);
}

/* A pen of 3 × 2 m with a bin in it, and another beside that. */
static HcLayout *
pen_with_bins (double turn_deg)
{
  static const double xy[4][2] = { { 0, 0 }, { 3000, 0 }, { 3000, 2000 }, { 0, 2000 } };
  static const char *const names[] = { "a", "b", "c", "d", NULL };
  g_autoptr (HcParts) corners = hc_parts_new ();
  g_autoptr (HcParts) walls = hc_parts_new ();
  g_autoptr (HcParts) pens = hc_parts_new ();
  g_autoptr (HcParts) fittings = hc_parts_new ();
  HcLayoutValues layout;
  HcPenValues pen;

  for (guint i = 0; i < 4; i++)
    {
      HcCornerValues corner = { xy[i][0], xy[i][1] };
      HcWallValues wall;

      hc_wall_values_init (&wall);
      wall.from = (char *) names[i];
      wall.to = (char *) names[(i + 1) % 4];
      g_ptr_array_add (corners, hc_corner_new (names[i], &corner));
      g_ptr_array_add (walls, hc_wall_new (names[i], &wall));
    }
  g_ptr_array_add (fittings, fitting ("bin", 1000, 500, turn_deg));
  g_ptr_array_add (fittings, fitting ("other", 2000, 500, 0));
  hc_pen_values_init (&pen);
  pen.walls = (char **) names;
  pen.fittings = fittings;
  g_ptr_array_add (pens, hc_pen_new ("pen", &pen));
  hc_layout_values_init (&layout);
  layout.corners = corners;
  layout.walls = walls;
  layout.pens = pens;
  return hc_layout_new ("main", &layout);
}

static void
walls_and_neighbours_are_met (void)
{
  g_autoptr (HcLayout) layout = pen_with_bins (0);
  HcDistance distances[4];

  g_assert_cmpuint (hc_layout_measure_around (layout, "bin", distances), ==, 4);
  g_assert_cmpfloat_with_epsilon (distances[0].mm, 800, 1e-6);
  g_assert_null (distances[0].id);
  g_assert_cmpfloat_with_epsilon (distances[1].mm, 600, 1e-6);
  g_assert_cmpstr (distances[1].id, ==, "other");
  g_assert_cmpfloat_with_epsilon (distances[2].mm, 400, 1e-6);
  g_assert_cmpfloat_with_epsilon (distances[3].mm, 1400, 1e-6);
}

static void
a_turned_fitting_measures_along_its_own_sides (void)
{
  g_autoptr (HcLayout) layout = pen_with_bins (90);
  HcDistance distances[4];

  g_assert_cmpuint (hc_layout_measure_around (layout, "bin", distances), ==, 4);
  g_assert_cmpfloat_with_epsilon (distances[0].mm, 300, 1e-6);
  g_assert_cmpfloat_with_epsilon (distances[2].mm, 700, 1e-6);
}

static void
nothing_is_measured_from_what_stands_in_no_pen (void)
{
  g_autoptr (HcLayout) layout = pen_with_bins (0);
  HcDistance distances[4];

  g_assert_cmpuint (hc_layout_measure_around (layout, "none", distances), ==, 0);
}

int
main (int argc, char *argv[])
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/plan/distances/walls-and-neighbours", walls_and_neighbours_are_met);
  g_test_add_func ("/plan/distances/turned", a_turned_fitting_measures_along_its_own_sides);
  g_test_add_func ("/plan/distances/loose", nothing_is_measured_from_what_stands_in_no_pen);
  return g_test_run ();
}
