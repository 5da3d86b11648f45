/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Inside lengths of pens, outside their walls, and the scale bar. */
#include "config.h"

#include "dimension.h"

#include "drawing/text.h"
#include "drawing/wall-outline.h"

#include <math.h>

#define ASIDE_UNITS 18.0
#define TICK_UNITS 3.5
#define GAP_UNITS 3.0
#define BAR_UNITS 4.0

static double
units_to_mm (const HcInk *ink, double units)
{
  return units / ink->scale;
}

static void
draw_tick (const HcInk *ink, HcPoint at, HcPoint way, HcPoint aside)
{
  double size = units_to_mm (ink, TICK_UNITS);
  HcPoint slash = hc_point_scale (hc_point_unit (hc_point_add (way, aside)), size);

  hc_ink_line (ink, at.x_mm - slash.x_mm, at.y_mm - slash.y_mm, at.x_mm + slash.x_mm,
               at.y_mm + slash.y_mm);
}

/* Words are never upside down: they read from below or from the right. */
static double
upright (double turn)
{
  if (turn > G_PI / 2 + 1e-6)
    return turn - G_PI;
  if (turn <= -G_PI / 2 + 1e-6)
    return turn + G_PI;
  return turn;
}

static gboolean
fits (const HcInk *ink, const char *text, double length_mm)
{
  return hc_text_measure (ink, HC_HAND_SMALL, text, 0).width + 4 * GAP_UNITS
         <= length_mm * ink->scale;
}

static void
draw_lines (const HcInk *ink, HcPoint from, HcPoint to, HcPoint aside, double aside_mm)
{
  HcPoint way = hc_point_unit (hc_point_subtract (to, from));
  double gap = units_to_mm (ink, GAP_UNITS);
  HcPoint ends[2] = { from, to };

  cairo_new_path (ink->cr);
  for (guint i = 0; i < 2; i++)
    {
      HcPoint start = hc_point_add (ends[i], hc_point_scale (aside, gap));
      HcPoint line = hc_point_add (ends[i], hc_point_scale (aside, aside_mm));
      HcPoint end = hc_point_add (ends[i], hc_point_scale (aside, aside_mm + gap));

      hc_ink_line (ink, start.x_mm, start.y_mm, end.x_mm, end.y_mm);
      draw_tick (ink, line, way, aside);
    }
  hc_ink_line (ink, from.x_mm + aside.x_mm * aside_mm, from.y_mm + aside.y_mm * aside_mm,
               to.x_mm + aside.x_mm * aside_mm, to.y_mm + aside.y_mm * aside_mm);
  hc_ink_stroke (ink, HC_LINE_FINE, HC_PAINT_SOFT_INK);
}

/**
 * hc_draw_dimension:
 * @ink: the ink
 * @from: start of what is measured
 * @to: end of what is measured
 * @aside_mm: how far to the left of the way from @from to @to the line is,
 *   negative for the right
 * @units: the units it is written in
 *
 * Draws one dimension; nothing when its words would not fit.
 */
void
hc_draw_dimension (const HcInk *ink, HcPoint from, HcPoint to, double aside_mm, HcUnits units)
{
  double length = hc_point_distance (from, to);
  g_autofree char *words = hc_length_format (length, units);
  HcPoint way = hc_point_unit (hc_point_subtract (to, from));
  HcPoint aside = hc_point (way.y_mm, -way.x_mm);
  HcPoint at;
  double turn = upright (atan2 (way.y_mm, way.x_mm));
  gboolean below;

  if (!fits (ink, words, length))
    return;
  if (aside_mm < 0)
    aside = hc_point_scale (aside, -1);
  draw_lines (ink, from, to, aside, fabs (aside_mm));
  at = hc_point_add (hc_point_between (from, to, 0.5), hc_point_scale (aside, fabs (aside_mm)));
  below = -sin (turn) * aside.x_mm + cos (turn) * aside.y_mm > 0;
  hc_draw_text (ink, HC_HAND_SMALL, words, at.x_mm, at.y_mm, 0.5, below ? -0.1 : 1.1, turn,
                HC_PAINT_SOFT_INK);
}

