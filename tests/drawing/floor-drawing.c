/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The whole floor: where it ends, what covers what, the same every time. */
#include "config.h"

#include "drawing/floor-drawing.h"
#include "drawing/open-line.h"

#include "byre.h"
#include "drawing-test.h"

#define SCALE 0.1

typedef struct
{
  cairo_surface_t *surface;
  HcBox bounds;
} Picture;

static Picture
draw (const HcPlan *plan, const HcCheck *check, HcFloorParts parts)
{
  Picture picture = { .bounds = hc_floor_get_bounds (hc_plan_get_layout (plan)) };
  HcInk ink = { .palette = hc_palette_get (HC_PALETTE_LIGHT), .scale = SCALE,
                .text_as_boxes = TRUE };

  picture.surface = cairo_image_surface_create (CAIRO_FORMAT_RGB24,
                                                (int) (picture.bounds.width_mm * SCALE),
                                                (int) (picture.bounds.depth_mm * SCALE));
  ink.cr = cairo_create (picture.surface);
  hc_ink_set (&ink, HC_PAINT_PAPER, 1);
  cairo_paint (ink.cr);
  cairo_scale (ink.cr, SCALE, SCALE);
  cairo_translate (ink.cr, -picture.bounds.x_mm, -picture.bounds.y_mm);
  hc_draw_floor (&ink, plan, check, parts);
  g_assert_cmpint (cairo_status (ink.cr), ==, CAIRO_STATUS_SUCCESS);
  cairo_destroy (ink.cr);
  cairo_surface_flush (picture.surface);
  return picture;
}

static GBytes *
pixels_of (const Picture *picture)
{
  return g_bytes_new (cairo_image_surface_get_data (picture->surface),
                      (gsize) cairo_image_surface_get_stride (picture->surface)
                          * (gsize) cairo_image_surface_get_height (picture->surface));
}

static guint32
pixel_at (const Picture *picture, double x_mm, double y_mm)
{
  const guchar *pixels = cairo_image_surface_get_data (picture->surface);
  int stride = cairo_image_surface_get_stride (picture->surface);
  int x = (int) ((x_mm - picture->bounds.x_mm) * SCALE);
  int y = (int) ((y_mm - picture->bounds.y_mm) * SCALE);

  return ((const guint32 *) (const void *) (pixels + y * stride))[x] & 0xffffff;
}

static guint32
paper (void)
{
  HcColour c = hc_palette_get_colour (hc_palette_get (HC_PALETTE_LIGHT), HC_PAINT_PAPER);

  return (guint32) (c.red * 255 + 0.5) << 16 | (guint32) (c.green * 255 + 0.5) << 8
         | (guint32) (c.blue * 255 + 0.5);
}

/* Stone walls of 450 mm round the house; the fence of the run is 60 mm thick
 * and its gate, 900 mm wide, swings out. */
static void
test_bounds_reach_round_walls_and_open_doors (void)
{
  g_autoptr (HcPlan) plan = test_byre_load ();
  HcBox bounds = hc_floor_get_bounds (hc_plan_get_layout (plan));

  g_assert_cmpfloat_with_epsilon (bounds.x_mm, -450, 0.01);
  g_assert_cmpfloat_with_epsilon (bounds.y_mm, -960, 0.01);
  g_assert_cmpfloat_with_epsilon (bounds.x_mm + bounds.width_mm, 8660, 0.01);
  g_assert_cmpfloat_with_epsilon (bounds.y_mm + bounds.depth_mm, 4650, 0.01);
}

static void
test_inside_is_covered_and_outside_is_paper (void)
{
  g_autoptr (HcPlan) plan = test_byre_load ();
  Picture picture = draw (plan, NULL, 0);

  g_assert_cmphex (pixel_at (&picture, 6000, 4000), ==, paper ());
  g_assert_cmphex (pixel_at (&picture, 1400, 900), !=, paper ());
  g_assert_cmphex (pixel_at (&picture, 1000, 3600), !=, paper ());
  g_assert_cmphex (pixel_at (&picture, 6500, 1200), !=, paper ());
  cairo_surface_destroy (picture.surface);
}

