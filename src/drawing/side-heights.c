/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Heights as dimensions: eaves and ridge on the left, what is inside on the right. */
#include "config.h"

#include "side-heights.h"

#include "drawing/side-wall.h"
#include "drawing/text.h"

#include <math.h>

/* A person of middling height. */
#define PERSON_MM 1750.0
#define PERSON_FROM_END_MM 420.0
#define COLUMN_UNITS 48.0
#define FIGURES_UNITS 96.0
#define TICK_UNITS 3.5
#define WORD_ROOM_UNITS 11.0
/* Heights begin beyond what a roof usually hangs over. */
#define GAP_UNITS 37.0

typedef struct
{
  const HcInk *ink;
  HcUnits units;
  GArray *levels;
} Heights;

/* Lines that would stand in one another's words are one line. */
static gboolean
is_new (const Heights *heights, double height_mm)
{
  double room_mm = WORD_ROOM_UNITS / heights->ink->scale;

  for (guint i = 0; i < heights->levels->len; i++)
    if (fabs (g_array_index (heights->levels, double, i) - height_mm) < room_mm)
      return FALSE;
  return height_mm > room_mm;
}

static void
add_level (Heights *heights, double height_mm)
{
  if (is_new (heights, height_mm))
    g_array_append_val (heights->levels, height_mm);
}

static void
draw_level (const Heights *heights, double from_x, double x, double height_mm, double across)
{
  const HcInk *ink = heights->ink;
  double tick = TICK_UNITS / ink->scale;
  double side = across > 0 ? -1 : 1;
  g_autofree char *words = hc_length_format (height_mm, heights->units);

  cairo_new_path (ink->cr);
  hc_ink_line (ink, from_x + side * GAP_UNITS / ink->scale, -height_mm, x + side * tick,
               -height_mm);
  hc_ink_line (ink, x - tick, -height_mm + tick, x + tick, -height_mm - tick);
  hc_ink_stroke (ink, HC_LINE_FINE, HC_PAINT_SOFT_INK);
  hc_draw_text (ink, HC_HAND_SMALL, words, x + side * (2 * tick), -height_mm, across, 0.5, 0,
                HC_PAINT_INK);
}

static int
compare_heights (gconstpointer a, gconstpointer b)
{
  double one = *(const double *) a, other = *(const double *) b;

  return (one > other) - (one < other);
}

/* One upright line from the floor with a tick at every height. */
static void
draw_column (const Heights *heights, double from_x, double across)
{
  const HcInk *ink = heights->ink;
  double x = from_x + (across > 0 ? -1 : 1) * COLUMN_UNITS / ink->scale;

  if (heights->levels->len == 0)
    return;
  g_array_sort (heights->levels, compare_heights);
  cairo_new_path (ink->cr);
  hc_ink_line (ink, x, 0, x,
               -g_array_index (heights->levels, double, heights->levels->len - 1));
  hc_ink_stroke (ink, HC_LINE_FINE, HC_PAINT_SOFT_INK);
  for (guint i = 0; i < heights->levels->len; i++)
    draw_level (heights, from_x, x, g_array_index (heights->levels, double, i), across);
}

static void
add_ends_of_roof (Heights *heights, const HcSectionItem *item)
{
  for (guint i = 0; i < item->outline->len; i++)
    add_level (heights, g_array_index (item->outline, HcPoint, i).y_mm);
}

static void
add_opening (Heights *heights, HcBox box)
{
  add_level (heights, -box.y_mm - box.depth_mm);
  add_level (heights, -box.y_mm);
}

