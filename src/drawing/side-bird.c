/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Birds on what they stand on: bedding, bars, nests. */
#include "config.h"

#include "side-bird.h"

#include "supply/stand.h"

#include <math.h>

/* A bird is on a bar when it is no farther from it than this. */
#define ON_BAR_MM 250.0

/* A bird seen from the front is no narrower than this share of its length. */
#define NARROWEST 0.45

static double
height_on_roost (const HcFitting *roost, HcPoint at)
{
  double nearest = ON_BAR_MM, height_mm = -1;

  for (int i = 0; i < hc_fitting_get (roost)->bars; i++)
    {
      HcBar bar;
      double away;

      hc_stand_get_bar (roost, (guint) i, &bar);
      away = hc_point_distance_to_line (at, bar.from, bar.to);
      if (away < nearest)
        {
          nearest = away;
          height_mm = bar.height_mm;
        }
    }
  return height_mm;
}

static gboolean
is_over (const HcRoom *room, guint fitting, HcPoint at)
{
  const HcPoint *ring;
  guint n_points;
  HcShape *footprint = hc_room_get_footprint (room, fitting);

  if (hc_shape_is_empty (footprint))
    return FALSE;
  ring = hc_shape_get_ring (footprint, 0, 0, &n_points);
  return hc_box_contains_point (hc_box_around (ring, n_points), at);
}

static double
height_of_feet (const HcRoom *room, const HcBirdPlace *place)
{
  HcParts *fittings = hc_room_get (room)->fittings;

  for (guint i = 0; i < fittings->len; i++)
    {
      const HcFitting *fitting = fittings->pdata[i];
      int kind = hc_fitting_get (fitting)->kind;
      double height_mm = -1;

      if (kind == HC_FITTING_ROOST && place->doing == HC_BIRD_SLEEPS)
        height_mm = height_on_roost (fitting, place->at);
      else if (kind == HC_FITTING_NEST_BOXES && is_over (room, i, place->at))
        height_mm = hc_stand_get_nest_floor_mm (fitting, 0);
      if (height_mm >= 0)
        return height_mm;
    }
  return hc_room_get (room)->bedding_mm;
}

static int
compare_depths (gconstpointer a, gconstpointer b)
{
  double one = ((const HcSideBird *) a)->depth_mm, other = ((const HcSideBird *) b)->depth_mm;

  return (one < other) - (one > other);
}

/**
 * hc_side_birds_find: (skip)
 * @house: a house
 * @cut: the cut
 * @places: (element-type HcBirdPlace): birds in the plan; must outlive the answer
 *
 * Returns: (transfer full) (element-type HcSideBird): those beyond the cut,
 *   farthest first
 */
GArray *
hc_side_birds_find (const HcHouse *house, const HcSideCut *cut, const GArray *places)
{
  HcLayout *layout = hc_house_get_layout (house);
  GArray *birds = g_array_new (FALSE, FALSE, sizeof (HcSideBird));

  for (guint i = 0; i < places->len; i++)
    {
      const HcBirdPlace *place = &g_array_index (places, HcBirdPlace, i);
      HcPoint seen = hc_side_cut_project (cut, place->at);
      HcPen *pen = hc_layout_find_pen_at (layout, place->at);
      HcSideBird bird = { place, seen, seen.y_mm };
      guint room;

      if (seen.y_mm < 0)
        continue;
      bird.at.y_mm = pen != NULL && hc_house_find_room (house, hc_pen_get_id (pen), &room)
                         ? height_of_feet (hc_house_get_room (house, room), place)
                         : 0;
      g_array_append_val (birds, bird);
    }
  g_array_sort (birds, compare_depths);
  return birds;
}