static void
test_drawn_twice_it_is_the_same (void)
{
  g_autoptr (HcPlan) plan = test_byre_load ();
  g_autoptr (HcCheck) check = test_byre_check (plan, HC_CONDITION_DAY);
  Picture one = draw (plan, check, HC_FLOOR_ALL), other = draw (plan, check, HC_FLOOR_ALL);
  g_autoptr (GBytes) a = pixels_of (&one);
  g_autoptr (GBytes) b = pixels_of (&other);

  g_assert_true (g_bytes_equal (a, b));
  cairo_surface_destroy (one.surface);
  cairo_surface_destroy (other.surface);
}

static void
test_each_part_adds_something (void)
{
  static const HcFloorParts parts[]
      = { HC_FLOOR_BIRDS, HC_FLOOR_NAMES, HC_FLOOR_DIMENSIONS, HC_FLOOR_MARKS };
  g_autoptr (HcPlan) plan = test_byre_load ();
  g_autoptr (HcCheck) check = test_byre_check (plan, HC_CONDITION_DAY);
  Picture bare = draw (plan, check, 0);
  g_autoptr (GBytes) without = pixels_of (&bare);

  for (guint i = 0; i < G_N_ELEMENTS (parts); i++)
    {
      Picture more = draw (plan, check, parts[i]);
      g_autoptr (GBytes) with = pixels_of (&more);

      g_assert_false (g_bytes_equal (with, without));
      cairo_surface_destroy (more.surface);
    }
  cairo_surface_destroy (bare.surface);
}

static void
test_an_empty_plan_draws_nothing (void)
{
  g_autoptr (HcPlan) plan = hc_plan_new_empty ("uid", "Nothing yet");
  HcInk ink;
  cairo_surface_t *sheet = test_paper_new (100, 0.1, &ink);
  TestExtents extents;

  g_assert_true (hc_box_is_empty (hc_floor_get_bounds (hc_plan_get_layout (plan))));
  hc_draw_floor (&ink, plan, NULL, HC_FLOOR_ALL);
  extents = test_paper_get_extents (sheet);
  g_assert_true (test_extents_are_empty (&extents));
  test_paper_free (sheet, &ink);
}

/* A metre of wall let in by: teeth stand out on both sides of its line. */
static void
test_open_stretches_have_teeth (void)
{
  static const HcFindingLine line = { { 100, 500 }, { 1900, 500 } };
  Picture picture = { .bounds = { 0, 0, 2000, 1000 } };
  HcInk ink = { .palette = hc_palette_get (HC_PALETTE_LIGHT), .scale = SCALE };
  guint above = 0, below = 0;

  picture.surface = cairo_image_surface_create (CAIRO_FORMAT_RGB24, 200, 100);
  ink.cr = cairo_create (picture.surface);
  hc_ink_set (&ink, HC_PAINT_PAPER, 1);
  cairo_paint (ink.cr);
  cairo_scale (ink.cr, SCALE, SCALE);
  hc_draw_open_line (&ink, &line, HC_LEVEL_SHORT);
  cairo_destroy (ink.cr);
  cairo_surface_flush (picture.surface);
  for (double x_mm = 100; x_mm < 700; x_mm += 10)
    {
      above += pixel_at (&picture, x_mm, 470) != paper ();
      below += pixel_at (&picture, x_mm, 530) != paper ();
    }
  g_assert_cmpuint (above, >, 5);
  g_assert_cmpuint (below, >, 5);
  g_assert_cmphex (pixel_at (&picture, 400, 400), ==, paper ());
  cairo_surface_destroy (picture.surface);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/floor-drawing/bounds", test_bounds_reach_round_walls_and_open_doors);
  g_test_add_func ("/floor-drawing/covered", test_inside_is_covered_and_outside_is_paper);
  g_test_add_func ("/floor-drawing/same", test_drawn_twice_it_is_the_same);
  g_test_add_func ("/floor-drawing/each-part", test_each_part_adds_something);
  g_test_add_func ("/floor-drawing/empty", test_an_empty_plan_draws_nothing);
  g_test_add_func ("/floor-drawing/open-stretches-have-teeth", test_open_stretches_have_teeth);
  return g_test_run ();
}