/* A wall shared by two pens is measured by its pens' other walls. */
static gboolean
is_outer (const HcLayout *layout, const char *wall)
{
  HcPen *beside[2];

  return hc_layout_get_pens_beside (layout, wall, beside) == 1;
}

static void
draw_wall_dimension (const HcInk *ink, const HcLayout *layout, const HcWall *wall, HcUnits units)
{
  double aside = units_to_mm (ink, ASIDE_UNITS);
  HcWallFaces faces;
  HcPoint way;

  if (!hc_wall_faces (layout, wall, &faces))
    return;
  way = hc_point_subtract (faces.to, faces.from);
  if (hc_point_dot (hc_point (way.y_mm, -way.x_mm), faces.inward) > 0)
    aside = -aside;
  hc_draw_dimension (ink, hc_wall_faces_at (&faces, 0, -faces.outer_mm),
                     hc_wall_faces_at (&faces, hc_point_length (way), -faces.outer_mm), aside,
                     units);
}

/**
 * hc_draw_dimensions:
 * @ink: the ink, in the plan's space
 * @layout: a layout
 * @units: the keeper's units
 *
 * Draws the inside length of every wall that has nothing behind it.
 */
void
hc_draw_dimensions (const HcInk *ink, const HcLayout *layout, HcUnits units)
{
  HcParts *walls = hc_layout_get (layout)->walls;

  for (guint i = 0; i < walls->len; i++)
    if (is_outer (layout, hc_wall_get_id (walls->pdata[i])))
      draw_wall_dimension (ink, layout, walls->pdata[i], units);
}

/* The longest round length that fits, in steps a keeper would choose. */
static double
step_of_bar (double most_mm, HcUnits units)
{
  static const double metric[] = { 100, 200, 500, 1000, 2000, 5000, 10000 };
  static const double feet[] = { 1, 2, 4, 5, 10, 20, 50 };
  double step = units == HC_UNITS_FEET ? HC_MM_PER_FOOT / 2 : metric[0];

  for (guint i = 0; i < G_N_ELEMENTS (metric); i++)
    {
      double next = units == HC_UNITS_FEET ? feet[i] * HC_MM_PER_FOOT : metric[i];

      if (4 * next <= most_mm)
        step = next;
    }
  return step;
}

static void
draw_bar_part (const HcInk *ink, double x, double y, double step, gboolean dark)
{
  hc_ink_rectangle (ink, x, y, step, units_to_mm (ink, BAR_UNITS));
  hc_ink_fill (ink, dark ? HC_PAINT_INK : HC_PAINT_PAPER);
  hc_ink_stroke (ink, HC_LINE_FINE, HC_PAINT_INK);
}

/**
 * hc_draw_scale_bar:
 * @ink: the ink
 * @x_mm: left end
 * @y_mm: upper edge
 * @most_mm: how long it may be at most
 * @units: the keeper's units
 *
 * Draws a bar of four parts with its lengths below.
 */
void
hc_draw_scale_bar (const HcInk *ink, double x_mm, double y_mm, double most_mm, HcUnits units)
{
  double step = step_of_bar (most_mm, units);

  for (guint i = 0; i < 4; i++)
    draw_bar_part (ink, x_mm + i * step, y_mm, step, i % 2 == 0);
  for (guint i = 0; i <= 4; i += 2)
    {
      g_autofree char *words = i > 0 ? hc_length_format (i * step, units) : g_strdup ("0");

      hc_draw_text (ink, HC_HAND_SMALL, words, x_mm + i * step,
                    y_mm + units_to_mm (ink, BAR_UNITS + GAP_UNITS), 0.5, 0, 0,
                    HC_PAINT_SOFT_INK);
    }
}