static void
trace_body (const HcInk *ink)
{
  cairo_t *cr = ink->cr;

  cairo_new_path (cr);
  cairo_move_to (cr, -0.50, -0.62);
  cairo_curve_to (cr, -0.40, -0.40, -0.20, -0.46, 0.02, -0.44);
  cairo_curve_to (cr, 0.20, -0.44, 0.20, -0.66, 0.30, -0.76);
  cairo_curve_to (cr, 0.36, -0.82, 0.44, -0.78, 0.44, -0.70);
  cairo_curve_to (cr, 0.42, -0.58, 0.42, -0.46, 0.36, -0.32);
  cairo_curve_to (cr, 0.28, -0.14, 0.04, -0.10, -0.10, -0.14);
  cairo_curve_to (cr, -0.30, -0.20, -0.44, -0.38, -0.50, -0.62);
  cairo_close_path (cr);
}

static void
draw_legs (const HcInk *ink)
{
  cairo_new_path (ink->cr);
  for (guint leg = 0; leg < 2; leg++)
    {
      double x = leg * 0.12;

      hc_ink_line (ink, x, -0.16, x + 0.01, 0);
      hc_ink_line (ink, x - 0.03, 0, x + 0.07, 0);
    }
}

static void
draw_head (const HcInk *ink, const HcBirdLook *look)
{
  double comb = 0.07 * look->comb;

  cairo_new_path (ink->cr);
  cairo_move_to (ink->cr, 0.44, -0.74);
  cairo_line_to (ink->cr, 0.53, -0.70);
  cairo_line_to (ink->cr, 0.44, -0.67);
  cairo_close_path (ink->cr);
  hc_ink_fill (ink, HC_PAINT_BEAK);
  if (comb > 0)
    {
      hc_ink_ellipse (ink, 0.37, -0.80, 0.06, comb);
      hc_ink_fill (ink, HC_PAINT_COMB);
      hc_ink_ellipse (ink, 0.43, -0.63, 0.025, comb * 0.7);
      hc_ink_fill (ink, HC_PAINT_COMB);
    }
  hc_ink_circle (ink, 0.395, -0.72, 0.014);
  hc_ink_fill (ink, HC_PAINT_INK);
}

static void
draw_wing (const HcInk *ink)
{
  cairo_new_path (ink->cr);
  cairo_move_to (ink->cr, 0.20, -0.36);
  cairo_curve_to (ink->cr, 0.10, -0.18, -0.16, -0.22, -0.30, -0.40);
}

static void
draw_in_own_lengths (const HcInk *ink, const HcBirdPlace *place)
{
  gboolean sits = place->doing == HC_BIRD_SLEEPS || place->doing == HC_BIRD_LAYS
                  || place->doing == HC_BIRD_BATHES;

  if (sits)
    cairo_translate (ink->cr, 0, 0.12);
  else
    {
      draw_legs (ink);
      hc_ink_stroke (ink, HC_LINE_FINE, HC_PAINT_BEAK);
    }
  trace_body (ink);
  hc_ink_set_colour (ink, hc_palette_get_plumage (ink->palette, place->look.coat), 1);
  cairo_fill_preserve (ink->cr);
  hc_ink_stroke (ink, HC_LINE_FINE, HC_PAINT_INK);
  draw_wing (ink);
  hc_ink_stroke (ink, HC_LINE_HAIR, HC_PAINT_INK);
  draw_head (ink, &place->look);
}

/**
 * hc_draw_side_bird: (skip)
 * @ink: the ink, x along the cut, y down from the floor
 * @cut: the cut
 * @bird: a bird
 *
 * Draws a bird, shortened as it is turned towards or away.
 */
void
hc_draw_side_bird (const HcInk *ink, const HcSideCut *cut, const HcSideBird *bird)
{
  HcPoint way = hc_point_turn (hc_point (1, 0), bird->place->heading_deg);
  double across = hc_point_dot (way, cut->along);
  double length_mm = bird->place->look.length_mm;
  HcInk own = *ink;

  own.scale = ink->scale * length_mm;
  cairo_save (ink->cr);
  cairo_translate (ink->cr, bird->at.x_mm, -bird->at.y_mm);
  cairo_scale (ink->cr, length_mm, length_mm);
  cairo_scale (ink->cr, (across < 0 ? -1 : 1) * MAX (fabs (across), NARROWEST), 1);
  draw_in_own_lengths (&own, bird->place);
  cairo_restore (ink->cr);
}
