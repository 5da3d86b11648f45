/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The air of a night, drawn: what flows and what sweats shows, in every palette. */
#include "config.h"

#include "drawing/air-chart.h"
#include "drawing/side-air.h"

#include "sample/demo-night.h"

#define WIDTH 600
#define HEIGHT 300
#define SIDE 8

static guint
count_inked (cairo_surface_t *surface)
{
  const guchar *data = cairo_image_surface_get_data (surface);
  int stride = cairo_image_surface_get_stride (surface);
  guint inked = 0;

  cairo_surface_flush (surface);
  for (int y = 0; y < HEIGHT; y++)
    for (int x = 0; x < WIDTH; x++)
      inked += data[y * stride + 4 * x + 3] != 0;
  return inked;
}

static guint
draw_night (HcHouseNight *night, HcPaletteKind kind)
{
  cairo_surface_t *surface = cairo_image_surface_create (CAIRO_FORMAT_ARGB32, WIDTH, HEIGHT);
  HcInk ink = { cairo_create (surface), hc_palette_get (kind), 0.05, TRUE, 0 };
  HcSideCut cut;
  HcBox box;
  guint inked;

  g_assert_true (hc_side_air_find_cut (night, night->night.worst, &cut));
  box = hc_side_air_get_bounds (night, &cut, night->night.worst);
  cairo_scale (ink.cr, ink.scale, ink.scale);
  cairo_translate (ink.cr, -box.x_mm, -box.y_mm);
  hc_draw_side_air (&ink, night, &cut, night->night.worst);
  inked = count_inked (surface);
  cairo_destroy (ink.cr);
  cairo_surface_destroy (surface);
  return inked;
}

static HcHouseNight *
night_with_vents (double open)
{
  g_autoptr (HcPlan) plan = demo_plan ();
  g_autoptr (HcPlan) changed = demo_with_vents (plan, open);

  return demo_night (changed);
}

static void
test_shut_house_sweats_and_open_house_flows (void)
{
  g_autoptr (HcHouseNight) shut = night_with_vents (0);
  g_autoptr (HcHouseNight) open = night_with_vents (1);

  for (HcPaletteKind kind = HC_PALETTE_LIGHT; kind <= HC_PALETTE_PRINT; kind++)
    {
      g_assert_cmpuint (draw_night (shut, kind), >, 0);
      g_assert_cmpuint (draw_night (open, kind), >, 0);
      g_assert_cmpuint (draw_night (shut, kind), !=, draw_night (open, kind));
    }
}

/* The picture shows the space looked at, and not the whole croft. */
static void
test_bounds_hold_the_space (void)
{
  g_autoptr (HcHouseNight) night = night_with_vents (0.5);
  HcSideCut cut;
  HcBox box;

  g_assert_true (hc_side_air_find_cut (night, 0, &cut));
  box = hc_side_air_get_bounds (night, &cut, 0);
  g_assert_cmpfloat (box.width_mm, >, 2000);
  g_assert_cmpfloat (box.width_mm, <, hc_point_distance (cut.from, cut.to) + 1);
  g_assert_cmpfloat (box.depth_mm, >, 2000);
}

static guint
draw_chart (double now_open)
{
  g_autoptr (HcHouseNight) night = night_with_vents (0);
  g_autoptr (GArray) points = hc_night_chart (&night->ask, -20, 15, SIDE);
  const HcAirChart chart = { points, SIDE, -9, now_open, -9, 12 };
  cairo_surface_t *surface = cairo_image_surface_create (CAIRO_FORMAT_ARGB32, WIDTH, HEIGHT);
  HcInk ink = { cairo_create (surface), hc_palette_get (HC_PALETTE_LIGHT), 1, TRUE, 0 };
  guint inked;

  hc_draw_air_chart (&ink, &chart, WIDTH, HEIGHT);
  inked = count_inked (surface);
  cairo_destroy (ink.cr);
  cairo_surface_destroy (surface);
  return inked;
}

static void
test_chart_marks_where_it_stands (void)
{
  g_assert_cmpuint (draw_chart (0), >, 0);
  g_assert_cmpuint (draw_chart (0), !=, draw_chart (0.6));
}

static void
test_an_empty_chart_is_left_white (void)
{
  g_autoptr (GArray) points = g_array_new (FALSE, FALSE, sizeof (HcNightPoint));
  const HcAirChart chart = { points, SIDE, -9, 0, -9, 12 };
  cairo_surface_t *surface = cairo_image_surface_create (CAIRO_FORMAT_ARGB32, WIDTH, HEIGHT);
  HcInk ink = { cairo_create (surface), hc_palette_get (HC_PALETTE_LIGHT), 1, TRUE, 0 };

  hc_draw_air_chart (&ink, &chart, WIDTH, HEIGHT);
  g_assert_cmpuint (count_inked (surface), ==, 0);
  cairo_destroy (ink.cr);
  cairo_surface_destroy (surface);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/drawing-air/night", test_shut_house_sweats_and_open_house_flows);
  g_test_add_func ("/drawing-air/bounds", test_bounds_hold_the_space);
  g_test_add_func ("/drawing-air/chart", test_chart_marks_where_it_stands);
  g_test_add_func ("/drawing-air/empty", test_an_empty_chart_is_left_white);
  return g_test_run ();
}
