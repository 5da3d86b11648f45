/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Inside lengths of pens, outside their walls. */
#include "config.h"

#include "dimension.h"

#include "drawing/opening-drawing.h"
#include "drawing/text.h"
#include "drawing/wall-outline.h"

#include <math.h>

#define ASIDE_UNITS 18.0
#define TICK_UNITS 3.5
#define GAP_UNITS 3.0

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

static HcBox
line_box (const Dimension *self)
{
  HcPoint ends[2] = { place_words (self, 0), place_words (self, 1) };

  return hc_box_around (ends, G_N_ELEMENTS (ends));
}

static gboolean
is_free (GArray *taken, guint own, HcBox box, double gap_mm)
{
  for (guint i = 0; i < taken->len; i++)
    if (i != own && hc_box_touches (hc_box_grow (g_array_index (taken, HcBox, i), gap_mm), box))
      return FALSE;
  return TRUE;
}

/* The middle of the line, or beside it where something else is written: in the
 * inner corner of an L two lines cross, and their words would meet. @own is
 * what is taken by its own line. */
static gboolean
find_place (const HcInk *ink, const Dimension *self, GArray *taken, guint own, HcPoint *at)
{
  static const double parts[] = { 0.5, 0.7, 0.3, 0.85, 0.15 };
  double gap_mm = units_to_mm (ink, GAP_UNITS);

  for (guint i = 0; i < G_N_ELEMENTS (parts); i++)
    {
      HcBox box;

      *at = place_words (self, parts[i]);
      box = words_box (ink, self, *at);
      if (!is_free (taken, own, box, gap_mm))
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

/* A wall shared by two pens is measured by its pens' other walls. */
static gboolean
is_outer (const HcLayout *layout, const char *wall)
{
  HcPen *beside[2];

  return hc_layout_get_pens_beside (layout, wall, beside) == 1;
}

/* Beyond the doors that swing out of the wall, so that none is written over. */
static double
find_aside_mm (const HcInk *ink, const HcLayout *layout, const char *wall)
{
  HcParts *openings = hc_layout_get (layout)->openings;
  double aside_mm = units_to_mm (ink, ASIDE_UNITS);

  for (guint i = 0; i < openings->len; i++)
    {
      double reach_mm = hc_opening_get_reach_mm (openings->pdata[i]);

      if (reach_mm > 0 && g_str_equal (hc_opening_get (openings->pdata[i])->wall, wall))
        aside_mm = MAX (aside_mm, reach_mm + units_to_mm (ink, 2 * GAP_UNITS));
    }
  return aside_mm;
}

static gboolean
measure_wall (const HcInk *ink, const HcLayout *layout, const HcWall *wall, HcUnits units,
              Dimension *dimension)
{
  double aside = find_aside_mm (ink, layout, hc_wall_get_id (wall));
  HcWallFaces faces;
  HcPoint way;

  if (!hc_wall_faces (layout, wall, &faces))
    return FALSE;
  way = hc_point_subtract (faces.to, faces.from);
  if (hc_point_dot (hc_point (way.y_mm, -way.x_mm), faces.inward) > 0)
    aside = -aside;
  *dimension = measure (hc_wall_faces_at (&faces, 0, -faces.outer_mm),
                        hc_wall_faces_at (&faces, hc_point_length (way), -faces.outer_mm), aside,
                        units);
  if (fits (ink, dimension->words, hc_point_distance (dimension->from, dimension->to)))
    return TRUE;
  g_free (dimension->words);
  return FALSE;
}

static void
clear_words (gpointer dimension)
{
  g_free (((Dimension *) dimension)->words);
}

static GArray *
measure_walls (const HcInk *ink, const HcLayout *layout, HcUnits units)
{
  HcParts *walls = hc_layout_get (layout)->walls;
  GArray *dimensions = g_array_new (FALSE, FALSE, sizeof (Dimension));

  g_array_set_clear_func (dimensions, clear_words);
  for (guint i = 0; i < walls->len; i++)
    {
      Dimension dimension;

      if (is_outer (layout, hc_wall_get_id (walls->pdata[i]))
          && measure_wall (ink, layout, walls->pdata[i], units, &dimension))
        g_array_append_val (dimensions, dimension);
    }
  return dimensions;
}

/**
 * hc_draw_dimensions:
 * @ink: the ink, in the plan's space
 * @layout: a layout
 * @units: the keeper's units
 *
 * Draws the inside length of every wall that has nothing behind it, but none
 * whose words would be written over others.
 */
void
hc_draw_dimensions (const HcInk *ink, const HcLayout *layout, HcUnits units)
{
  g_autoptr (GArray) dimensions = measure_walls (ink, layout, units);
  g_autoptr (GArray) taken = g_array_new (FALSE, FALSE, sizeof (HcBox));

  for (guint i = 0; i < dimensions->len; i++)
    {
      HcBox line = line_box (&g_array_index (dimensions, Dimension, i));

      g_array_append_val (taken, line);
    }
  for (guint i = 0; i < dimensions->len; i++)
    {
      const Dimension *dimension = &g_array_index (dimensions, Dimension, i);
      HcPoint at;

      if (find_place (ink, dimension, taken, i, &at))
        draw_at (ink, dimension, at);
    }
}
