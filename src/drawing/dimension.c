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

typedef struct
{
  HcPoint from;
  HcPoint to;
  HcPoint aside;
  double aside_mm;
  double turn;
  gboolean below;
  char *words;
} Dimension;

static Dimension
measure (HcPoint from, HcPoint to, double aside_mm, HcUnits units)
{
  HcPoint way = hc_point_unit (hc_point_subtract (to, from));
  double side = aside_mm < 0 ? -1 : 1;
  Dimension self = { from, to, { side * way.y_mm, -side * way.x_mm }, fabs (aside_mm) };

  self.turn = upright (atan2 (way.y_mm, way.x_mm));
  self.below = -sin (self.turn) * self.aside.x_mm + cos (self.turn) * self.aside.y_mm > 0;
  self.words = hc_length_format (hc_point_distance (from, to), units);
  return self;
}

static HcPoint
place_words (const Dimension *self, double part)
{
  return hc_point_add (hc_point_between (self->from, self->to, part),
                       hc_point_scale (self->aside, self->aside_mm));
}

/* A box round the words, which stand on their line or hang from it. */
static HcBox
words_box (const HcInk *ink, const Dimension *self, HcPoint at)
{
  HcTextBox text = hc_text_measure (ink, HC_HAND_SMALL, self->words, 0);
  double half = units_to_mm (ink, text.width) / 2;
  double far = units_to_mm (ink, text.height) * (self->below ? 1.1 : -1.1);
  double turn_deg = self->turn * 180 / G_PI;
  HcPoint ends[4] = { { -half, 0 }, { half, 0 }, { half, far }, { -half, far } };

  for (guint i = 0; i < G_N_ELEMENTS (ends); i++)
    ends[i] = hc_point_add (at, hc_point_turn (ends[i], turn_deg));
  return hc_box_around (ends, G_N_ELEMENTS (ends));
}

static gboolean
is_free (GArray *taken, HcBox box, double gap_mm)
{
  for (guint i = 0; i < taken->len; i++)
    if (hc_box_touches (hc_box_grow (g_array_index (taken, HcBox, i), gap_mm), box))
      return FALSE;
  return TRUE;
}

/* The middle of the line, or beside it where other words stand: in the inner
 * corner of an L two lines cross and their words would meet. */
static gboolean
find_place (const HcInk *ink, const Dimension *self, GArray *taken, HcPoint *at)
{
  static const double parts[] = { 0.5, 0.7, 0.3, 0.85, 0.15 };
  double gap_mm = units_to_mm (ink, GAP_UNITS);

  for (guint i = 0; i < G_N_ELEMENTS (parts); i++)
    {
      HcBox box;

      *at = place_words (self, parts[i]);
      box = words_box (ink, self, *at);
      if (!is_free (taken, box, gap_mm))
        continue;
      g_array_append_val (taken, box);
      return TRUE;
    }
  return FALSE;
}

static void
draw_at (const HcInk *ink, const Dimension *self, HcPoint at)
{
  draw_lines (ink, self->from, self->to, self->aside, self->aside_mm);
  hc_draw_text (ink, HC_HAND_SMALL, self->words, at.x_mm, at.y_mm, 0.5, self->below ? -0.1 : 1.1,
                self->turn, HC_PAINT_SOFT_INK);
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
  Dimension dimension = measure (from, to, aside_mm, units);

  if (fits (ink, dimension.words, hc_point_distance (from, to)))
    draw_at (ink, &dimension, place_words (&dimension, 0.5));
  g_free (dimension.words);
}

static void
draw_beside (const HcInk *ink, HcPoint from, HcPoint to, double aside_mm, HcUnits units,
             GArray *taken)
{
  Dimension dimension = measure (from, to, aside_mm, units);
  HcPoint at;

  if (fits (ink, dimension.words, hc_point_distance (from, to))
      && find_place (ink, &dimension, taken, &at))
    draw_at (ink, &dimension, at);
  g_free (dimension.words);
}

/* A wall shared by two pens is measured by its pens' other walls. */
static gboolean
is_outer (const HcLayout *layout, const char *wall)
{
  HcPen *beside[2];

  return hc_layout_get_pens_beside (layout, wall, beside) == 1;
}

static void
draw_wall_dimension (const HcInk *ink, const HcLayout *layout, const HcWall *wall, HcUnits units,
                     GArray *taken)
{
  double aside = units_to_mm (ink, ASIDE_UNITS);
  HcWallFaces faces;
  HcPoint way;

  if (!hc_wall_faces (layout, wall, &faces))
    return;
  way = hc_point_subtract (faces.to, faces.from);
  if (hc_point_dot (hc_point (way.y_mm, -way.x_mm), faces.inward) > 0)
    aside = -aside;
  draw_beside (ink, hc_wall_faces_at (&faces, 0, -faces.outer_mm),
               hc_wall_faces_at (&faces, hc_point_length (way), -faces.outer_mm), aside, units,
               taken);
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
  g_autoptr (GArray) taken = g_array_new (FALSE, FALSE, sizeof (HcBox));

  for (guint i = 0; i < walls->len; i++)
    if (is_outer (layout, hc_wall_get_id (walls->pdata[i])))
      draw_wall_dimension (ink, layout, walls->pdata[i], units, taken);
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
