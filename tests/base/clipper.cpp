/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Shapes against an independent polygon library: Clipper 6.4 by Angus Johnson
 * (Debian's libpolyclipping), on random polygons. */
#include "config.h"

#include "base/opening.h"
#include "base/shape-ops.h"

#include <cmath>
#include <clipper.hpp>
#include <vector>

using ClipperLib::Clipper;
using ClipperLib::ClipperOffset;
using ClipperLib::Paths;

static const int n_rounds = 500;

/* Clipper counts in whole numbers: thousandths of a millimetre, as shapes do. */
static const double units_per_mm = 1000;

static Paths
to_paths (const HcShape *shape)
{
  Paths paths;

  for (guint part = 0; part < hc_shape_get_n_parts (shape); part++)
    for (guint ring = 0; ring < hc_shape_get_n_rings (shape, part); ring++)
      {
        guint n_points = 0;
        const HcPoint *points = hc_shape_get_ring (shape, part, ring, &n_points);
        ClipperLib::Path path;

        for (guint i = 0; i < n_points; i++)
          path.push_back (ClipperLib::IntPoint (llround (points[i].x_mm * units_per_mm),
                                                llround (points[i].y_mm * units_per_mm)));
        paths.push_back (path);
      }
  return paths;
}

static double
area_mm2 (const Paths &paths)
{
  double area = 0;

  for (const ClipperLib::Path &path : paths)
    area += ClipperLib::Area (path);
  return area / (units_per_mm * units_per_mm);
}

static Paths
overlay (ClipperLib::ClipType type,
         const Paths &subject,
         const Paths &clip)
{
  Clipper clipper;
  Paths result;

  clipper.AddPaths (subject, ClipperLib::ptSubject, true);
  clipper.AddPaths (clip, ClipperLib::ptClip, true);
  clipper.Execute (type, result, ClipperLib::pftNonZero, ClipperLib::pftNonZero);
  return result;
}

static Paths
offset (const Paths &paths,
        double by_mm)
{
  ClipperOffset clipper (20);
  Paths result;

  clipper.AddPaths (paths, ClipperLib::jtMiter, ClipperLib::etClosedPolygon);
  clipper.Execute (result, by_mm * units_per_mm);
  return result;
}

/* A star round a middle: never crosses itself, has dents and sharp corners. */
static HcShape *
random_star (HcPoint centre,
             double largest_mm)
{
  int n_points = g_test_rand_int_range (4, 20);
  std::vector<HcPoint> points;

  for (int i = 0; i < n_points; i++)
    {
      HcPoint out = { g_test_rand_double_range (0.2, 1) * largest_mm, 0 };

      points.push_back (hc_point_add (centre, hc_point_turn (out, 360.0 * i / n_points)));
    }
  return hc_shape_new_polygon (points.data (), points.size ());
}

static double
whole_step (double least_mm,
            double most_mm)
{
  return 50 * std::round (g_test_rand_double_range (least_mm, most_mm) / 50);
}

/* A building of square corners: a turned room with boxes added and cut out. It has
 * no steps of a few millimetres: GEOS smooths away what is less than a hundredth of
 * an offset. */
static HcShape *
random_building (void)
{
  g_autoptr (HcShape) room = hc_shape_new_box (HcBox { 0, 0, 6000, 4000 });
  g_autoptr (HcShape) wing
      = hc_shape_new_box (HcBox { whole_step (0, 3000), 3000, 2500, 3000 });
  g_autoptr (HcShape) box
      = hc_shape_new_box (HcBox { whole_step (-500, 5000), whole_step (-500, 2000), 1200, 700 });
  HcShape *both[] = { room, wing };
  g_autoptr (HcShape) house = hc_shape_union (both, 2);
  g_autoptr (HcShape) floor = hc_shape_difference (house, box);

  return hc_shape_turn_and_move (floor, g_test_rand_double_range (0, 360), HcPoint { 100, 200 });
}

static HcPoint
random_middle (void)
{
  return HcPoint { g_test_rand_double_range (-1500, 1500), g_test_rand_double_range (-1500, 1500) };
}

/* Rounding moves every edge by up to a thousandth of a millimetre. */
static void
assert_same_area (const HcShape *ours,
                  const Paths &theirs)
{
  double may_differ_mm2 = 1 + hc_shape_get_perimeter_mm (ours) * 0.002;

  g_assert_cmpfloat_with_epsilon (hc_shape_get_area_mm2 (ours), area_mm2 (theirs), may_differ_mm2);
}

static void
unions_have_the_same_area (void)
{
  for (int i = 0; i < n_rounds; i++)
    {
      g_autoptr (HcShape) a = random_star (random_middle (), 2000);
      g_autoptr (HcShape) b = random_star (random_middle (), 1000);
      HcShape *both[] = { a, b };
      g_autoptr (HcShape) ours = hc_shape_union (both, 2);

      assert_same_area (ours, overlay (ClipperLib::ctUnion, to_paths (a), to_paths (b)));
    }
}

static void
differences_have_the_same_area (void)
{
  for (int i = 0; i < n_rounds; i++)
    {
      g_autoptr (HcShape) a = random_star (random_middle (), 2000);
      g_autoptr (HcShape) b = random_star (random_middle (), 1000);
      g_autoptr (HcShape) ours = hc_shape_difference (a, b);

      assert_same_area (ours, overlay (ClipperLib::ctDifference, to_paths (a), to_paths (b)));
    }
}

static void
intersections_have_the_same_area (void)
{
  for (int i = 0; i < n_rounds; i++)
    {
      g_autoptr (HcShape) a = random_star (random_middle (), 2000);
      g_autoptr (HcShape) b = random_star (random_middle (), 1000);
      g_autoptr (HcShape) ours = hc_shape_intersection (a, b);

      assert_same_area (ours, overlay (ClipperLib::ctIntersection, to_paths (a), to_paths (b)));
    }
}

static void
grown_and_shrunk_shapes_have_the_same_area (void)
{
  for (int i = 0; i < n_rounds; i++)
    {
      g_autoptr (HcShape) floor = random_building ();
      double by_mm = whole_step (-600, 600) + 10;
      g_autoptr (HcShape) ours = hc_shape_grow (floor, by_mm);

      assert_same_area (ours, offset (to_paths (floor), by_mm));
    }
}

static void
openings_of_square_rooms_have_the_same_area (void)
{
  for (int i = 0; i < n_rounds; i++)
    {
      g_autoptr (HcShape) floor = random_building ();
      /* Never as wide as a slot: Clipper's rounding then decides what is left. */
      double width_mm = whole_step (100, 900) + 20;
      g_autoptr (HcShape) ours = hc_shape_opening (floor, width_mm);
      double by_mm = (width_mm - 1) / 2;
      Paths theirs = offset (offset (to_paths (floor), -by_mm), by_mm);

      assert_same_area (ours, overlay (ClipperLib::ctIntersection, theirs, to_paths (floor)));
    }
}

int
main (int argc,
      char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/clipper/union", unions_have_the_same_area);
  g_test_add_func ("/clipper/difference", differences_have_the_same_area);
  g_test_add_func ("/clipper/intersection", intersections_have_the_same_area);
  g_test_add_func ("/clipper/grow", grown_and_shrunk_shapes_have_the_same_area);
  g_test_add_func ("/clipper/opening", openings_of_square_rooms_have_the_same_area);
  return g_test_run ();
}
