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

/* Clipper counts in whole numbers. Shapes lie on thousandths of a millimetre; where
 * short edges must keep their direction, more digits are needed. */
static const double units_per_mm = 3e6;

static ClipperLib::IntPoint
to_int_point (HcPoint p)
{
  return ClipperLib::IntPoint (llround (p.x_mm * units_per_mm), llround (p.y_mm * units_per_mm));
}

static HcPoint
to_point (const ClipperLib::IntPoint &p)
{
  return hc_point (p.X / units_per_mm, p.Y / units_per_mm);
}

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
          path.push_back (to_int_point (points[i]));
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

/* A building of square corners: a turned room with boxes added and cut out. */
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

/* Adds a piece of area, whichever way round its corners are. */
static void
add_piece (Paths *pieces,
           const std::vector<HcPoint> &corners)
{
  ClipperLib::Path path;

  for (const HcPoint &corner : corners)
    path.push_back (to_int_point (corner));
  if (ClipperLib::Area (path) < 0)
    ClipperLib::ReversePath (path);
  pieces->push_back (path);
}

static HcPoint
move_along (HcPoint from,
            HcPoint way,
            double by_mm)
{
  return hc_point_add (from, hc_point_scale (way, by_mm));
}

static HcPoint
side_of (HcPoint way,
         double by_mm)
{
  return hc_point (by_mm < 0 ? way.y_mm : -way.y_mm, by_mm < 0 ? -way.x_mm : way.x_mm);
}

/* The gap that opens at a corner: pointed, or cut off at one and a half times as
 * far as the edges move. */
static void
add_gap (Paths *pieces,
         HcPoint corner,
         HcPoint before,
         HcPoint after,
         double by_mm)
{
  const double reach = 1.5;
  HcPoint first = side_of (before, by_mm), last = side_of (after, by_mm);
  double half = std::atan2 (std::fabs (hc_point_cross (before, after)),
                            hc_point_dot (before, after)) / 2;
  double far_mm = std::fabs (by_mm);
  double more_mm = far_mm * std::min (std::tan (half), (reach - std::cos (half)) / std::sin (half));
  HcPoint start = move_along (corner, first, far_mm), end = move_along (corner, last, far_mm);

  if (half > 1e-7)
    add_piece (pieces, { corner, start, move_along (start, before, more_mm),
                         move_along (end, after, -more_mm), end });
}

/* What edges pass over when they move to the left, or to the right when @by_mm is
 * negative: a strip each, and a gap where they part. */
static Paths
swept (const Paths &edges,
       double by_mm)
{
  Paths pieces;

  for (const ClipperLib::Path &path : edges)
    for (size_t i = 0, n = path.size (); i < n; i++)
      {
        HcPoint a = to_point (path[(i + n - 1) % n]), b = to_point (path[i]);
        HcPoint c = to_point (path[(i + 1) % n]);
        HcPoint before = hc_point_unit (hc_point_subtract (b, a));
        HcPoint after = hc_point_unit (hc_point_subtract (c, b));
        HcPoint side = side_of (after, by_mm);
        double far_mm = std::fabs (by_mm);

        add_piece (&pieces, { b, c, move_along (c, side, far_mm), move_along (b, side, far_mm) });
        if (hc_point_cross (before, after) * by_mm < 0)
          add_gap (&pieces, b, before, after, by_mm);
      }
  return pieces;
}

static HcShape *
random_fitting ()
{
  HcPoint centre = { g_test_rand_double_range (0, 6000), g_test_rand_double_range (0, 4000) };

  if (g_test_rand_bit ())
    return hc_shape_new_circle (centre, g_test_rand_double_range (100, 900));
  return hc_shape_new_rectangle (centre, g_test_rand_double_range (100, 1500),
                                 g_test_rand_double_range (100, 600),
                                 g_test_rand_double_range (0, 360));
}

/* What Clipper leaves of a floor when all that is swept is taken off, and what is
 * then swept the other way is given back. */
static Paths
open_piece_by_piece (const Paths &floor,
                     double by_mm)
{
  Paths middles = overlay (ClipperLib::ctDifference, floor, swept (floor, by_mm));
  Paths reached;

  /* Edges a unit or two long no longer know where they lead. */
  ClipperLib::CleanPolygons (middles, 2);
  reached = overlay (ClipperLib::ctUnion, middles, swept (middles, -by_mm));
  return overlay (ClipperLib::ctIntersection, reached, floor);
}

/* Where many things meet at odd angles, rounding may decide which edge comes
 * first, here or there: about 1 of 10,000 rooms, by some square centimetres. */
static void
openings_of_crammed_rooms_have_the_same_area (void)
{
  guint n_otherwise = 0;

  for (int i = 0; i < n_rounds; i++)
    {
      g_autoptr (HcShape) room = hc_shape_new_box (HcBox { 0, 0, 6000, 4000 });
      std::vector<HcShape *> fittings (g_test_rand_int_range (1, 30));
      double width_mm = g_test_rand_double_range (100, 700);
      Paths taken;

      for (HcShape *&fitting : fittings)
        {
          fitting = random_fitting ();
          for (const ClipperLib::Path &path : to_paths (fitting))
            taken.push_back (path);
        }
      g_autoptr (HcShape) ours
          = hc_shape_free_floor (room, fittings.data (), fittings.size (), width_mm);
      Paths floor = overlay (ClipperLib::ctDifference, to_paths (room), taken);
      Paths theirs = open_piece_by_piece (floor, (width_mm - 1) / 2);

      double off_mm2 = std::fabs (hc_shape_get_area_mm2 (ours) - area_mm2 (theirs));
      g_assert_cmpfloat (off_mm2, <, 5e4);
      n_otherwise += off_mm2 > 24;
      for (HcShape *fitting : fittings)
        hc_shape_unref (fitting);
    }
  g_assert_cmpuint (n_otherwise, <=, 2);
}

int
main (int argc,
      char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/clipper/union", unions_have_the_same_area);
  g_test_add_func ("/clipper/difference", differences_have_the_same_area);
  g_test_add_func ("/clipper/intersection", intersections_have_the_same_area);
  g_test_add_func ("/clipper/square-openings", openings_of_square_rooms_have_the_same_area);
  g_test_add_func ("/clipper/crammed-openings", openings_of_crammed_rooms_have_the_same_area);
  return g_test_run ();
}