/* Bars first: of heights too close to be written apart, the birds' is kept. */
static void
add_inside (Heights *heights, const HcSideScene *scene)
{
  static const HcSectionKind kinds[]
      = { HC_SECTION_BAR, HC_SECTION_OPENING, HC_SECTION_FITTING };

  for (guint kind = 0; kind < G_N_ELEMENTS (kinds); kind++)
    for (guint i = 0; i < scene->items->len; i++)
      {
        const HcSectionItem *item = hc_side_scene_get_item (scene, i);
        HcBox box = hc_side_item_get_box (item);

        if (item->kind != kinds[kind] || !hc_side_scene_shows (scene, i))
          continue;
        if (item->kind == HC_SECTION_OPENING)
          add_opening (heights, box);
        else
          add_level (heights, -box.y_mm);
      }
}

/**
 * hc_draw_side_heights: (skip)
 * @ink: the ink, x along the cut, y down from the floor
 * @scene: what is seen
 * @units: the keeper's units
 *
 * Writes the heights of eaves and ridge on the left of the house; those of
 * bars, sills and things on its right.
 */
void
hc_draw_side_heights (const HcInk *ink, const HcSideScene *scene, HcUnits units)
{
  g_autoptr (GArray) levels = g_array_new (FALSE, FALSE, sizeof (double));
  Heights heights = { ink, units, levels };
  double length_mm = hc_point_distance (scene->cut.from, scene->cut.to);

  for (guint i = 0; i < scene->items->len; i++)
    if (hc_side_scene_get_item (scene, i)->kind == HC_SECTION_ROOF)
      add_ends_of_roof (&heights, hc_side_scene_get_item (scene, i));
  draw_column (&heights, HC_SIDE_OUTSIDE_MM, 1);
  g_array_set_size (levels, 0);
  add_inside (&heights, scene);
  draw_column (&heights, length_mm - HC_SIDE_OUTSIDE_MM, 0);
}

static void
trace_person (const HcInk *ink)
{
  cairo_t *cr = ink->cr;

  hc_ink_ellipse (ink, 0, -0.935, 0.045, 0.065);
  cairo_new_sub_path (cr);
  cairo_move_to (cr, -0.03, -0.865);
  cairo_curve_to (cr, -0.12, -0.85, -0.12, -0.80, -0.125, -0.72);
  cairo_line_to (cr, -0.15, -0.48);
  cairo_line_to (cr, -0.115, -0.475);
  cairo_line_to (cr, -0.085, -0.68);
  cairo_line_to (cr, -0.08, -0.42);
  cairo_line_to (cr, -0.075, 0);
  cairo_line_to (cr, -0.01, 0);
  cairo_line_to (cr, 0, -0.40);
  cairo_line_to (cr, 0.01, 0);
  cairo_line_to (cr, 0.075, 0);
  cairo_line_to (cr, 0.08, -0.42);
  cairo_line_to (cr, 0.085, -0.68);
  cairo_line_to (cr, 0.115, -0.475);
  cairo_line_to (cr, 0.15, -0.48);
  cairo_line_to (cr, 0.125, -0.72);
  cairo_curve_to (cr, 0.12, -0.80, 0.12, -0.85, 0.03, -0.865);
  cairo_close_path (cr);
}

/**
 * hc_draw_person: (skip)
 * @ink: the ink, x along the cut, y down from the floor
 * @scene: what is seen
 *
 * Draws a person of 1.75 m to judge heights by, on the right of the figures.
 */
void
hc_draw_person (const HcInk *ink, const HcSideScene *scene)
{
  double end_mm = hc_point_distance (scene->cut.from, scene->cut.to);
  double beside_mm = end_mm - HC_SIDE_OUTSIDE_MM + FIGURES_UNITS / ink->scale + PERSON_MM / 6;

  cairo_save (ink->cr);
  cairo_translate (ink->cr, MAX (end_mm - PERSON_FROM_END_MM, beside_mm), 0);
  cairo_scale (ink->cr, PERSON_MM, PERSON_MM);
  trace_person (ink);
  cairo_restore (ink->cr);
  hc_ink_wash (ink, HC_PAINT_SOFT_INK, 0.25);
  hc_ink_stroke (ink, HC_LINE_FINE, HC_PAINT_SOFT_INK);
}
